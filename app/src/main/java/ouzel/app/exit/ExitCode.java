package ouzel.app.exit;

/** Every way the program can end, as the number that the shell sees. The numbers never change their meaning. */
public enum ExitCode {
    /** All went well; every sample, if there were any, was accepted. */
    OK(0, "all went well, every sample accepted"),
    /** A rehearsal or a playback holds a sample that is suspect or void. */
    SAMPLE_NOT_ACCEPTED(1, "a sample was suspect or void"),
    /** The command line was not understood. */
    USAGE(2, "the command line was not understood"),
    /** The port, host or file named does not exist or does not answer. */
    PORT_MISSING(3, "the port is not there, or nobody answers on it"),
    /** Another program holds the port. */
    PORT_IN_USE(4, "the port is in use by another program"),
    /** This user may not open the port. */
    PORT_FORBIDDEN(5, "this user may not open the port"),
    /** The file is no journal, is of a newer format, or cannot be read at all. */
    JOURNAL_UNREADABLE(6, "the journal cannot be read"),
    /** The journal ends in a damaged or unfinished record; what stands before it was used. Goes before code 1. */
    JOURNAL_CUT(7, "the journal was cut or damaged; its whole part was used"),
    /** The payload does not hold the same pairing key. */
    WRONG_KEY(8, "the payload holds another pairing key"),
    /** A window was asked for where there is no display. */
    NO_DISPLAY(9, "there is no display for a window"),
    /** The payload speaks another major version of the protocol. */
    OTHER_VERSION(10, "the payload speaks another version"),
    /** The pairing key file is missing, malformed, open to others, or not allowed on this line. */
    KEY_REFUSED(11, "the pairing key cannot be used"),
    /** A journal or a result could not be written. */
    NOT_WRITABLE(12, "a file could not be written"),
    /** The port exists, but cannot be used as asked: not a serial line, or not at that speed. */
    PORT_UNSUITABLE(13, "the port cannot be used as asked"),
    /** A link test found the link too poor to fly with. */
    LINK_POOR(14, "the link is too poor: too few frames arrive, or answers come too late"),
    /** A fault of this program; the log file says more. */
    INTERNAL(70, "a fault of this program; the log says more");

    private final int code;
    private final String meaning;

    ExitCode(int code, String meaning) {
        this.code = code;
        this.meaning = meaning;
    }

    /** The number given to the shell, 0 to 125. */
    public int code() {
        return code;
    }

    /** What it means, in a few words. */
    public String meaning() {
        return meaning;
    }
}
