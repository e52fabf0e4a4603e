package ouzel.app.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PortTest {
    @ParameterizedTest
    @CsvSource({
        "192.168.4.1:5760, 192.168.4.1, 5760",
        "' localhost:1 ', localhost, 1",
        "[::1]:65535, ::1, 65535",
    })
    void readsANetworkAddress(String text, String host, int port) {
        assertThat(Port.parse(text)).isEqualTo(new Port.Tcp(host, port));
    }

    @ParameterizedTest
    @CsvSource({
        "/dev/ttyUSB0, /dev/ttyUSB0, 57600",
        "/dev/serial/by-path/pci-0:1.2-port0, /dev/serial/by-path/pci-0:1.2-port0, 57600",
        "COM3@115200, COM3, 115200",
    })
    void readsASerialLine(String text, String name, int baud) {
        assertThat(Port.parse(text)).isEqualTo(new Port.Serial(name, baud));
    }

    @ParameterizedTest
    @CsvSource({"auto, 57600", "auto@115200, 115200", "'auto,/dev/serial/by-id/*@9600', 9600"})
    void readsASearch(String text, int baud) {
        assertThat(Port.parse(text))
                .isInstanceOfSatisfying(
                        Port.Search.class, search -> assertThat(search.baud()).isEqualTo(baud));
    }

    @Property
    void readsBackWhatItWrites(@ForAll("ports") Port port) {
        assertThat(Port.parse(port.where())).isEqualTo(port);
    }

    @ParameterizedTest
    @ValueSource(strings = {"host:0", "host:-5", "host:65536", "host:99999999999", "host:abc", "host:"})
    void refusesAPortNumberThatDoesNotExist(String text) {
        assertThatIllegalArgumentException().isThrownBy(() -> Port.parse(text)).withMessageContaining("port number");
    }

    @ParameterizedTest
    @ValueSource(strings = {"COM3@0", "COM3@-5", "COM3@12345"})
    void refusesASpeedThatIsNotOfferedAndListsThoseThatAre(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Port.parse(text))
                .withMessageContaining("baud is not offered. Choose one of 9600, 19200, 38400, 57600, 115200, 230400, "
                        + "460800, 921600.");
    }

    @Test
    void refusesASpeedThatIsNoNumber() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Port.parse("COM3@abc"))
                .withMessage("\"abc\" is not a speed: a whole number is expected.");
    }

    @Test
    void refusesAnEmptyHostAndAnEmptyName() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Port.parse(":5760"))
                .withMessageContaining("name of the computer is empty");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Port.parse("  "))
                .withMessageContaining("name of the serial line is empty");
    }

    @Test
    void asksForBracketsAroundAnAddressWithColons() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Port.parse("::1:5760"))
                .withMessageContaining("Put the address in brackets");
    }

    @Test
    void onlyASerialLineIsSerial() {
        assertThat(new Port.Serial("COM3", 57_600).kind().isSerial()).isTrue();
        assertThat(new Port.Tcp("localhost", 1).kind().isSerial()).isFalse();
        assertThat(LineKind.IN_PROCESS.isSerial()).isFalse();
    }

    @Provide
    Arbitrary<Port> ports() {
        Arbitrary<String> names = Arbitraries.strings()
                .withCharRange('a', 'z')
                .withChars("0123456789.-")
                .ofMinLength(1);
        Arbitrary<Port> tcp = Combinators.combine(names, Arbitraries.integers().between(1, 65_535))
                .as(Port.Tcp::new);
        Arbitrary<Port> serial = Combinators.combine(names, Arbitraries.of(Port.Serial.SPEEDS))
                .as((name, baud) -> new Port.Serial("/dev/" + name, baud));
        Arbitrary<Port> search = Combinators.combine(names.list().ofMaxSize(3), Arbitraries.of(Port.Serial.SPEEDS))
                .as((patterns, baud) -> new Port.Search(patterns, baud, false));
        return Arbitraries.oneOf(tcp, serial, search);
    }
}
