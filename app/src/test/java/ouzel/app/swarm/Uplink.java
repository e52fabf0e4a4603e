package ouzel.app.swarm;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.message.Bytes;

/** Every frame that any console has sent, and those that come again later, whole or forged. */
final class Uplink {
    private record Copy(long atMillis, long order, byte[] bytes) implements Comparable<Copy> {
        @Override
        public int compareTo(Copy other) {
            int byTime = Long.compare(atMillis, other.atMillis);
            return byTime != 0 ? byTime : Long.compare(order, other.order);
        }
    }

    private final Map<Long, Long> firstSent = new HashMap<>();
    private final List<Frame> sent = new ArrayList<>();
    private final PriorityQueue<Copy> late = new PriorityQueue<>();
    private long copies;

    /** A console sends {@code frame}; true if its order is a new one. */
    boolean sent(Frame frame, Optional<Given> order, long nowMillis) {
        sent.add(frame);
        return order.filter(given -> given.orderId() != 0)
                .filter(given -> firstSent.putIfAbsent(given.orderId(), nowMillis) == null)
                .isPresent();
    }

    /** When the order of {@code id} left its console; empty for an order of no console. */
    Optional<Long> firstSent(long id) {
        return Optional.ofNullable(firstSent.get(id));
    }

    /** Brings the frame of {@code kind} that was sent {@code back} frames ago again, at {@code atMillis}. */
    void again(int kind, int back, long atMillis) {
        find(kind, back).ifPresent(frame -> bring(FrameEncoder.encode(frame), atMillis));
    }

    /** The same with one bit of its body changed. */
    void forge(int kind, int back, int bit, long atMillis) {
        find(kind, back).filter(frame -> frame.body().length() > 0).ifPresent(frame -> {
            byte[] body = frame.body().toArray();
            body[bit / 8 % body.length] ^= (byte) (1 << bit % 8);
            bring(FrameEncoder.encode(new Frame(frame.header(), Bytes.of(body))), atMillis);
        });
    }

    /** Brings {@code bytes} to the payload at {@code atMillis}. */
    void bring(byte[] bytes, long atMillis) {
        late.add(new Copy(atMillis, copies++, bytes));
    }

    /** The next late copy that is due; empty if none is. */
    Optional<byte[]> due(long nowMillis) {
        boolean isDue = !late.isEmpty() && late.peek().atMillis() <= nowMillis;
        return isDue ? Optional.of(late.remove().bytes()) : Optional.empty();
    }

    private Optional<Frame> find(int kind, int back) {
        int left = back;
        for (int index = sent.size() - 1; index >= 0; index--) {
            Frame frame = sent.get(index);
            if ((kind == 0 || frame.header().kind() == kind) && left-- == 0) {
                return Optional.of(frame);
            }
        }
        return Optional.empty();
    }
}
