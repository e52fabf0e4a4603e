package ouzel.simulator.controller;

import java.util.ArrayList;
import java.util.List;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.ValveWaveform;

/**
 * Captures the coil current of the first 100 ms after the valve was switched on, then sends it in pieces, and all of
 * them twice more: nobody acknowledges them, and a waveform with a hole is worth little.
 */
final class ValveCapture {
    private static final int SAMPLES = ValveWaveform.RATE_HZ / 10;
    private static final int GREATEST_MILLIAMPS = 0xFFFE;
    /** Times the pieces are sent again, and steps before each time: 300 ms, longer than a usual burst of losses. */
    private static final int REPEATS = 2;

    private static final int STEPS_BETWEEN_REPEATS = 30;

    private enum State {
        WAITING,
        CAPTURING,
        CAPTURED
    }

    private final Outbox outbox;
    private final List<Integer> samples = new ArrayList<>(SAMPLES);
    private State state = State.WAITING;
    private List<ValveWaveform> pieces = List.of();
    private int capture;
    private int repeatsLeft;
    private int stepsToRepeat;

    ValveCapture(Outbox outbox) {
        this.outbox = outbox;
    }

    void step(boolean open, List<Integer> milliamps) {
        repeat();
        switch (state) {
            case WAITING -> begin(open, milliamps);
            case CAPTURING -> take(open, milliamps);
            case CAPTURED -> state = open ? State.CAPTURED : State.WAITING;
        }
    }

    private void begin(boolean open, List<Integer> milliamps) {
        if (open) {
            state = State.CAPTURING;
            samples.clear();
            take(true, milliamps);
        }
    }

    private void take(boolean open, List<Integer> milliamps) {
        for (int i = 0; i < milliamps.size() && samples.size() < SAMPLES; i++) {
            samples.add(Math.max(0, Math.min(milliamps.get(i), GREATEST_MILLIAMPS)));
        }
        // The converter is one step behind the output: a short opening ends when its last samples are in.
        if (samples.size() == SAMPLES || !open && milliamps.isEmpty()) {
            send();
            state = State.CAPTURED;
        }
    }

    private void send() {
        if (samples.isEmpty()) {
            return;
        }
        List<ValveWaveform> cut = new ArrayList<>();
        for (int first = 0; first < samples.size(); first += ValveWaveform.MOST_SAMPLES) {
            int after = Math.min(first + ValveWaveform.MOST_SAMPLES, samples.size());
            cut.add(new ValveWaveform(Sampler.SOIL, capture, samples.size(), first, samples.subList(first, after)));
        }
        capture = capture + 1 & 0xFFFF;
        pieces = cut;
        pieces.forEach(outbox::add);
        repeatsLeft = REPEATS;
        stepsToRepeat = STEPS_BETWEEN_REPEATS;
    }

    private void repeat() {
        if (repeatsLeft > 0 && --stepsToRepeat == 0) {
            pieces.forEach(outbox::add);
            repeatsLeft--;
            stepsToRepeat = STEPS_BETWEEN_REPEATS;
        }
    }
}
