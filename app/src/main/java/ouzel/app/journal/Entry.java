package ouzel.app.journal;

import ouzel.app.desk.Moment;
import ouzel.app.desk.Stimulus;

/**
 * One thing that happened, and when.
 *
 * @param at when, on both clocks
 * @param stimulus what
 */
public record Entry(Moment at, Stimulus stimulus) {}
