/** The command line: what the program can be asked to do from a shell. */
package ouzel.app.command;
