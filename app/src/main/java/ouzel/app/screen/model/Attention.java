package ouzel.app.screen.model;

/** How much something on the screen asks for the operator's eyes; each has its own colour, shape and shade. */
public enum Attention {
    /** Normal: grey. */
    CALM,
    /** Something moves as it should. */
    ACTIVE,
    /** Worth a look, or the operator's turn. */
    NOTICE,
    /** Needs an answer. */
    ALARM
}
