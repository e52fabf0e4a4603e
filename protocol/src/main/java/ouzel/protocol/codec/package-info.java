/** Messages to frames and back: the kinds, the layout of each body, and what to make of a body that is not one. */
package ouzel.protocol.codec;
