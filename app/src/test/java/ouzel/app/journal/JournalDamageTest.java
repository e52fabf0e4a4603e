package ouzel.app.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Stimulus;

/** Any record on a damaged disk: it is read as it was written or not at all. */
class JournalDamageTest {
    private static final Moment AT = new Moment(-5, 1_790_000_000_000L);

    @Property(tries = 100)
    void isNotReadWithAnyBitTurned(@ForAll("stimuli") Stimulus stimulus) throws IOException {
        byte[] record = JournalCodec.write(new Entry(AT, stimulus));

        for (int bit = 0; bit < record.length * 8; bit++) {
            byte[] turned = record.clone();
            turned[bit / 8] ^= (byte) (1 << bit % 8);
            assertThat(read(turned)).as("bit %d", bit).isNotInstanceOf(JournalCodec.Next.Whole.class);
        }
    }

    @Property(tries = 100)
    void isUnfinishedWhenCutAnywhere(@ForAll("stimuli") Stimulus stimulus) throws IOException {
        byte[] record = JournalCodec.write(new Entry(AT, stimulus));

        for (int length = 0; length < record.length; length++) {
            assertThat(read(Arrays.copyOf(record, length)))
                    .as("%d bytes", length)
                    .isInstanceOf(JournalCodec.Next.Unfinished.class);
        }
    }

    @Provide
    Arbitrary<Stimulus> stimuli() {
        return Stimuli.all();
    }

    private static JournalCodec.Next read(byte[] record) {
        return JournalCodec.read(ByteBuffer.wrap(record).order(ByteOrder.LITTLE_ENDIAN));
    }
}
