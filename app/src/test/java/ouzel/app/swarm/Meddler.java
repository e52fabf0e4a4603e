package ouzel.app.swarm;

import java.util.Optional;
import java.util.SplittableRandom;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Challenge;
import ouzel.protocol.message.ChangeSettings;
import ouzel.protocol.message.Confirm;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.KeepAlive;
import ouzel.protocol.message.Open;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Reload;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.Settings;
import ouzel.protocol.message.Stop;
import ouzel.protocol.message.Trigger;

/**
 * A third party that holds the key and none of a console's scruples: it takes the payload over and asks for doses,
 * settings, expiries, ids and counters that no console would.
 */
final class Meddler {
    private static final int[] LIVES = {-500, 0, 300, 1_000, 2_000, 2_500, 5_000, 100_000};
    private static final long[] COUNTERS = {1, 5, 0xFFFF_FFA0L, 0xFFFF_FFF8L};
    private static final long GREATEST_COUNTER = 0xFFFF_FFFFL;
    private static final Sampler[] SAMPLERS = Sampler.values();

    private final SplittableRandom random;
    private final byte[] secret;
    private final Uplink uplink;
    private final Bytes nonce;
    private Optional<SessionProof> session = Optional.empty();
    private long counter;
    private long token;
    private long nextId;
    private long clockMillis;
    private int acts;
    private long nextMillis;

    Meddler(long seed, byte[] secret, Uplink uplink) {
        random = new SplittableRandom(seed);
        this.secret = secret;
        this.uplink = uplink;
        byte[] drawn = new byte[16];
        random.nextBytes(drawn);
        nonce = Bytes.of(drawn);
        nextId = 0x8000_0000L + random.nextInt(0x4000_0000);
        counter = COUNTERS[random.nextInt(COUNTERS.length)];
        acts = random.nextInt(8, 40);
    }

    void hears(Downlink message, long timeMillis) {
        clockMillis = timeMillis;
        if (message instanceof Outcome outcome && outcome.token() != 0) {
            token = outcome.token();
        } else if (message instanceof Challenge challenge
                && challenge.consoleNonce().equals(nonce)
                && session.isEmpty()) {
            session = Optional.of(new SessionProof(secret, challenge, Witness.PAYLOAD));
            nextMillis = 0;
        }
    }

    void step(long nowMillis) {
        if (nowMillis < nextMillis || acts == 0) {
            return;
        }
        acts--;
        nextMillis = nowMillis + 10L * random.nextInt(1, 30);
        if (session.isEmpty()) {
            Frame open = MessageCodec.encode(new Open(nonce), Witness.PAYLOAD, 0, 0);
            uplink.bring(FrameEncoder.encode(open), nowMillis);
        } else {
            send(acts % 4 == 3 ? new Confirm() : order(), nowMillis);
        }
    }

    private void send(Order order, long nowMillis) {
        long id = random.nextInt(12) == 0 ? 0 : nextId;
        nextId += random.nextInt(12) == 0 ? 0 : 1;
        long expires = clockMillis + LIVES[random.nextInt(LIVES.length)] & 0xFFFF_FFFFL;
        Header header = new Header(Header.VERSION, Kind.of(order).code(), Witness.PAYLOAD, 0, 0);
        SessionProof.Envelope envelope = new SessionProof.Envelope(counter, id, expires, order);
        counter = Math.min(GREATEST_COUNTER, counter + random.nextInt(3));
        uplink.bring(FrameEncoder.encode(session.orElseThrow().seal(header, envelope)), nowMillis);
    }

    private Order order() {
        Sampler sampler = SAMPLERS[random.nextInt(SAMPLERS.length)];
        return switch (random.nextInt(9)) {
            case 0, 1, 2 -> new Arm(sampler, random.nextInt(3) == 0 ? 0xFFFF : random.nextInt(1, 700), attested());
            case 3, 4 -> new Trigger(sampler, random.nextInt(3) == 0 ? random.nextLong() : token);
            case 5 -> new Reload(sampler);
            case 6 -> new ChangeSettings(settings());
            case 7 -> random.nextBoolean() ? new Stop(sampler) : new SafeAll();
            default -> new KeepAlive();
        };
    }

    private int attested() {
        int bits = 0;
        for (Permissive permissive : Permissive.values()) {
            bits |= random.nextBoolean() ? permissive.bit() : 0;
        }
        return bits;
    }

    private Settings settings() {
        boolean wild = random.nextInt(3) == 0;
        return new Settings(
                wild ? 0xFFFF : random.nextInt(1, 401),
                random.nextInt(1, 681),
                random.nextInt(20, wild ? 0xFFFF : 501),
                random.nextInt(200, 30_000),
                random.nextInt(200, 30_000),
                random.nextInt(1, 20),
                random.nextInt(100, 2_001),
                random.nextInt(500, 6_001),
                random.nextInt(1_000, 10_001),
                random.nextBoolean(),
                random.nextBoolean());
    }
}
