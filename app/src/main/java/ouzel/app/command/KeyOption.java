package ouzel.app.command;

import java.nio.file.Path;
import ouzel.app.exit.ExitCode;
import ouzel.app.exit.Refusal;
import ouzel.app.key.KeyFile;
import ouzel.protocol.session.PairingKey;
import picocli.CommandLine.Option;

/** The pairing key option that both ends of the link share. */
final class KeyOption {
    @Option(
            names = "--key",
            paramLabel = "FILE",
            description = "File with the pairing key; make one with 'ouzel key FILE'. Without it the rehearsal key that"
                    + " everybody knows is used, which is refused on a serial line.")
    private Path file;

    /**
     * The key to use.
     *
     * @param serial true if it is for a serial line, at whose other end something real could move
     */
    PairingKey key(boolean serial) throws Refusal {
        PairingKey key = file == null ? PairingKey.rehearsal() : KeyFile.read(file);
        if (serial && key.isRehearsal()) {
            throw new Refusal(
                    ExitCode.KEY_REFUSED,
                    "The rehearsal key, which everybody knows, is refused on a serial line: make a key with"
                            + " 'ouzel key FILE', give it to both ends, and name it with --key FILE.");
        }
        return key;
    }
}
