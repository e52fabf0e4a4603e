package ouzel.protocol.message;

/** What a payload says. Telemetry is not secret and carries no tag; only {@link Challenge} proves who speaks. */
public sealed interface Downlink extends Message
        permits Identity, Challenge, Status, CurrentTrace, ValveWaveform, Event, Outcome, Settings, VersionRefusal {}
