package ouzel.app.bench;

import io.netty.buffer.ByteBuf;
import io.netty.buffer.Unpooled;
import io.netty.channel.ChannelHandlerContext;
import io.netty.channel.ChannelInboundHandlerAdapter;
import io.netty.channel.embedded.EmbeddedChannel;
import io.netty.handler.codec.DelimiterBasedFrameDecoder;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.frame.FrameParser;
import ouzel.protocol.netty.FrameDecoder;

/** From bytes to messages, per frame, in chunks as a port gives them. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 6, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 20, time = 200, timeUnit = TimeUnit.MILLISECONDS)
public class DecodeBench {
    static final int FRAMES = 1_000;
    private static final int CHUNK = 512;

    private final byte[] line = Telemetry.line(FRAMES);
    private final byte[] copy = new byte[line.length];
    private final FrameParser parser = new FrameParser();
    private EmbeddedChannel whole;
    private EmbeddedChannel framesOnly;
    private EmbeddedChannel splitter;

    /** The least that a stream of bytes can cost: each byte moved once. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public byte[] peerCopy() {
        for (int at = 0; at < line.length; at += CHUNK) {
            System.arraycopy(line, at, copy, at, Math.min(CHUNK, line.length - at));
        }
        return copy;
    }

    /** Netty's own decoder, which finds the delimiters and nothing more. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public void peerDelimiterSplit(Blackhole hole) {
        if (splitter == null) {
            ByteBuf zero = Unpooled.wrappedBuffer(new byte[1]);
            splitter = new EmbeddedChannel(
                    new DelimiterBasedFrameDecoder(FrameEncoder.LONGEST, zero), new Sink(hole, false));
        }
        feed(splitter);
    }

    /** Delimiters, stuffing and checksum, to frames. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public void toFrames(Blackhole hole) {
        if (framesOnly == null) {
            framesOnly = new EmbeddedChannel(new FrameDecoder(), new Sink(hole, false));
        }
        feed(framesOnly);
    }

    /** All the way to records. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public void toMessages(Blackhole hole) {
        if (whole == null) {
            whole = new EmbeddedChannel(new FrameDecoder(), new Sink(hole, true));
        }
        feed(whole);
    }

    /** The same without a pipeline around it. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public void toMessagesBare(Blackhole hole) {
        parser.feed(line, frame -> hole.consume(MessageCodec.decode(frame)));
    }

    private void feed(EmbeddedChannel channel) {
        for (int at = 0; at < line.length; at += CHUNK) {
            channel.writeInbound(Unpooled.wrappedBuffer(line, at, Math.min(CHUNK, line.length - at)));
        }
    }

    /** Swallows what comes out at the end of a pipeline. */
    private static final class Sink extends ChannelInboundHandlerAdapter {
        private final Blackhole hole;
        private final boolean decodes;

        private Sink(Blackhole hole, boolean decodes) {
            this.hole = hole;
            this.decodes = decodes;
        }

        @Override
        public void channelRead(ChannelHandlerContext context, Object message) {
            if (message instanceof ByteBuf bytes) {
                hole.consume(bytes.readableBytes());
                bytes.release();
            } else {
                hole.consume(decodes ? MessageCodec.decode((Frame) message) : message);
            }
        }
    }
}
