package ouzel.app.screen.model;

/**
 * The strip on top of the desk.
 *
 * @param link delivery, round trip and age
 * @param linkDetail all that was measured of the link, in lines
 * @param battery the payload's battery
 * @param clock the payload's clock
 * @param site where
 * @param status one line: line, session and journal, or the worst that is wrong with them
 * @param safeAll what became of the last safe-all
 */
public record HeaderView(
        Cell link, String linkDetail, Cell battery, Cell clock, Cell site, Alert status, Alert safeAll) {}
