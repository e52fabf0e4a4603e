/**
 * Targets for a coverage-guided fuzzer: each runs its seeds and found inputs in every build, and searches for new ones
 * with {@code JAZZER_FUZZ=1 mvn test -pl protocol -Dtest=NAME}, one target a run.
 */
package ouzel.protocol.fuzz;
