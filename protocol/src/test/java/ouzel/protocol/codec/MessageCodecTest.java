package ouzel.protocol.codec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ouzel.protocol.frame.Crc16;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Identity;
import ouzel.protocol.message.Message;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Settings;
import ouzel.protocol.message.Status;

class MessageCodecTest {
    @Property(tries = 3_000)
    void everyMessageRoundTrips(@ForAll("messages") Message message) {
        int kind = Kind.of(message).code();

        assertThat(MessageCodec.decode(kind, MessageCodec.fields(message))).isEqualTo(new Decoded.Known(message));
    }

    @Property
    void everyMessageRoundTripsInAFrame(@ForAll("unsealed") Message message) {
        Frame frame = MessageCodec.encode(message, 0xFFFF, 3, 0xFFFF_FFFFL);

        assertThat(frame.header()).isEqualTo(new Header(0x10, Kind.of(message).code(), 0xFFFF, 3, 0xFFFF_FFFFL));
        assertThat(MessageCodec.decode(frame)).isEqualTo(new Decoded.Known(message));
    }

    @Property
    void everyMessageIsMalformedWhenItIsCutAnywhere(@ForAll("messages") Message message) {
        int kind = Kind.of(message).code();
        byte[] whole = MessageCodec.fields(message);

        for (int length = 0; length < whole.length; length++) {
            assertThat(MessageCodec.decode(kind, Arrays.copyOf(whole, length)))
                    .as("%d of %d bytes of %s", length, whole.length, message)
                    .isInstanceOf(Decoded.Malformed.class);
        }
    }

    @Property
    void whatANewerMinorVersionAddsAtTheEndIsIgnored(@ForAll("messages") Message message, @ForAll byte more) {
        byte[] whole = MessageCodec.fields(message);
        byte[] longer = Arrays.copyOf(whole, whole.length + 1);
        longer[whole.length] = more;

        assertThat(MessageCodec.decode(Kind.of(message).code(), longer)).isEqualTo(new Decoded.Known(message));
    }

    @Property(tries = 5_000)
    void noBodyAtAllMakesItThrow(
            @ForAll @IntRange(max = 0xFF) int kind, @ForAll @Size(max = Frame.LONGEST_BODY) byte[] body) {
        Frame frame = new Frame(new Header(Header.VERSION, kind, 1, 0, 0), Bytes.of(body));

        assertThat(MessageCodec.decode(frame)).isNotNull();
        assertThat(MessageCodec.decode(kind, body)).isNotNull();
    }

    @Test
    void anUnknownKindIsNamed() {
        Frame frame = new Frame(new Header(Header.VERSION, 0x6E, 1, 0, 0), Bytes.of((byte) 1));

        assertThat(MessageCodec.decode(frame)).isEqualTo(new Decoded.UnknownKind(0x6E));
    }

    @ParameterizedTest
    @CsvSource({
        "15, 03,                                             Sampler : 3",
        "13, 00 00 00 00 00 00 00,                           dose : 0",
        "46, 01 00 00 00 07 00 FF 00 00 00 00 00 00 00 00 00 00 00 00 00 00 00 00 00 00, Stage : 7",
        "46, 01 00 00 00 04 1C FF 00 00 00 00 00 00 00 00 00 00 00 00 00 00 00 00 00 00, Reason : 28",
        "43, 00 00 00 00 00 00,                              milliamps.size : 0",
        "43, 00 01 00 00 00 00 FF FF,                        milliamps : 65535",
        "43, 00 29 00 00 00 00,                              body : 6 bytes (expected: at least 8)",
        "48, 10,                                             body : 1 bytes (expected: at least 2)",
        "40, 00 00 00 00 00 00 00 00 00 00 00 01 80,         firmware :",
    })
    void saysInWordsWhyABodyIsMalformed(String kind, String body, String why) {
        byte[] bytes = java.util.HexFormat.ofDelimiter(" ").parseHex(body);

        Decoded decoded = MessageCodec.decode(Integer.parseInt(kind, 16), bytes);

        assertThat(decoded)
                .isInstanceOfSatisfying(
                        Decoded.Malformed.class,
                        malformed -> assertThat(malformed.why()).startsWith(why));
    }

    @Test
    void anOrderIsNeitherFramedNorReadWithoutASession() {
        Frame frame = new Frame(new Header(Header.VERSION, 0x16, 1, 0, 0), Bytes.of(new byte[28]));

        assertThatThrownBy(() -> MessageCodec.encode(new SafeAll(), 1, 0, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(MessageCodec.decode(frame)).isInstanceOf(Decoded.Malformed.class);
    }

    @Test
    void fieldsAreLittleEndianInTheOrderOfThePaper() {
        byte[] fields = MessageCodec.fields(new Arm(Sampler.SOIL, 0x0102, 0x03040506));

        assertThat(Bytes.of(fields)).hasToString("02020106050403");
    }

    @Test
    void absentReadingsTravelAsTheValueSetAside() {
        int absent = Readings.ABSENT;
        Readings none =
                new Readings(absent, absent, absent, absent, absent, absent, absent, absent, absent, absent, absent, 0);

        byte[] fields = MessageCodec.fields(status(none));

        assertThat(Bytes.of(Arrays.copyOfRange(fields, 30, 53)))
                .hasToString("ffff" + "ffff" + "ffff" + "ffff" + "ffff" + "0080" + "ffff" + "0080" + "ffff" + "ffff"
                        + "ff" + "0000");
    }

    @Test
    void readingsBeyondTheWireComeAsTheNearestItCanSay() {
        Readings wild = new Readings(70_000, -1, 1, 2, 3, -40_000, 4, 40_000, 5, 1 << 30, 300, 0x7FF);

        Decoded decoded = MessageCodec.decode(Kind.STATUS.code(), MessageCodec.fields(status(wild)));

        Readings tame = new Readings(65_534, 0, 1, 2, 3, -32_767, 4, 32_767, 5, 65_534, 254, 0x7FF);
        assertThat(decoded).isEqualTo(new Decoded.Known(status(tame)));
    }

    @Test
    void unusedFlagBitsAreIgnored() {
        byte[] fields = MessageCodec.fields(new Identity("", 1, 2, 3, true));
        fields[10] |= (byte) 0xFE;

        assertThat(MessageCodec.decode(Kind.IDENTITY.code(), fields))
                .isEqualTo(new Decoded.Known(new Identity("", 1, 2, 3, true)));
    }

    @Test
    void theSettingsCheckIsTheChecksumOfTheBlockAsItTravels() {
        Settings settings = new Settings(900, 4_000, 80, 120_000, 240_000, 9, 850, 5_000, 9_000, true, false);
        Settings other = new Settings(901, 4_000, 80, 120_000, 240_000, 9, 850, 5_000, 9_000, true, false);

        assertThat(MessageCodec.fields(settings)).hasSize(22);
        assertThat(MessageCodec.settingsCheck(settings)).isEqualTo(Crc16.of(MessageCodec.fields(settings)));
        assertThat(MessageCodec.settingsCheck(other)).isNotEqualTo(MessageCodec.settingsCheck(settings));
    }

    @Provide
    Arbitrary<Message> messages() {
        return Arbitraries.oneOf(Messages.orders(), Messages.opens(), Messages.downlinks());
    }

    @Provide
    Arbitrary<Message> unsealed() {
        return messages().filter(message -> !(message instanceof Order));
    }

    private static Status status(Readings readings) {
        List<SamplerState> states = List.of(SamplerState.SAFE, SamplerState.ARMED, SamplerState.FAULT);
        return new Status(1, states, 2, 3, 4, 5, 6, 7, 8, 9, 10, readings);
    }
}
