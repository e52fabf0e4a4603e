package ouzel.app.swarm;

import ouzel.app.desk.Act;
import ouzel.protocol.message.Sampler;
import ouzel.simulator.controller.BootCause;
import ouzel.simulator.plant.Fault;
import ouzel.simulator.plant.Surroundings.Place;
import ouzel.simulator.radio.Weather;

/** One thing that happens in a sortie. Posts are numbered: 0 flies, 1 is a second console with the same key. */
sealed interface Happening {
    /** What a happening can wait for. */
    enum Occasion {
        /** A console sends a new arm order. */
        ARM_SENT,
        /** The payload is given an arm order for the first time. */
        ARM_GIVEN,
        /** A console sends a new trigger. */
        TRIGGER_SENT,
        /** The payload is given a trigger for the first time. */
        TRIGGER_GIVEN
    }

    /** The radio's weather changes, both ways. */
    record Sky(Weather weather) implements Happening {}

    /** Nothing gets through for a while. */
    record Silence(int millis) implements Happening {}

    /** The pilot is asked to go somewhere. */
    record Fly(Place place) implements Happening {}

    /** The crew of post 0 does all it sensibly can to get this sample, from now on. */
    record Strive(Sampler sampler) implements Happening {}

    /** Somebody at a post does something, sensible or not. */
    record Push(int post, Act act) implements Happening {}

    /** Something on board breaks. */
    record Break(Fault fault) implements Happening {}

    /** It is mended. */
    record Mend(Fault fault) implements Happening {}

    /** The payload loses its power for a while, at least one step. */
    record Cut(int offMillis, BootCause cause) implements Happening {}

    /** The console's program ends and is started again; it knows nothing of what was. */
    record Restart(int post) implements Happening {}

    /** The laptop stands still: no ticks, and what is heard waits. */
    record Freeze(int post, int millis) implements Happening {}

    /** The laptop's wall clock is set. */
    record SetClock(int post, long byMillis) implements Happening {}

    /** A post's line is closed and opened again: it takes the payload over. */
    record TakeOver(int post) implements Happening {}

    /** Frames sent before come again: those of {@code kind}, or of every kind if it is 0. */
    record Again(int kind, int back, int inMillis) implements Happening {}

    /** A frame sent before comes again with one bit changed and a right checksum. */
    record Forge(int kind, int back, int bit) implements Happening {}

    /** The next new trigger, and its repetitions for a while, wait in a modem. */
    record HoldTriggers(int millis) implements Happening {}

    /** The answer to the next new order of {@code kind} is lost, and its repetition waits in a modem. */
    record Retell(int kind, int millis) implements Happening {}

    /** Trigger and safe-all reach the payload in one step. */
    record Clash(Sampler sampler, boolean safeAllFirst) implements Happening {}

    /** A third party that holds the key opens a session and asks for what no console would. */
    record Meddle(long seed) implements Happening {}

    /** Something happens a while after the next occasion of a sort. */
    record After(Occasion occasion, int inMillis, Happening then) implements Happening {}
}
