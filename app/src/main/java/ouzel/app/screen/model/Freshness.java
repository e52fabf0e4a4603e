package ouzel.app.screen.model;

import ouzel.app.desk.DeskState;

/**
 * How old what the screen shows really is: the age in the state, and how long the desk has given no newer one.
 *
 * @param state the newest state
 * @param silentMillis how long ago it came, ms
 */
record Freshness(DeskState state, long silentMillis) {
    /** True if the desk itself has stopped. */
    boolean isDeskSilent() {
        return silentMillis > DeskState.STALE_AFTER_MILLIS;
    }

    /** Age of the payload's last status, ms; {@link Long#MAX_VALUE} before the first. */
    long statusAgeMillis() {
        return state.status().isEmpty() ? Long.MAX_VALUE : state.statusAgeMillis() + silentMillis;
    }

    /** True if the payload's last status is young enough to act on. */
    boolean isFresh() {
        return state.isLinkFresh() && statusAgeMillis() <= DeskState.STALE_AFTER_MILLIS;
    }

    /** How far a value out of the last status can be believed. */
    Standing standing() {
        if (state.status().isEmpty()) {
            return Standing.NONE;
        }
        return statusAgeMillis() <= DeskState.STALE_AFTER_MILLIS ? Standing.LIVE : Standing.STALE;
    }

    /** The age in words when it matters; empty while the value is live. */
    String ageIfStale() {
        return switch (standing()) {
            case LIVE -> "";
            case STALE -> Words.age(statusAgeMillis());
            case NONE -> "no data";
        };
    }
}
