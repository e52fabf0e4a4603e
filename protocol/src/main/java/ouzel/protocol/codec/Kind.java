package ouzel.protocol.codec;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import ouzel.protocol.message.AcknowledgeEvents;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Challenge;
import ouzel.protocol.message.ChangeSettings;
import ouzel.protocol.message.Confirm;
import ouzel.protocol.message.CurrentTrace;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.FetchEvents;
import ouzel.protocol.message.Identity;
import ouzel.protocol.message.KeepAlive;
import ouzel.protocol.message.Message;
import ouzel.protocol.message.Open;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.QueryOutcome;
import ouzel.protocol.message.ReadSettings;
import ouzel.protocol.message.Reload;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Settings;
import ouzel.protocol.message.Status;
import ouzel.protocol.message.Stop;
import ouzel.protocol.message.Trigger;
import ouzel.protocol.message.ValveWaveform;
import ouzel.protocol.message.VersionRefusal;

/**
 * The message kinds, each with its byte on the wire, its record and the layout of its body.
 *
 * <p>Kinds 0x10 to 0x3F travel up, 0x40 to 0x6F down. To add a message: add its record, its layout and its line here.
 */
public enum Kind {
    /** Console asks for a session. */
    OPEN(0x10, Open.class, UplinkLayouts::write, UplinkLayouts::readOpen),
    /** Console proves its key. */
    CONFIRM(0x11, Confirm.class, UplinkLayouts::nothing, body -> new Confirm()),
    /** Console is there. */
    KEEP_ALIVE(0x12, KeepAlive.class, UplinkLayouts::nothing, body -> new KeepAlive()),
    /** Arm one sampler. */
    ARM(0x13, Arm.class, UplinkLayouts::write, UplinkLayouts::readArm),
    /** Start the armed sampler. */
    TRIGGER(0x14, Trigger.class, UplinkLayouts::write, UplinkLayouts::readTrigger),
    /** End one sampler's work. */
    STOP(0x15, Stop.class, UplinkLayouts::write, UplinkLayouts::readStop),
    /** Everything off. */
    SAFE_ALL(0x16, SafeAll.class, UplinkLayouts::nothing, body -> new SafeAll()),
    /** A fresh container or probe is fitted. */
    RELOAD(0x17, Reload.class, UplinkLayouts::write, UplinkLayouts::readReload),
    /** Replace the settings. */
    CHANGE_SETTINGS(0x18, ChangeSettings.class, UplinkLayouts::write, UplinkLayouts::readChangeSettings),
    /** Ask for the settings. */
    READ_SETTINGS(0x19, ReadSettings.class, UplinkLayouts::nothing, body -> new ReadSettings()),
    /** Events are safely recorded. */
    ACKNOWLEDGE_EVENTS(0x1A, AcknowledgeEvents.class, UplinkLayouts::write, UplinkLayouts::readAcknowledgeEvents),
    /** Ask for events still on board. */
    FETCH_EVENTS(0x1B, FetchEvents.class, UplinkLayouts::write, UplinkLayouts::readFetchEvents),
    /** Ask what became of an order. */
    QUERY_OUTCOME(0x1C, QueryOutcome.class, UplinkLayouts::write, UplinkLayouts::readQueryOutcome),

    /** Who the payload is. */
    IDENTITY(0x40, Identity.class, DownlinkLayouts::write, DownlinkLayouts::readIdentity),
    /** Payload proves its key. */
    CHALLENGE(0x41, Challenge.class, DownlinkLayouts::write, DownlinkLayouts::readChallenge),
    /** The payload as it stands. */
    STATUS(0x42, Status.class, StatusLayout::write, StatusLayout::read),
    /** Pump current. */
    CURRENT_TRACE(0x43, CurrentTrace.class, DownlinkLayouts::write, DownlinkLayouts::readCurrentTrace),
    /** Valve coil current. */
    VALVE_WAVEFORM(0x44, ValveWaveform.class, DownlinkLayouts::write, DownlinkLayouts::readValveWaveform),
    /** Something that happened. */
    EVENT(0x45, Event.class, DownlinkLayouts::write, DownlinkLayouts::readEvent),
    /** How far an order came. */
    OUTCOME(0x46, Outcome.class, DownlinkLayouts::write, DownlinkLayouts::readOutcome),
    /** The settings as they stand. */
    SETTINGS(0x47, Settings.class, SettingsLayout::write, SettingsLayout::read),
    /** Another major version was heard. */
    VERSION_REFUSAL(0x48, VersionRefusal.class, DownlinkLayouts::write, DownlinkLayouts::readVersionRefusal);

    private static final Map<Integer, Kind> BY_CODE =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Kind::code, Function.identity()));
    private static final Map<Class<?>, Kind> BY_TYPE =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Kind::type, Function.identity()));

    private final int code;
    private final Class<? extends Message> type;
    private final BiConsumer<Message, WireWriter> layout;
    private final Function<WireReader, ? extends Message> reader;

    <M extends Message> Kind(
            int code, Class<M> type, BiConsumer<M, WireWriter> layout, Function<WireReader, M> reader) {
        this.code = code;
        this.type = type;
        this.layout = (message, body) -> layout.accept(type.cast(message), body);
        this.reader = reader;
    }

    /** The byte that stands for this kind on the wire. */
    public int code() {
        return code;
    }

    /** The record that carries this kind. */
    public Class<? extends Message> type() {
        return type;
    }

    /** True if this kind travels in an envelope with a tag. */
    public boolean isOrder() {
        return Order.class.isAssignableFrom(type);
    }

    /** The kind with this byte, or empty if this version has none. */
    public static Optional<Kind> of(int code) {
        return Optional.ofNullable(BY_CODE.get(code));
    }

    /** The kind of {@code message}. */
    public static Kind of(Message message) {
        return BY_TYPE.get(message.getClass());
    }

    /** True if {@code code} travels from the console to the payload, known or not. */
    public static boolean travelsUp(int code) {
        return code >= 0x10 && code < 0x40;
    }

    void write(Message message, WireWriter body) {
        layout.accept(message, body);
    }

    Message read(WireReader body) {
        return reader.apply(body);
    }
}
