package ouzel.simulator.controller;

/** Why the controller started; the code is the value of a BOOTED event. */
public enum BootCause {
    /** Power was switched on. */
    POWER(0),
    /** The supply sagged below what the controller needs. */
    BROWN_OUT(1),
    /** The program hung and was restarted. */
    WATCHDOG(2);

    private final int code;

    BootCause(int code) {
        this.code = code;
    }

    /** The value that stands for this cause in a BOOTED event. */
    public int code() {
        return code;
    }
}
