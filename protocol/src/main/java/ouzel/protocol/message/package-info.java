/** What both ends say to each other: one sealed family of immutable records, with no physics and no screen. */
package ouzel.protocol.message;
