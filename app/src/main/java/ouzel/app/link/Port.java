package ouzel.app.link;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Where a line leads. The constructors refuse what cannot be meant with an {@link IllegalArgumentException} whose text
 * can be shown to a person as it is.
 *
 * <p>As one word: {@code /dev/ttyUSB0}, {@code COM3@115200}, {@code 192.168.4.1:5760}, {@code [::1]:5760}.
 */
public sealed interface Port {

    /** A short text that names the place, and that {@link #parse} reads back as an equal port. */
    String where();

    /** What carries the frames. */
    LineKind kind();

    /**
     * Reads one word: {@code host:port}, a serial line's name with or without {@code @speed}, or {@code auto}.
     *
     * @throws IllegalArgumentException if it is neither; the text says what is wrong
     */
    static Port parse(String text) {
        String word = text.strip();
        if (Search.isMeantBy(word)) {
            return Search.parse(word);
        }
        return word.startsWith("/") || !word.contains(":") ? Serial.parse(word) : Tcp.parse(word);
    }

    /**
     * A network address.
     *
     * @param host name or number of the computer
     * @param port 1 to 65 535
     */
    record Tcp(String host, int port) implements Port {
        private static final int HIGHEST_PORT = 65_535;

        /** Refuses what cannot be the name of a computer or a port number. */
        public Tcp {
            host = host.strip();
            if (host.isEmpty()) {
                throw new IllegalArgumentException(
                        "The name of the computer is empty. Write host:port, for example " + "192.168.4.1:5760.");
            }
            if (host.contains(" ") || host.contains("[") || host.contains("]")) {
                throw new IllegalArgumentException("\"" + host + "\" is not the name of a computer.");
            }
            if (port < 1 || port > HIGHEST_PORT) {
                throw new IllegalArgumentException(
                        "There is no port number " + port + ". It must be between 1 and " + HIGHEST_PORT + ".");
            }
        }

        /**
         * Reads {@code host:port}; a host with colons of its own stands in square brackets.
         *
         * @throws IllegalArgumentException if it cannot be read; the text says what is wrong
         */
        public static Tcp parse(String text) {
            String word = text.strip();
            int colon = word.lastIndexOf(':');
            if (colon < 0) {
                throw new IllegalArgumentException(
                        "\"" + word + "\" has no port number. Write host:port, for example 192.168.4.1:5760.");
            }
            String host = word.substring(0, colon);
            if (host.startsWith("[") && host.endsWith("]")) {
                host = host.substring(1, host.length() - 1);
            } else if (host.contains(":")) {
                throw new IllegalArgumentException(
                        "\"" + word + "\" has more than one colon. Put the address in brackets: [address]:port.");
            }
            return new Tcp(host, number("port number", word.substring(colon + 1)));
        }

        @Override
        public String where() {
            return (host.contains(":") ? "[" + host + "]" : host) + ":" + port;
        }

        @Override
        public LineKind kind() {
            return LineKind.TCP;
        }
    }

    /**
     * A serial line, eight data bits, no parity, one stop bit, no flow control.
     *
     * @param name the system's name for it, such as {@code /dev/ttyUSB0} or {@code COM3}
     * @param baud one of {@link #SPEEDS}
     * @param holdsControlLinesLow true to keep the two control lines DTR and RTS low while opening, for controllers
     *     that restart when they rise
     */
    record Serial(String name, int baud, boolean holdsControlLinesLow) implements Port {
        /** The speeds that can be chosen, baud. */
        public static final List<Integer> SPEEDS =
                List.of(9_600, 19_200, 38_400, 57_600, 115_200, 230_400, 460_800, 921_600);
        /** The speed if nobody says otherwise, baud. */
        public static final int USUAL_SPEED = 57_600;

        /** Refuses an empty name and a speed that is not offered. */
        public Serial {
            name = name.strip();
            if (name.isEmpty()) {
                throw new IllegalArgumentException(
                        "The name of the serial line is empty. It is something like /dev/ttyUSB0 or COM3.");
            }
            if (!SPEEDS.contains(baud)) {
                throw new IllegalArgumentException("A speed of " + baud + " baud is not offered. Choose one of "
                        + SPEEDS.stream().map(String::valueOf).collect(Collectors.joining(", ")) + ".");
            }
        }

        /** A line whose control lines are left to the system. */
        public Serial(String name, int baud) {
            this(name, baud, false);
        }

        /**
         * Reads a name, or {@code name@speed}.
         *
         * @throws IllegalArgumentException if it cannot be read; the text says what is wrong
         */
        public static Serial parse(String text) {
            String word = text.strip();
            int at = word.lastIndexOf('@');
            return at < 0
                    ? new Serial(word, USUAL_SPEED)
                    : new Serial(word.substring(0, at), number("speed", word.substring(at + 1)));
        }

        @Override
        public String where() {
            return name + "@" + baud;
        }

        @Override
        public LineKind kind() {
            return LineKind.SERIAL;
        }
    }

    /**
     * Whichever serial line the payload answers on. As one word: {@code auto}, {@code auto@115200}, and with more names
     * to look at {@code auto,/dev/serial/by-id/*}.
     *
     * @param patterns names to look at beside those that the system lists; {@code *} and {@code ?} stand for letters of
     *     the last part
     * @param baud one of {@link Serial#SPEEDS}
     * @param holdsControlLinesLow as for {@link Serial}
     */
    record Search(List<String> patterns, int baud, boolean holdsControlLinesLow) implements Port {
        /** What stands for any line. */
        public static final String WORD = "auto";

        /** Refuses an empty pattern and a speed that is not offered. */
        public Search {
            patterns = List.copyOf(patterns);
            patterns.forEach(pattern -> new Serial(pattern, Serial.USUAL_SPEED));
            new Serial(WORD, baud);
        }

        /** True for a word that means a search. */
        public static boolean isMeantBy(String text) {
            return text.equals(WORD) || text.startsWith(WORD + ",") || text.startsWith(WORD + "@");
        }

        /**
         * Reads a word that {@link #isMeantBy} recognises.
         *
         * @throws IllegalArgumentException if it cannot be read; the text says what is wrong
         */
        public static Search parse(String text) {
            Serial whole = Serial.parse(text);
            List<String> words = Arrays.asList(whole.name().split(",", -1));
            return new Search(words.subList(1, words.size()), whole.baud(), false);
        }

        @Override
        public String where() {
            return Stream.concat(Stream.of(WORD), patterns.stream()).collect(Collectors.joining(",")) + "@" + baud;
        }

        @Override
        public LineKind kind() {
            return LineKind.SERIAL;
        }
    }

    private static int number(String what, String digits) {
        try {
            return Integer.parseInt(digits.strip());
        } catch (NumberFormatException noNumber) {
            throw new IllegalArgumentException(
                    "\"" + digits.strip() + "\" is not a " + what + ": a whole number is expected.", noNumber);
        }
    }
}
