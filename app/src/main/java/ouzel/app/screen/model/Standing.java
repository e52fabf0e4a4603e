package ouzel.app.screen.model;

/** How far a shown value can be believed. */
public enum Standing {
    /** Young enough to act on. */
    LIVE,
    /** Older than its limit: struck through, with its age. */
    STALE,
    /** Nothing to act on: never heard, or over. */
    NONE
}
