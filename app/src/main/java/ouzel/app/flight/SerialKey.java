package ouzel.app.flight;

import ouzel.protocol.session.PairingKey;

/**
 * The last fence before a serial line, whoever opens it: at its other end something real could move, so the key that
 * everybody knows is refused. The command line says the same earlier and in words for the operator.
 */
final class SerialKey {
    private SerialKey() {}

    static void require(boolean serial, PairingKey key) {
        if (serial && key.isRehearsal()) {
            throw new IllegalArgumentException("key : " + key + " (expected: a secret one on a serial line)");
        }
    }
}
