package ouzel.app.command;

import java.util.Optional;
import ouzel.app.link.Port;
import ouzel.protocol.session.PairingKey;

/**
 * What a simulated payload is started with.
 *
 * @param serial the serial line it speaks on; empty for TCP
 * @param tcpPort the TCP port it waits on, 0 for any free one; meaningless with a serial line
 * @param anyHost true to be reached from other computers too, false for this one alone
 * @param key the pairing key; the rehearsal key never on a serial line
 * @param seed what all its chance comes from
 */
public record PayloadRequest(Optional<Port.Serial> serial, int tcpPort, boolean anyHost, PairingKey key, long seed) {}
