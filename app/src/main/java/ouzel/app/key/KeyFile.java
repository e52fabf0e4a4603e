package ouzel.app.key;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.Set;
import ouzel.app.exit.ExitCode;
import ouzel.app.exit.FileTrouble;
import ouzel.app.exit.Refusal;
import ouzel.protocol.session.PairingKey;

/**
 * A pairing key as a file: 64 hex digits and a line feed, readable and writable by its owner alone.
 *
 * <p>A key that others could have read is no secret any more, so such a file is refused, not mended. The check needs
 * owner, group and other permissions; on a file system without them it is left out. No sentence here repeats what a
 * file holds.
 */
public final class KeyFile {
    private static final Set<PosixFilePermission> OWNER_ONLY = PosixFilePermissions.fromString("rw-------");
    private static final Set<PosixFilePermission> OTHERS = PosixFilePermissions.fromString("---rwxrwx");
    private static final int DIGITS = 2 * PairingKey.LENGTH;
    /** Digits, a line end of either kind, and one byte more, by which a longer file is known. */
    private static final int MOST_BYTES = DIGITS + 3;

    private KeyFile() {}

    /**
     * Reads the key in {@code file}.
     *
     * @throws Refusal if the file is not there, can be read by others, or holds no key or one that is no secret; says
     *     how to mend it
     */
    public static PairingKey read(Path file) throws Refusal {
        try {
            if (isOpenToOthers(file)) {
                throw refused(
                        "The key file " + file + " can be read or written by others: if nobody has, run chmod 600 "
                                + file + "; else make a new key for console and payload.");
            }
            try (InputStream source = Files.newInputStream(file)) {
                return parse(file, new String(source.readNBytes(MOST_BYTES), StandardCharsets.US_ASCII));
            }
        } catch (IOException trouble) {
            throw new Refusal(
                    ExitCode.KEY_REFUSED,
                    "The key file " + file + " cannot be read: " + FileTrouble.words(trouble) + ".",
                    trouble);
        }
    }

    private static PairingKey parse(Path file, String text) throws Refusal {
        String digits = text.replaceFirst("\\r?\\n$", "");
        try {
            PairingKey key = PairingKey.fromHex(digits);
            if (isOneByteOverAndOver(digits)) {
                throw refused("The key file " + file + " holds one byte over and over, as memory that was never written"
                        + " does: that is no secret; make a key with: ouzel key FILE.");
            }
            return key;
        } catch (IllegalArgumentException noKey) {
            // The cause is left out of the refusal: nothing that was in the file may reach a log.
            throw refused("The key file " + file + " holds no key: one line of " + DIGITS
                    + " hex digits is expected; make one with: ouzel key FILE.");
        }
    }

    private static boolean isOneByteOverAndOver(String digits) {
        return digits.equalsIgnoreCase(digits.substring(0, 2).repeat(PairingKey.LENGTH));
    }

    private static boolean isOpenToOthers(Path file) throws IOException {
        if (!hasPermissions(file)) {
            return false;
        }
        Set<PosixFilePermission> found = EnumSet.copyOf(OTHERS);
        found.retainAll(Files.getPosixFilePermissions(file));
        return !found.isEmpty();
    }

    /**
     * Makes {@code file} with a new key from the system's source of randomness.
     *
     * @throws Refusal if it exists already (nothing is overwritten) or cannot be made
     */
    public static void create(Path file) throws Refusal {
        byte[] secret = new byte[PairingKey.LENGTH];
        new SecureRandom().nextBytes(secret);
        byte[] line = (HexFormat.of().formatHex(secret) + "\n").getBytes(StandardCharsets.US_ASCII);
        try (OutputStream target = Channels.newOutputStream(Files.newByteChannel(
                file, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), ownerOnly(file)))) {
            target.write(line);
        } catch (FileAlreadyExistsException taken) {
            throw refused("There is a file " + file + " already, and a key is never overwritten: name another file.");
        } catch (IOException trouble) {
            throw new Refusal(
                    ExitCode.NOT_WRITABLE,
                    "The key file " + file + " cannot be made: " + FileTrouble.words(trouble) + ".",
                    trouble);
        }
    }

    private static FileAttribute<?>[] ownerOnly(Path file) {
        return hasPermissions(file)
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER_ONLY)}
                : new FileAttribute<?>[0];
    }

    private static boolean hasPermissions(Path path) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    private static Refusal refused(String sentence) {
        return new Refusal(ExitCode.KEY_REFUSED, sentence);
    }
}
