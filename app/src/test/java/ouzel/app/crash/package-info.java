/** What happens when a process, a disk or the power is taken away in the middle of a sortie. */
package ouzel.app.crash;
