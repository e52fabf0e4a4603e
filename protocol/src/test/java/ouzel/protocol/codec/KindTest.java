package ouzel.protocol.codec;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.Message;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Uplink;

class KindTest {
    @Test
    void everyRecordOfTheFamilyHasExactlyOneKind() {
        Set<Class<?>> records = recordsOf(Message.class);

        assertThat(Arrays.stream(Kind.values()).map(Kind::type))
                .hasSameSizeAs(records)
                .containsAll(asMessages(records));
    }

    @Test
    void theDirectionCanBeReadFromTheCode() {
        assertThat(Kind.values())
                .allSatisfy(kind -> assertThat(Kind.travelsUp(kind.code()))
                        .isEqualTo(Uplink.class.isAssignableFrom(kind.type()))
                        .isNotEqualTo(Downlink.class.isAssignableFrom(kind.type())));
    }

    @Test
    void allUplinkKindsButOpenAreOrders() {
        assertThat(Arrays.stream(Kind.values()).filter(kind -> Kind.travelsUp(kind.code())))
                .allSatisfy(kind -> assertThat(kind.isOrder())
                        .isEqualTo(kind != Kind.OPEN)
                        .isEqualTo(Order.class.isAssignableFrom(kind.type())));
    }

    @Test
    void isFoundByItsCode() {
        assertThat(Kind.values())
                .allSatisfy(kind -> assertThat(Kind.of(kind.code())).contains(kind));
        assertThat(Kind.of(0x00)).isEmpty();
        assertThat(Kind.of(0x1D)).isEmpty();
        assertThat(Kind.of(0xFF)).isEmpty();
    }

    @SuppressWarnings("unchecked")
    private static Set<Class<? extends Message>> asMessages(Set<Class<?>> records) {
        return (Set<Class<? extends Message>>) (Set<?>) records;
    }

    private static Set<Class<?>> recordsOf(Class<?> sealed) {
        Set<Class<?>> records = new HashSet<>();
        for (Class<?> permitted : sealed.getPermittedSubclasses()) {
            if (permitted.isSealed()) {
                records.addAll(recordsOf(permitted));
            } else {
                records.add(permitted);
            }
        }
        return records;
    }
}
