/** Who may speak: pairing key, session opening, message tags, counters and link statistics; pure, told the time. */
package ouzel.protocol.session;
