package ouzel.app.flight;

import java.util.function.Supplier;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.session.PairingKey;

/**
 * What a console is opened with.
 *
 * @param key the pairing key shared with the payload
 * @param payload the expected payload's number; 0 takes the first that proves the key
 * @param nonces gives 16 unpredictable bytes that were never given before
 * @param firstOrderId where order ids start, 1 to 2^32 - 1; random, so that two desks never use the same ones
 * @param rehearsal true if the payload is a simulated one
 * @param site the site's name, for the record
 */
public record Setup(
        PairingKey key, int payload, Supplier<Bytes> nonces, long firstOrderId, boolean rehearsal, String site) {}
