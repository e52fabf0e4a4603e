package ouzel.simulator.controller;

import ouzel.protocol.message.Settings;

/**
 * The check of a settings block: CRC-16/IBM-3740 (polynomial 0x1021, start 0xFFFF, not reflected) over its fields in the
 * order of the record, little-endian, the two policies as bits 0 and 1 of one byte.
 */
final class SettingsCheck {
    private static final int POLYNOMIAL = 0x1021;
    private static final int START = 0xFFFF;

    private int crc = START;

    private SettingsCheck() {}

    static int of(Settings settings) {
        SettingsCheck check = new SettingsCheck();
        check.put(settings.waterDoseLimit(), 2);
        check.put(settings.airDoseLimit(), 2);
        check.put(settings.strokeLimitMillis(), 2);
        check.put(settings.waterRunLimitMillis(), 4);
        check.put(settings.airRunLimitMillis(), 4);
        check.put(settings.strokesPerCartridge(), 1);
        check.put(settings.waterFlow(), 2);
        check.put(settings.airFlow(), 2);
        check.put(settings.armLifetimeMillis(), 2);
        check.put((settings.waterFinishesAlone() ? 1 : 0) | (settings.airFinishesAlone() ? 2 : 0), 1);
        return check.crc;
    }

    private void put(long value, int bytes) {
        for (int i = 0; i < bytes; i++) {
            putByte((int) (value >> 8 * i) & 0xFF);
        }
    }

    private void putByte(int value) {
        crc ^= value << 8;
        for (int bit = 0; bit < 8; bit++) {
            crc = (crc & 0x8000) == 0 ? crc << 1 : crc << 1 ^ POLYNOMIAL;
        }
        crc &= 0xFFFF;
    }
}
