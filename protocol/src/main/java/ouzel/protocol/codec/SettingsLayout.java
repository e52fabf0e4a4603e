package ouzel.protocol.codec;

import ouzel.protocol.message.Settings;

/** The settings block, 22 bytes: alone in {@code SETTINGS}, and as the field of {@code CHANGE_SETTINGS}. */
final class SettingsLayout {
    private static final int WATER_FINISHES_ALONE = 1;
    private static final int AIR_FINISHES_ALONE = 2;

    private SettingsLayout() {}

    static void write(Settings settings, WireWriter body) {
        body.unsigned16(settings.waterDoseLimit());
        body.unsigned16(settings.airDoseLimit());
        body.unsigned16(settings.strokeLimitMillis());
        body.unsigned32(settings.waterRunLimitMillis());
        body.unsigned32(settings.airRunLimitMillis());
        body.unsigned8(settings.strokesPerCartridge());
        body.unsigned16(settings.waterFlow());
        body.unsigned16(settings.airFlow());
        body.unsigned16(settings.armLifetimeMillis());
        body.unsigned8((settings.waterFinishesAlone() ? WATER_FINISHES_ALONE : 0)
                | (settings.airFinishesAlone() ? AIR_FINISHES_ALONE : 0));
    }

    static Settings read(WireReader body) {
        int waterDoseLimit = body.unsigned16();
        int airDoseLimit = body.unsigned16();
        int strokeLimitMillis = body.unsigned16();
        long waterRunLimitMillis = body.unsigned32();
        long airRunLimitMillis = body.unsigned32();
        int strokesPerCartridge = body.unsigned8();
        int waterFlow = body.unsigned16();
        int airFlow = body.unsigned16();
        int armLifetimeMillis = body.unsigned16();
        int flags = body.unsigned8();
        return new Settings(
                waterDoseLimit,
                airDoseLimit,
                strokeLimitMillis,
                waterRunLimitMillis,
                airRunLimitMillis,
                strokesPerCartridge,
                waterFlow,
                airFlow,
                armLifetimeMillis,
                (flags & WATER_FINISHES_ALONE) != 0,
                (flags & AIR_FINISHES_ALONE) != 0);
    }
}
