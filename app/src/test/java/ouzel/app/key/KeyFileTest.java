package ouzel.app.key;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ouzel.app.exit.ExitCode;
import ouzel.app.exit.Refusal;
import ouzel.protocol.session.PairingKey;

class KeyFileTest {
    private static final String DIGITS = "00112233445566778899aabbccddeeff00112233445566778899AABBCCDDEEFF";

    @TempDir
    Path directory;

    @Test
    void aNewKeyIsReadableByItsOwnerAloneAndReadsBack() throws Exception {
        Path file = directory.resolve("pond.key");

        KeyFile.create(file);

        assertThat(Files.getPosixFilePermissions(file)).isEqualTo(PosixFilePermissions.fromString("rw-------"));
        assertThat(Files.readString(file)).matches("[0-9a-f]{64}\n");
        assertThat(KeyFile.read(file))
                .isEqualTo(PairingKey.fromHex(Files.readString(file).strip()));
    }

    @Test
    void noTwoNewKeysAreTheSame() throws Exception {
        KeyFile.create(directory.resolve("a"));
        KeyFile.create(directory.resolve("b"));

        assertThat(directory.resolve("a")).content().isNotEqualTo(Files.readString(directory.resolve("b")));
    }

    @Test
    void aKeyIsNeverOverwritten() throws Exception {
        Path file = file(DIGITS, "rw-------");

        assertThatThrownBy(() -> KeyFile.create(file)).hasMessageContaining("never overwritten");
        assertThat(file).hasContent(DIGITS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"rw-r-----", "rw----r--", "rw--w----", "rw-----w-", "rw-rw-rw-", "rw------x"})
    void aKeyThatOthersCouldTouchIsRefusedWithTheCommandThatMendsIt(String permissions) throws Exception {
        Path file = file(DIGITS, permissions);

        assertThatThrownBy(() -> KeyFile.read(file)).hasMessageContaining("chmod 600 " + file);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n", "0011", DIGITS + "0", DIGITS + "\n\n", " " + DIGITS, DIGITS + "\nrest"})
    void whatIsNoKeyIsRefusedAndNotRepeated(String content) throws Exception {
        Path file = file(content, "rw-------");

        assertThatThrownBy(() -> KeyFile.read(file))
                .hasMessageContaining("holds no key")
                .hasMessageNotContaining("0011")
                .hasNoCause();
    }

    @ParameterizedTest
    @ValueSource(strings = {"00", "ff", "Ff", "a5"})
    void aKeyOfOneByteOverAndOverIsNoSecret(String digits) throws Exception {
        Path file = file(digits.repeat(PairingKey.LENGTH), "rw-------");

        assertThatThrownBy(() -> KeyFile.read(file)).hasMessageContaining("one byte over and over");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n", "\r\n"})
    void aLineEndOfEitherKindOrNoneIsTaken(String end) throws Exception {
        assertThat(KeyFile.read(file(DIGITS + end, "rw-------"))).isEqualTo(PairingKey.fromHex(DIGITS));
    }

    @Test
    void aMissingKeyFileIsRefusedWithItsOwnExitCode() {
        Path file = directory.resolve("missing.key");

        assertThatThrownBy(() -> KeyFile.read(file))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.exitCode()).isEqualTo(ExitCode.KEY_REFUSED))
                .hasMessage("The key file " + file + " cannot be read: it is not there.");
    }

    private Path file(String content, String permissions) throws IOException {
        Path file = Files.writeString(directory.resolve("some.key"), content);
        return Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(permissions));
    }
}
