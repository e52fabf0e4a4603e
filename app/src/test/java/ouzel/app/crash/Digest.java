package ouzel.app.crash;

import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import java.util.zip.CRC32;
import ouzel.app.desk.DeskState;

/** What a desk knew at one moment in a few letters: two processes that know the same give the same digest. */
final class Digest {
    private Digest() {}

    static String of(DeskState state) {
        String known = state.lanes().stream()
                        .map(lane -> lane.phase() + " " + lane.dose() + " " + lane.token() + lane.arm() + lane.trigger()
                                + lane.other())
                        .collect(Collectors.joining())
                + state.session()
                + state.safeAll()
                + state.journal()
                + state.attestations()
                + state.samples()
                + state.notes()
                + state.ledger()
                + state.settling();
        CRC32 crc = new CRC32();
        crc.update(known.getBytes(StandardCharsets.UTF_8));
        return Long.toHexString(crc.getValue()) + "-" + known.length();
    }

    /** One line of a console's report: when on its own clock, and what it knew. */
    static String line(DeskState state) {
        return state.now().nanos() + " " + of(state);
    }
}
