package ouzel.app.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.zip.CRC32C;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ouzel.app.desk.Act;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Stimulus;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.session.LinkHealth;

class JournalCodecTest {
    private static final Moment AT = new Moment(123_456_789L, 1_790_000_000_000L);

    @Test
    void anySingleFlippedBitIsFoundOut() throws IOException {
        for (Entry entry : Stimuli.run(4)) {
            byte[] record = JournalCodec.write(entry);
            for (int bit = 0; bit < record.length * 8; bit++) {
                byte[] flipped = record.clone();
                flipped[bit / 8] ^= (byte) (1 << bit % 8);

                assertThat(read(flipped)).as("bit %d", bit).isNotInstanceOf(JournalCodec.Next.Whole.class);
            }
        }
    }

    @Test
    void readsTheLinkOfAnOlderJournalThatMeasuredLess() throws IOException {
        byte[] older = ("{\"what\":\"link-measured\",\"health\":{\"heard\":987,\"lost\":13,\"deliveryRatio\":0.987,"
                        + "\"corrupt\":2,\"roundTripMillis\":\"NaN\"}}")
                .getBytes(StandardCharsets.UTF_8);

        assertThat(StimulusJson.read(older))
                .isEqualTo(new Stimulus.LinkMeasured(LinkHealth.counted(987, 13, 0.987, 2, Double.NaN)));
    }

    @Test
    void aRecordCutAnywhereIsUnfinishedAndLeavesThePositionWhereItWas() throws IOException {
        byte[] record = JournalCodec.write(Stimuli.run(1).get(0));

        for (int length = 0; length < record.length; length++) {
            ByteBuffer cut = ByteBuffer.wrap(record, 0, length).order(ByteOrder.LITTLE_ENDIAN);
            assertThat(JournalCodec.read(cut)).isInstanceOf(JournalCodec.Next.Unfinished.class);
            assertThat(cut.position()).isZero();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 16, 65_529, -1, Integer.MIN_VALUE})
    void aLengthOutsideItsRangeIsDamageNotMemory(int length) {
        ByteBuffer record =
                ByteBuffer.allocate(32).order(ByteOrder.LITTLE_ENDIAN).putInt(0, length);

        assertThat(JournalCodec.read(record)).isInstanceOf(JournalCodec.Next.Damaged.class);
    }

    @Test
    void aRecordOfAnUnknownKindIsNotGuessedAt() {
        assertThat(read(framed((byte) 9, "")))
                .isEqualTo(new JournalCodec.Next.Damaged("a record of kind 9 that this version cannot read"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"what\":\"landed\"}",
                "{\"what\":\"not-sent\",\"orderId\":4}",
                "{\"what\":\"not-sent\",\"orderId\":4,\"sentence\":null}",
                "{\"what\":\"acted\",\"act\":{\"act\":\"arm\",\"sampler\":\"MUD\"}}",
                "{\"what\":\"ouzel.app.desk.Stimulus$Opened\"}",
                "not json"
            })
    void jsonThatIsNoStimulusIsDamage(String json) {
        assertThat(read(framed((byte) 3, json))).isInstanceOf(JournalCodec.Next.Damaged.class);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 9, 10, 239})
    void heardBytesThatAreNoMessageAreDamage(int length) {
        assertThat(read(framed((byte) 1, "x".repeat(length)))).isInstanceOf(JournalCodec.Next.Damaged.class);
    }

    @Test
    void theNamesInTheFileAreNotThoseOfClasses() throws IOException {
        byte[] record = JournalCodec.write(new Entry(AT, new Stimulus.Acted(new Act.Arm(Sampler.AIR))));

        String json = new String(record, 25, record.length - 25, StandardCharsets.UTF_8);
        assertThat(json).isEqualTo("{\"what\":\"acted\",\"act\":{\"act\":\"arm\",\"sampler\":\"AIR\"}}");
    }

    @Test
    void everyStimulusAndEveryActHasItsName() {
        Set<Class<?>> told = new HashSet<>(List.of(Stimulus.class.getPermittedSubclasses()));
        told.removeAll(Set.of(Stimulus.Heard.class, Stimulus.Ticked.class));

        assertThat(named(StimulusJson.StimulusNames.class)).isEqualTo(told);
        assertThat(named(StimulusJson.ActNames.class)).isEqualTo(Set.of(Act.class.getPermittedSubclasses()));
    }

    @Test
    void aSentenceThatNoReaderWouldTakeIsNotWritten() {
        Entry entry = new Entry(AT, new Stimulus.SessionLost("x".repeat(70_000)));

        assertThatThrownBy(() -> JournalCodec.write(entry)).hasMessageContaining("expected: at most 65536");
    }

    private static Set<Class<?>> named(Class<?> names) {
        Set<Class<?>> classes = new HashSet<>();
        Arrays.stream(names.getAnnotation(JsonSubTypes.class).value()).forEach(type -> classes.add(type.value()));
        return classes;
    }

    private static JournalCodec.Next read(byte[] record) {
        return JournalCodec.read(ByteBuffer.wrap(record).order(ByteOrder.LITTLE_ENDIAN));
    }

    /** A record with the right checksum around any kind and body, laid out by hand after the class's drawing. */
    private static byte[] framed(byte kind, String body) {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        ByteBuffer content = ByteBuffer.allocate(17 + bytes.length).order(ByteOrder.LITTLE_ENDIAN);
        content.put(kind).putLong(AT.nanos()).putLong(AT.utcMillis()).put(bytes);
        ByteBuffer length =
                ByteBuffer.allocate(4).order(ByteOrder.LITTLE_ENDIAN).putInt(0, content.capacity());
        CRC32C crc = new CRC32C();
        crc.update(length.array());
        crc.update(content.array());
        ByteBuffer record = ByteBuffer.allocate(8 + content.capacity()).order(ByteOrder.LITTLE_ENDIAN);
        return record.put(length)
                .putInt((int) crc.getValue())
                .put(content.array())
                .array();
    }
}
