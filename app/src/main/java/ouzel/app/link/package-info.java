/**
 * Bytes to and from a payload: one frame pipeline over TCP, over a serial line and inside the program; opening, losing
 * and reopening told in sentences.
 */
package ouzel.app.link;
