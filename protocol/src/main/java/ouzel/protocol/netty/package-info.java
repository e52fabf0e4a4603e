/** Thin adapters that put the frame encoder and parser into a Netty pipeline. */
package ouzel.protocol.netty;
