package ouzel.app.link;

import java.util.function.Consumer;

/**
 * What lies between the two ends of a line inside this program, in one direction: nothing at all, or the image of a
 * radio that loses, delays and damages.
 */
@FunctionalInterface
public interface Wire {
    /** Bytes arrive whole, in order and at once. */
    Wire PERFECT = (bytes, farEnd) -> farEnd.accept(bytes);

    /**
     * Takes the bytes of one frame. Thread: link.
     *
     * @param bytes what left one end; nobody changes it afterwards
     * @param farEnd takes what arrives, now or later, in whatever pieces, from any thread
     */
    void carry(byte[] bytes, Consumer<byte[]> farEnd);
}
