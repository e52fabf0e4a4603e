package ouzel.app.command;

import java.nio.file.Path;
import java.util.Optional;
import ouzel.app.link.Port;
import ouzel.protocol.session.PairingKey;

/**
 * What a desk is opened with.
 *
 * @param port where the payload is; empty for a simulated one inside the program
 * @param key the pairing key; the rehearsal key never on a serial line
 * @param rehearsal true if the payload is a simulated one, wherever it runs
 * @param seed what all chance of the simulated payload comes from
 * @param journals the directory for the journal
 * @param site the site's name
 */
public record DeskRequest(
        Optional<Port> port, PairingKey key, boolean rehearsal, long seed, Path journals, String site) {}
