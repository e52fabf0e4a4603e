/** The fold: all that the desk knows, as a pure function of what happened. No screen, port, file, clock or thread. */
package ouzel.app.desk;
