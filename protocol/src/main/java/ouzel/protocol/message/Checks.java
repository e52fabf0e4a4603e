package ouzel.protocol.message;

/** Range checks shared by the message records; each failure names the field, its value and what was expected. */
final class Checks {
    private Checks() {}

    static int unsigned8(String name, int value) {
        return range(name, value, 0, 0xFF);
    }

    static int unsigned16(String name, int value) {
        return range(name, value, 0, 0xFFFF);
    }

    static long unsigned32(String name, long value) {
        if (value < 0 || value > 0xFFFF_FFFFL) {
            throw new IllegalArgumentException(name + " : " + value + " (expected: 0 to 4294967295)");
        }
        return value;
    }

    static int range(String name, int value, int least, int greatest) {
        if (value < least || value > greatest) {
            throw new IllegalArgumentException(name + " : " + value + " (expected: " + least + " to " + greatest + ")");
        }
        return value;
    }

    static void length(String name, Bytes value, int expected) {
        if (value.length() != expected) {
            throw new IllegalArgumentException(name + " : " + value.length() + " bytes (expected: " + expected + ")");
        }
    }
}
