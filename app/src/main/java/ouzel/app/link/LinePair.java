package ouzel.app.link;

/**
 * The two ends of a line inside this program: a console and the simulated payload it rehearses with. If one closes, the
 * other is lost.
 *
 * @param console the console's end
 * @param payload the payload's end
 */
public record LinePair(Line console, Line payload) {

    /**
     * Joins the two; both are told that the line is open, on the link thread.
     *
     * @param up carries what the console sends
     * @param down carries what the payload sends
     */
    public static LinePair join(LinkLoop loop, LineListener console, LineListener payload, Wire up, Wire down) {
        PipeChannel consolePipe = new PipeChannel(loop, up);
        PipeChannel payloadPipe = new PipeChannel(loop, down);
        consolePipe.join(payloadPipe);
        FrameLine consoleEnd = FrameLine.inProcess(loop, "the simulated payload", console);
        FrameLine payloadEnd = FrameLine.inProcess(loop, "the console", payload);
        loop.execute(() -> {
            consoleEnd.start(consolePipe);
            payloadEnd.start(payloadPipe);
        });
        return new LinePair(consoleEnd, payloadEnd);
    }
}
