package ouzel.simulator.controller;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ouzel.protocol.message.Outcome;

/**
 * What became of the last {@link #CAPACITY} orders that could change something; survives loss of power.
 *
 * <p>The oldest order makes room for a new one. An order so old that it was forgotten cannot act again either: by then
 * its expiry has passed and its token is used.
 */
public final class OutcomeStore {
    /** Most orders remembered. */
    public static final int CAPACITY = 32;

    private final Map<Long, Outcome> outcomes = new LinkedHashMap<>();

    OutcomeStore() {}

    OutcomeStore(OutcomeStore other) {
        outcomes.putAll(other.outcomes);
    }

    /** The newest outcome of {@code orderId}. */
    public Optional<Outcome> of(long orderId) {
        return Optional.ofNullable(outcomes.get(orderId));
    }

    /** All outcomes remembered, oldest order first. */
    public List<Outcome> kept() {
        return List.copyOf(outcomes.values());
    }

    /** Remembers the newest stage of an order; order 0 is nobody's and is not remembered. */
    void put(Outcome outcome) {
        if (outcome.orderId() == 0) {
            return;
        }
        outcomes.put(outcome.orderId(), outcome);
        if (outcomes.size() > CAPACITY) {
            outcomes.remove(oldestFinal());
        }
    }

    private long oldestFinal() {
        for (Map.Entry<Long, Outcome> entry : outcomes.entrySet()) {
            if (entry.getValue().stage().isFinal()) {
                return entry.getKey();
            }
        }
        return new ArrayList<>(outcomes.keySet()).get(0);
    }
}
