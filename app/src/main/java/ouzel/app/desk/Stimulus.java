package ouzel.app.desk;

import ouzel.protocol.frame.Frame;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.session.LinkHealth;

/** Something that happened to the desk. The journal keeps every one; folding them again gives the same state. */
public sealed interface Stimulus {
    /**
     * The desk was opened.
     *
     * @param firstOrderId where this desk's order ids start, so that two desks never use the same ones
     * @param rehearsal true if the payload is a simulated one
     * @param site the site's name, for the record
     */
    record Opened(long firstOrderId, boolean rehearsal, String site) implements Stimulus {}

    /**
     * The session's payload said something.
     *
     * @param frame the frame as it came
     * @param message what it says
     */
    record Heard(Frame frame, Downlink message) implements Stimulus {}

    /**
     * The port was opened, lost, or could not be opened.
     *
     * @param up true if bytes can flow
     * @param sentence what, where, and what to do
     */
    record LineChanged(boolean up, String sentence) implements Stimulus {}

    /**
     * A session with a payload was opened.
     *
     * @param payload the payload's number
     * @param session the session's public number
     */
    record SessionOpened(int payload, long session) implements Stimulus {}

    /**
     * The session ended, or could not be opened.
     *
     * @param sentence why, and what to do
     */
    record SessionLost(String sentence) implements Stimulus {}

    /**
     * Something on the line that does not belong there: another payload, another version, a wrong key.
     *
     * @param sentence what was heard, and what to do
     */
    record StrangerHeard(String sentence) implements Stimulus {}

    /** The link was measured. */
    record LinkMeasured(LinkHealth health) implements Stimulus {}

    /** The operator did something. */
    record Acted(Act act) implements Stimulus {}

    /**
     * The journal can or cannot be written any more.
     *
     * @param writing true if it can
     * @param sentence what failed, where, and what to do
     */
    record JournalChanged(boolean writing, String sentence) implements Stimulus {}

    /**
     * An order could not be sent, because the journal could not be written or no session was open.
     *
     * @param orderId the order
     * @param sentence why
     */
    record NotSent(long orderId, String sentence) implements Stimulus {}

    /**
     * What the simulated plant really holds after a draw or stroke; exists in rehearsals only.
     *
     * @param sampler whose
     * @param amount mL for water and air, g for soil
     */
    record TruthTold(Sampler sampler, double amount) implements Stimulus {}

    /** Time went on. */
    record Ticked() implements Stimulus {}
}
