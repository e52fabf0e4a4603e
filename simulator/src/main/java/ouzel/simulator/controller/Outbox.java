package ouzel.simulator.controller;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ouzel.protocol.message.CurrentTrace;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Identity;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Status;
import ouzel.protocol.message.ValveWaveform;

/**
 * Messages waiting for the radio, most urgent first: outcomes, events, answers, status, traces, waveforms.
 *
 * <p>A waiting status or identity is replaced by a newer one. Each rank holds at most {@link #CAPACITY}; then the
 * oldest of that rank goes and is counted. Nothing is lost for good by that: outcomes and events stay in memory.
 */
final class Outbox {
    /** Most messages waiting in one rank. */
    static final int CAPACITY = 64;

    private enum Rank {
        OUTCOME,
        EVENT,
        ANSWER,
        STATUS,
        TRACE,
        WAVEFORM
    }

    private final List<ArrayDeque<Downlink>> waiting = new ArrayList<>();
    private long dropped;

    Outbox() {
        for (int rank = 0; rank < Rank.values().length; rank++) {
            waiting.add(new ArrayDeque<>());
        }
    }

    void add(Downlink message) {
        ArrayDeque<Downlink> queue = waiting.get(rank(message).ordinal());
        if (message instanceof Status || message instanceof Identity) {
            queue.removeIf(older -> older.getClass() == message.getClass());
        }
        if (queue.size() >= CAPACITY) {
            queue.removeFirst();
            dropped++;
        }
        queue.addLast(message);
    }

    Optional<Downlink> poll() {
        for (ArrayDeque<Downlink> queue : waiting) {
            if (!queue.isEmpty()) {
                return Optional.of(queue.removeFirst());
            }
        }
        return Optional.empty();
    }

    List<Downlink> drain() {
        List<Downlink> all = new ArrayList<>();
        for (ArrayDeque<Downlink> queue : waiting) {
            all.addAll(queue);
            queue.clear();
        }
        return all;
    }

    /** Messages that had to make room since power-up. */
    long dropped() {
        return dropped;
    }

    private static Rank rank(Downlink message) {
        if (message instanceof Outcome) {
            return Rank.OUTCOME;
        }
        if (message instanceof Event) {
            return Rank.EVENT;
        }
        if (message instanceof Status) {
            return Rank.STATUS;
        }
        if (message instanceof CurrentTrace) {
            return Rank.TRACE;
        }
        return message instanceof ValveWaveform ? Rank.WAVEFORM : Rank.ANSWER;
    }
}
