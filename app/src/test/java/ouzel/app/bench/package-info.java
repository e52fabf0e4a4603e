/**
 * How fast the hot paths are, each beside a peer measured in the same run.
 *
 * <p>Run all with {@code mvn -q test-compile exec:java -pl app -am -Dexec.classpathScope=test
 * -Dexec.mainClass=ouzel.app.bench.Benches}; add {@code -Dexec.args=decode} for those whose name holds a word.
 */
package ouzel.app.bench;
