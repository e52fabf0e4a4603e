package ouzel.app.flight;

import java.util.function.Consumer;
import ouzel.app.link.Wire;
import ouzel.simulator.radio.Radio;

/**
 * A simulated radio as the wire between the two ends of a line inside this program.
 *
 * <p><b>Thread:</b> link.
 */
final class RadioWire implements Wire {
    private final Radio radio;
    private Consumer<byte[]> farEnd = bytes -> {};
    private long nowMillis;

    RadioWire(Radio radio) {
        this.radio = radio;
    }

    @Override
    public void carry(byte[] bytes, Consumer<byte[]> end) {
        farEnd = end;
        radio.send(nowMillis, bytes);
    }

    /** Delivers what has arrived by {@code millis}. */
    void deliver(long millis) {
        nowMillis = millis;
        radio.receive(millis).forEach(farEnd);
    }
}
