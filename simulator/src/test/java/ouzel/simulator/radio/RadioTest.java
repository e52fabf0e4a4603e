package ouzel.simulator.radio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class RadioTest {
    private static final int CHUNKS = 20_000;
    private static final int INTERVAL_MILLIS = 20;

    @ParameterizedTest
    @CsvSource({"0.02", "0.10", "0.30"})
    void independentLossesLieWithinBinomialBounds(double loss) {
        Radio radio = new Radio(lossy(loss, Weather.leastBurst(loss)), 1);
        carry(radio, CHUNKS);

        double fourDeviations = 4 * Math.sqrt(CHUNKS * loss * (1 - loss));

        assertThat(radio.tally().lost()).isCloseTo(Math.round(CHUNKS * loss), within((long) fourDeviations));
    }

    @Test
    void lossesComeInBurstsOfTheMeanLength() {
        List<Integer> arrived = numbers(carry(new Radio(lossy(0.2, 5), 2), CHUNKS));
        long gaps = 0;
        long missing = 0;
        for (int index = 1; index < arrived.size(); index++) {
            int gap = arrived.get(index) - arrived.get(index - 1) - 1;
            gaps += gap > 0 ? 1 : 0;
            missing += gap;
        }

        // Some 800 bursts, geometric with mean 5 and deviation 4.5: standard error of the mean 0.16; four of them.
        assertThat((double) missing / gaps).isCloseTo(5, within(0.64));
        assertThat(missing / (double) CHUNKS).isCloseTo(0.2, within(0.05));
    }

    @Test
    void clearWeatherDeliversAllInOrderWithinTheDelay() {
        Radio radio = new Radio(Weather.CLEAR, 3);
        for (int chunk = 0; chunk < 100; chunk++) {
            radio.send(1_000, numbered(chunk, 10));
        }

        assertThat(radio.receive(1_015)).isEmpty();
        assertThat(numbers(radio.receive(1_000 + 174 + 30))).containsExactlyElementsOf(upTo(100));
    }

    /** 8N1 is ten bits a byte: 240 bytes take 2 400 / 57 600 s, 41.7 ms. */
    @Test
    void theSerialLineDelaysByItsBaudRate() {
        Radio radio = new Radio(still(), 4);
        radio.send(0, new byte[240]);
        radio.send(0, new byte[240]);

        assertThat(Radio.lineMicros(240)).isEqualTo(41_666);
        assertThat(radio.receive(41)).isEmpty();
        assertThat(radio.receive(42)).hasSize(1);
        assertThat(radio.receive(83)).isEmpty();
        assertThat(radio.receive(84)).hasSize(1);
    }

    @Test
    void aFullModemRefusesAndCounts() {
        Radio radio = new Radio(still(), 5);
        for (int chunk = 0; chunk < 30; chunk++) {
            radio.send(0, new byte[240]);
        }

        assertThat(radio.tally().overflowed()).isEqualTo(30 - Radio.BUFFER_BYTES / 240);
        assertThat(radio.underWay()).isEqualTo(Radio.BUFFER_BYTES / 240);
    }

    @Test
    void roughWeatherRepeatsReordersCorruptsAndHoldsBack() {
        Radio radio = new Radio(Weather.ROUGH, 6);
        List<Integer> arrived = numbers(carry(radio, CHUNKS));
        Tally tally = radio.tally();

        double survivors = tally.offered() - tally.lost();
        assertThat(tally.duplicated() / survivors).isCloseTo(Weather.ROUGH.duplicateRatio(), within(0.006));
        assertThat(tally.reordered() / survivors).isCloseTo(Weather.ROUGH.reorderRatio(), within(0.007));
        assertThat(tally.heldBack() / survivors).isCloseTo(Weather.ROUGH.holdBackRatio(), within(0.002));
        assertThat(tally.corrupted()).isPositive();
        assertThat(new HashSet<>(arrived)).hasSizeLessThan(arrived.size());
        assertThat(arrived).isNotEqualTo(arrived.stream().sorted().toList());
    }

    @Test
    void aChunkHeldBackArrivesSecondsLaterAndWhole() {
        Weather keeper = new Weather(0, 1, 0, 10, 10, 0, 0, 1, 4_000, List.of());
        Radio radio = new Radio(keeper, 7);
        radio.send(0, numbered(42, 20));

        assertThat(radio.receive(2_000)).isEmpty();
        assertThat(numbers(radio.receive(4_020))).containsExactly(42);
    }

    /** A copy of 100 bytes stays whole with (1 - 0.001)^800. */
    @Test
    void bitErrorsFlipBitsAtTheirRatio() {
        Radio radio = new Radio(new Weather(0, 1, 0, 0, 0, 0, 0.001, 0, 0, List.of()), 8);
        long flipped = 0;
        for (int chunk = 0; chunk < 4_000; chunk++) {
            radio.send(chunk * 100L, new byte[100]);
            flipped += ones(radio.receive(chunk * 100L + 50));
        }

        // 3.2 million bits: 3 200 flips, deviation 57; four of them. Chunks: 4 000 x 0.5509, deviation 31.5.
        assertThat(flipped).isCloseTo(3_200, within(228L));
        assertThat(radio.tally().corrupted()).isCloseTo(2_204, within(126L));
    }

    @Test
    void nothingGetsThroughAnOutage() {
        Radio radio = new Radio(still().with(List.of(new Weather.Outage(30_000, 42_000))), 9);
        List<Integer> arrived = new ArrayList<>();
        for (int second = 0; second < 60; second++) {
            radio.send(second * 1_000L, numbered(second, 10));
            arrived.addAll(numbers(radio.receive(second * 1_000L + 999)));
        }

        assertThat(arrived).hasSize(48).doesNotContain(30, 35, 41).contains(29, 42);
    }

    @Property(tries = 50)
    void theSameSeedGivesTheSameBytesAtTheSameTimes(@ForAll long seed) {
        List<byte[]> first = carry(new Radio(Weather.ROUGH, seed), 300);
        List<byte[]> second = carry(new Radio(Weather.ROUGH, seed), 300);

        assertThat(first.toArray(byte[][]::new)).isDeepEqualTo(second.toArray(byte[][]::new));
    }

    @Test
    void anotherSeedGivesOtherBytes() {
        assertThat(numbers(carry(new Radio(Weather.ROUGH, 1), 300)))
                .isNotEqualTo(numbers(carry(new Radio(Weather.ROUGH, 2), 300)));
    }

    @Property(tries = 50)
    void everyChunkIsRefusedLostDeliveredOrUnderWay(@ForAll long seed) {
        Radio radio = new Radio(Weather.ROUGH, seed);
        for (int chunk = 0; chunk < 500; chunk++) {
            radio.send(chunk, numbered(chunk, 20));
            radio.receive(chunk);
        }
        Tally tally = radio.tally();

        assertThat(tally.offered() + tally.duplicated())
                .isEqualTo(tally.overflowed() + tally.lost() + tally.delivered() + radio.underWay());
    }

    @Test
    void theSenderMayReuseItsArray() {
        Radio radio = new Radio(still(), 10);
        byte[] bytes = numbered(1, 10);
        radio.send(0, bytes);
        bytes[3] = 99;

        assertThat(numbers(radio.receive(100))).containsExactly(1);
    }

    private static Weather still() {
        return new Weather(0, 1, 0, 0, 0, 0, 0, 0, 0, List.of());
    }

    private static Weather lossy(double loss, double burst) {
        return new Weather(loss, burst, 0, 5, 5, 0, 0, 0, 0, List.of());
    }

    private static List<byte[]> carry(Radio radio, int chunks) {
        List<byte[]> arrived = new ArrayList<>();
        for (int chunk = 0; chunk < chunks; chunk++) {
            radio.send((long) chunk * INTERVAL_MILLIS, numbered(chunk, 20));
            arrived.addAll(radio.receive((long) chunk * INTERVAL_MILLIS));
        }
        arrived.addAll(radio.receive((long) chunks * INTERVAL_MILLIS + 60_000));
        return arrived;
    }

    private static byte[] numbered(int number, int length) {
        return ByteBuffer.allocate(length).putInt(number).array();
    }

    private static List<Integer> numbers(List<byte[]> chunks) {
        return chunks.stream().map(bytes -> ByteBuffer.wrap(bytes).getInt()).toList();
    }

    private static List<Integer> upTo(int count) {
        return IntStream.range(0, count).boxed().toList();
    }

    private static long ones(List<byte[]> chunks) {
        long ones = 0;
        for (byte[] chunk : chunks) {
            for (byte each : chunk) {
                ones += Integer.bitCount(each & 0xFF);
            }
        }
        return ones;
    }
}
