package ouzel.app.link;

import java.util.Set;
import ouzel.app.link.LineFailure.Cause;

/** What can be wrong with a serial line, in sentences: what, where, and what to do. */
final class SerialTrouble {
    private static final int NOT_FOUND = 2;
    private static final int DENIED_BY_WINDOWS = 5;
    private static final int NO_PERMISSION = 13;
    /** The errors for a lock somebody else holds (11 on Linux, 35 on macOS) and for a busy device (16). */
    private static final Set<Integer> BUSY = Set.of(11, 35, 16);
    /** No input/output, no such device or address, no such device: the name outlived the thing. */
    private static final Set<Integer> UNPLUGGED = Set.of(5, 6, 19);
    /** Not a terminal, or a terminal that refuses the speed (25); an argument refused (22). */
    private static final Set<Integer> NOT_SUITABLE = Set.of(25, 22);

    private SerialTrouble() {}

    /**
     * Explains why a line did not open.
     *
     * @param errorCode the system's number for the failure
     * @param exists whether the system knows a file of that name; never true for names like {@code COM3}
     */
    static LineFailure ofOpening(String name, int baud, int errorCode, boolean exists) {
        String line = "The serial line " + name;
        if (errorCode == NO_PERMISSION) {
            return new LineFailure(
                    Cause.NO_PERMISSION,
                    "You have no permission to use " + name + ". Add yourself to the group dialout and log in again.");
        }
        if (errorCode == NOT_FOUND && exists) {
            return new LineFailure(Cause.IN_USE, line + " is already in use by this program.");
        }
        if (BUSY.contains(errorCode) || errorCode == DENIED_BY_WINDOWS && !name.startsWith("/")) {
            return new LineFailure(
                    Cause.IN_USE,
                    line + " is in use by another program. Close that program; just after plugging in, wait half a "
                            + "minute.");
        }
        if (errorCode == NOT_FOUND || UNPLUGGED.contains(errorCode)) {
            return notThere(name, null);
        }
        if (NOT_SUITABLE.contains(errorCode)) {
            return new LineFailure(
                    Cause.NOT_SUITABLE,
                    name + " is not a serial line, or does not know a speed of " + baud
                            + " baud. Choose another line or speed.");
        }
        return new LineFailure(
                Cause.OTHER,
                line + " could not be opened: the system gave error " + errorCode + ". Unplug it and "
                        + "plug it in again.");
    }

    static LineFailure notThere(String name, Throwable origin) {
        return new LineFailure(
                Cause.NOT_THERE, "The serial line " + name + " is not there. Check the name and the plug.", origin);
    }

    static LineFailure gone(String name) {
        return new LineFailure(Cause.LOST, "The serial line " + name + " is gone. Check the plug and the cable.");
    }

    /** For a computer on which the library cannot unpack or load its native part. */
    static String noNativePart() {
        return "Serial lines cannot be used: the native part of the port library could not be loaded from the folder "
                + System.getProperty("java.io.tmpdir")
                + ". Start with -Djava.io.tmpdir=FOLDER, a folder that programs may run from, or name a folder that "
                + "holds the native part with -DjSerialComm.library.path=FOLDER.";
    }
}
