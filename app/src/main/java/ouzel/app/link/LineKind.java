package ouzel.app.link;

/** What carries the frames of a line. */
public enum LineKind {
    /** Both ends are in this program: a rehearsal. */
    IN_PROCESS("inside this program"),
    /** A network connection. */
    TCP("TCP"),
    /** A serial line, which may lead to a radio and real pumps; the rehearsal key is refused on it. */
    SERIAL("serial line");

    private final String words;

    LineKind(String words) {
        this.words = words;
    }

    /** How a person would call it. */
    public String words() {
        return words;
    }

    /** True where something that moves may be at the far end. */
    public boolean isSerial() {
        return this == SERIAL;
    }
}
