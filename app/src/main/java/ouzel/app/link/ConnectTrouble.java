package ouzel.app.link;

import io.netty.channel.ConnectTimeoutException;
import java.net.BindException;
import java.net.ConnectException;
import java.net.NoRouteToHostException;
import java.net.SocketException;
import java.net.UnknownHostException;

/** What can be wrong with a connection, in sentences: what, where, and what to do. */
final class ConnectTrouble {
    private ConnectTrouble() {}

    /** Why a line to {@code where} did not open. */
    static String ofOpening(String where, Throwable cause) {
        if (cause instanceof LineFailure) {
            return cause.getMessage();
        }
        if (cause instanceof UnknownHostException) {
            return "No computer is known by the name in " + where + ". Check the name and the network.";
        }
        if (cause instanceof ConnectTimeoutException) {
            return "Nothing answered at " + where + " within " + FrameLine.CONNECT_LIMIT_MILLIS / 1_000
                    + " s. Check the address and the network.";
        }
        if (cause instanceof NoRouteToHostException || isUnreachable(cause)) {
            return "There is no way to " + where + ". Check the address and the network.";
        }
        if (cause instanceof ConnectException) {
            return "Nothing listens at " + where + ". Start the payload there, or check the port number.";
        }
        return "The line to " + where + " could not be opened (" + cause.getMessage() + "). Check the address.";
    }

    private static boolean isUnreachable(Throwable cause) {
        return cause instanceof SocketException
                && String.valueOf(cause.getMessage()).contains("unreachable");
    }

    /** Why nobody can be let in at {@code where}. */
    static String ofListening(String where, Throwable cause) {
        if (cause instanceof BindException) {
            return "Nobody can connect at " + where + ": the port number is in use or not allowed. Choose another one.";
        }
        return ofOpening(where, cause);
    }

    /** Why an open line to {@code where} was lost. */
    static String ofLosing(String where, Throwable cause) {
        if (cause instanceof LineFailure) {
            return cause.getMessage();
        }
        return "The connection to " + where + " broke (" + cause.getMessage() + "). Check the network and the far end.";
    }
}
