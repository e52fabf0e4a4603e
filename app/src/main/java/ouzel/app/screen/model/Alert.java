package ouzel.app.screen.model;

/**
 * One line of plain words with its weight.
 *
 * @param attention how much it asks for the eyes
 * @param sentence what it says
 */
public record Alert(Attention attention, String sentence) {}
