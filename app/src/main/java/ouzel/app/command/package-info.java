/**
 * The command line: what the program can be asked to do from a shell.
 *
 * <p>Each command reads its options, refuses what cannot be, and hands a request to {@link ouzel.app.command.Programs},
 * the one place where the programs behind the commands are called.
 */
package ouzel.app.command;
