package ouzel.protocol.session;

import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Downlink;

/** One thing that a frame meant to a console's session. */
public sealed interface Heard {
    /** The payload said something. Before the session is open, and for an unbound session, any payload may have. */
    record Said(Downlink message, Header header) implements Heard {}

    /** The session is in force; orders may be sealed. */
    record Opened(int payload, long session) implements Heard {}

    /**
     * The session is no longer in force, for the reason given in words.
     *
     * @param reopens true if the session asks for a new one by itself, as after a restart of the payload; false if a
     *     person should decide, as when another console has taken the payload over
     */
    record Lost(String why, boolean reopens) implements Heard {}

    /** A second payload is on the line. */
    record Foreign(int payload) implements Heard {}

    /** The payload speaks another major version; both version bytes are given. */
    record OtherVersion(int spoken, int heard) implements Heard {}

    /** The payload could not prove that it holds this console's pairing key. */
    record WrongKey(int payload) implements Heard {}

    /** A frame of this version that says nothing to this program, and why, in words. */
    record Unreadable(int kind, String why) implements Heard {}
}
