package ouzel.app.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Stimulus;

class JournalRoundTripTest {
    @Property(tries = 500)
    void everyStimulusComesBackAsItWas(@ForAll("moments") Moment at, @ForAll("stimuli") Stimulus stimulus)
            throws IOException {
        Entry entry = new Entry(at, stimulus);

        byte[] record = JournalCodec.write(entry);

        assertThat(JournalCodec.read(ByteBuffer.wrap(record).order(ByteOrder.LITTLE_ENDIAN)))
                .isEqualTo(new JournalCodec.Next.Whole(entry, record.length));
    }

    @Provide
    Arbitrary<Stimulus> stimuli() {
        return Stimuli.all();
    }

    @Provide
    Arbitrary<Moment> moments() {
        return Stimuli.moments();
    }
}
