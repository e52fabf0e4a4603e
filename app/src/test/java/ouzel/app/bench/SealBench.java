package ouzel.app.bench;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.Stop;
import ouzel.protocol.session.ConsoleSession;
import ouzel.protocol.session.NonceSource;
import ouzel.protocol.session.PairingKey;
import ouzel.protocol.session.PayloadSession;
import ouzel.protocol.session.Verdict;

/** What it costs to seal an order and to refuse a forged one, beside the bare HMAC. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 6, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 20, time = 200, timeUnit = TimeUnit.MILLISECONDS)
public class SealBench {
    private final ConsoleSession console;
    private final PayloadSession payload;
    private final Frame forged;
    private final Mac mac;
    private final byte[] covered = new byte[23];

    /** Both ends in session. */
    public SealBench() {
        PairingKey key = PairingKey.of(new byte[PairingKey.LENGTH]);
        SplittableRandom random = new SplittableRandom(1);
        console = new ConsoleSession(key, () -> Bytes.of(new byte[16]), 7);
        payload = new PayloadSession(key, 7, new NonceSource(1, random::nextLong));
        Verdict challenge = payload.hear(console.tick(0).get(0));
        console.hear(MessageCodec.encode(((Verdict.Reply) challenge).message(), 7, 1, 1), 1);
        payload.hear(console.tick(2).get(0));
        Frame status = Telemetry.statusOf(payload.session());
        console.hear(status, 3);
        Frame sealed = seal();
        byte[] body = sealed.body().toArray();
        body[body.length - 1] ^= 1;
        forged = new Frame(sealed.header(), Bytes.of(body));
        try {
            mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(new byte[32], "HmacSHA256"));
        } catch (java.security.GeneralSecurityException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** HMAC-SHA-256 over as many bytes, keyed once. */
    @Benchmark
    public byte[] peerHmac() {
        return mac.doFinal(covered);
    }

    /** An order sealed. */
    @Benchmark
    public Frame seal() {
        return console.seal(new Stop(Sampler.AIR), 1, 1_500, 4);
    }

    /** A forged order refused. */
    @Benchmark
    public Verdict refuse() {
        return payload.hear(forged);
    }
}
