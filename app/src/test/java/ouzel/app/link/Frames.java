package ouzel.app.link;

import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;

/** Frames to send in tests, told apart by their sequence numbers. */
final class Frames {
    private static final int KIND = 0x42;
    private static final int PAYLOAD = 7;

    private Frames() {}

    /** A frame of 32 bytes on the line. */
    static Frame numbered(int sequence) {
        return sized(sequence, 17);
    }

    /** The longest frame there is. */
    static Frame longest(int sequence) {
        return sized(sequence, Frame.LONGEST_BODY);
    }

    private static Frame sized(int sequence, int length) {
        byte[] body = new byte[length];
        for (int i = 0; i < length; i++) {
            body[i] = (byte) (sequence + i);
        }
        return new Frame(new Header(Header.VERSION, KIND, PAYLOAD, sequence, 1_000L * sequence), Bytes.of(body));
    }
}
