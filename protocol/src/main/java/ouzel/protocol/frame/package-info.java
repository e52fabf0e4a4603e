/** Bytes to frames and back: stuffing, checksum, length limits. A bad frame costs only itself. */
package ouzel.protocol.frame;
