package ouzel.app.link;

import java.net.SocketAddress;

/** The address of a channel that is not a socket: the name of the place. */
final class LineAddress extends SocketAddress {
    private static final long serialVersionUID = 1L;

    private final String where;

    LineAddress(String where) {
        this.where = where;
    }

    @Override
    public String toString() {
        return where;
    }
}
