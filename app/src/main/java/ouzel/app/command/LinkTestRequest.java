package ouzel.app.command;

import ouzel.app.link.Port;
import ouzel.protocol.session.PairingKey;

/**
 * What a link test is started with.
 *
 * @param port where the payload is
 * @param key the pairing key; the rehearsal key never on a serial line
 * @param seconds how long to measure, s
 */
public record LinkTestRequest(Port port, PairingKey key, int seconds) {}
