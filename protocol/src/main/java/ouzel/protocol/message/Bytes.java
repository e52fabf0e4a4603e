package ouzel.protocol.message;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.HexFormat;

/** An immutable run of bytes with value equality, so that records holding bytes compare as records should. */
public final class Bytes {
    private final byte[] value;

    private Bytes(byte[] value) {
        this.value = value;
    }

    /** Copies {@code value}. */
    public static Bytes of(byte... value) {
        return new Bytes(value.clone());
    }

    /** Copies {@code source} from index {@code from} up to, not including, {@code to}. */
    public static Bytes copyOf(byte[] source, int from, int to) {
        return new Bytes(Arrays.copyOfRange(source, from, to));
    }

    public int length() {
        return value.length;
    }

    /** A copy of the bytes. */
    public byte[] toArray() {
        return value.clone();
    }

    /** The bytes to read from, without a copy; big-endian like every new buffer. */
    public ByteBuffer readOnlyBuffer() {
        return ByteBuffer.wrap(value).asReadOnlyBuffer();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Bytes bytes && Arrays.equals(value, bytes.value);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(value);
    }

    @Override
    public String toString() {
        return HexFormat.of().formatHex(value);
    }
}
