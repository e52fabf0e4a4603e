package ouzel.protocol.session;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Message;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Readings;

/**
 * One entry of the files in {@code protocol/vectors}: named values, and the frame that they make.
 *
 * @param values in the order of the file
 */
record Vector(Map<String, String> values) {
    private static final Path FOLDER = Path.of("vectors");

    /** The keys of the session in which all examples are sealed. */
    static Vector keys() {
        return in("opening.txt")
                .filter(vector -> vector.name().equals("session-keys"))
                .findFirst()
                .orElseThrow();
    }

    /** Every example frame. */
    static Stream<Vector> frames() {
        return Stream.of("opening.txt", "orders.txt", "telemetry.txt")
                .flatMap(Vector::in)
                .filter(vector -> vector.values().containsKey("line"));
    }

    static Vector named(String name) {
        return frames().filter(vector -> vector.name().equals(name)).findFirst().orElseThrow();
    }

    String name() {
        return values.get("name");
    }

    /** The frame as it travels, delimiters and all. */
    byte[] line() {
        return bytes("line");
    }

    byte[] bytes(String name) {
        return HexFormat.ofDelimiter(" ").parseHex(values.get(name));
    }

    long number(String name) {
        return Long.decode(values.get(name).split(" ")[0]);
    }

    Kind kind() {
        return Kind.of((int) number("frame.kind")).orElseThrow();
    }

    Header header() {
        return new Header(
                Header.VERSION,
                kind().code(),
                (int) number("frame.payload"),
                (int) number("frame.sequence"),
                number("frame.timeMillis"));
    }

    /** The message that the fields make, through its record's constructor. */
    Message message() {
        return (Message) record(kind().type());
    }

    Optional<Envelope> envelope() {
        return message() instanceof Order order
                ? Optional.of(new Envelope(
                        number("envelope.counter"),
                        number("envelope.orderId"),
                        number("envelope.expiresAtMillis"),
                        order))
                : Optional.empty();
    }

    @Override
    public String toString() {
        return name();
    }

    private Object record(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        Object[] parts = Arrays.stream(components).map(this::component).toArray();
        try {
            return type.getDeclaredConstructor(Arrays.stream(components)
                            .map(RecordComponent::getType)
                            .toArray(Class<?>[]::new))
                    .newInstance(parts);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(name() + " makes no " + type.getSimpleName(), e);
        }
    }

    private Object component(RecordComponent component) {
        Class<?> type = component.getType();
        if (type.isRecord()) {
            return record(type);
        }
        String text = values.get(component.getName());
        if (type == List.class) {
            boolean isOfStates = component.getGenericType().getTypeName().contains("SamplerState");
            Class<?> element = isOfStates ? ouzel.protocol.message.SamplerState.class : Integer.class;
            return Arrays.stream(text.split(" "))
                    .map(each -> value(element, each))
                    .toList();
        }
        return value(type, text);
    }

    private static Object value(Class<?> type, String text) {
        if (type.isEnum()) {
            return Arrays.stream(type.getEnumConstants())
                    .filter(constant -> constant.toString().equals(text))
                    .findFirst()
                    .orElseThrow();
        }
        if (type == Bytes.class) {
            return Bytes.of(HexFormat.ofDelimiter(" ").parseHex(text));
        }
        if (type == boolean.class) {
            return Boolean.valueOf(text);
        }
        if (type == String.class) {
            return text;
        }
        return number(type, text);
    }

    private static Object number(Class<?> type, String text) {
        if (text.equals("absent")) {
            return Readings.ABSENT;
        }
        long wide = text.startsWith("0x") ? Long.parseUnsignedLong(text.substring(2), 16) : Long.parseLong(text);
        if (type == long.class) {
            return wide;
        }
        return (int) wide;
    }

    private static Stream<Vector> in(String file) {
        try {
            String text = Files.readString(FOLDER.resolve(file));
            return Arrays.stream(text.split("\n\n")).map(Vector::parse).filter(vector -> !vector.values.isEmpty());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Vector parse(String entry) {
        Map<String, String> values = new LinkedHashMap<>();
        entry.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).forEach(line -> {
            String[] parts = line.split(": ", 2);
            values.put(parts[0], parts[1]);
        });
        return new Vector(values);
    }
}
