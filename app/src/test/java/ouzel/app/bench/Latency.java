package ouzel.app.bench;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import ouzel.app.desk.Act;
import ouzel.app.exit.Refusal;
import ouzel.app.flight.LiveDesk;
import ouzel.app.flight.PayloadHost;
import ouzel.app.link.Port;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.frame.FrameParser;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.session.PairingKey;

/**
 * From the operator's act to the order's bytes on the far side of the port: a live desk, with its journal on disk,
 * speaks over TCP through a relay that notes when each order passes.
 *
 * <p>The figures hold the loopback and the relay's reading, so the console's own share is less.
 */
final class Latency implements AutoCloseable {
    private static final int ROUNDS = 300;

    private final BlockingQueue<Passed> passed = new ArrayBlockingQueue<>(10_000);
    private final ServerSocket server;
    private final PayloadHost host;
    private final int payloadPort;

    /** An order of this kind was seen. */
    private record Passed(int kind, long nanos) {}

    private Latency() throws IOException {
        CompletableFuture<Integer> port = new CompletableFuture<>();
        host = new PayloadHost(
                new PayloadHost.Request(Optional.empty(), 0, false, PairingKey.rehearsal(), 4),
                sentence -> portIn(sentence, port));
        payloadPort = port.join();
        server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
        Thread relay = new Thread(this::relay, "bench-relay");
        relay.setDaemon(true);
        relay.start();
    }

    /** Measures and prints. */
    static void measure(PrintWriter out) throws Refusal, InterruptedException {
        try (Latency relay = new Latency();
                LiveDesk desk = relay.desk(Files.createTempDirectory("ouzel-bench"))) {
            relay.await(desk);
            out.println();
            relay.print(out, "safe-all", Kind.SAFE_ALL, desk, new Act.SafeAll());
            relay.print(out, "arm, after the journal is on disk", Kind.ARM, desk, new Act.Arm(Sampler.AIR));
        } catch (IOException trouble) {
            throw new IllegalStateException(trouble);
        }
    }

    private static void portIn(String sentence, CompletableFuture<Integer> port) {
        String digits = sentence.replaceFirst(".* TCP port (\\d+)\\.$", "$1");
        if (!digits.equals(sentence)) {
            port.complete(Integer.valueOf(digits));
        }
    }

    private LiveDesk desk(Path journals) throws Refusal {
        Port port = new Port.Tcp("127.0.0.1", server.getLocalPort());
        return new LiveDesk(
                new LiveDesk.Request(Optional.of(port), PairingKey.rehearsal(), true, 1, journals, "reed bed", "bench"),
                cue -> {});
    }

    private void await(LiveDesk desk) throws InterruptedException {
        long patience = System.nanoTime() + 20_000_000_000L;
        while (!desk.latest().session().open() && System.nanoTime() < patience) {
            TimeUnit.MILLISECONDS.sleep(20);
        }
        TimeUnit.SECONDS.sleep(4);
    }

    private void print(PrintWriter out, String what, Kind kind, LiveDesk desk, Act act) throws InterruptedException {
        long[] micros = new long[ROUNDS];
        int measured = 0;
        for (int i = 0; i < ROUNDS; i++) {
            desk.act(new Act.Stop(Sampler.AIR));
            TimeUnit.MILLISECONDS.sleep(83);
            passed.clear();
            long released = System.nanoTime();
            desk.act(act);
            long seen = seen(kind);
            if (seen > 0) {
                micros[measured++] = (seen - released) / 1_000;
            }
        }
        long[] sorted = Arrays.copyOf(micros, measured);
        Arrays.sort(sorted);
        out.printf(
                Locale.ROOT,
                "%-36s p50 %.2f ms, p99 %.2f ms, most %.2f ms (%d of %d orders)%n",
                what,
                sorted[measured / 2] / 1e3,
                sorted[measured * 99 / 100] / 1e3,
                sorted[measured - 1] / 1e3,
                measured,
                ROUNDS);
    }

    private long seen(Kind kind) throws InterruptedException {
        long patience = System.nanoTime() + 1_000_000_000;
        while (System.nanoTime() < patience) {
            Passed next = passed.poll(200, TimeUnit.MILLISECONDS);
            if (next != null && next.kind() == kind.code()) {
                return next.nanos();
            }
        }
        return 0;
    }

    private void relay() {
        try (Socket desk = server.accept();
                Socket payload = new Socket(InetAddress.getLoopbackAddress(), payloadPort)) {
            desk.setTcpNoDelay(true);
            payload.setTcpNoDelay(true);
            Thread down = new Thread(() -> copyDown(payload, desk), "bench-relay-down");
            down.setDaemon(true);
            down.start();
            FrameParser parser = new FrameParser();
            byte[] chunk = new byte[4_096];
            for (int read = desk.getInputStream().read(chunk);
                    read > 0;
                    read = desk.getInputStream().read(chunk)) {
                long now = System.nanoTime();
                parser.feed(
                        Arrays.copyOf(chunk, read),
                        frame -> passed.offer(new Passed(frame.header().kind(), now)));
                payload.getOutputStream().write(chunk, 0, read);
            }
        } catch (IOException closed) {
            // The bench is over: its ends are closed from outside.
            passed.clear();
        }
    }

    private static void copyDown(Socket payload, Socket desk) {
        try {
            payload.getInputStream().transferTo(desk.getOutputStream());
        } catch (IOException closed) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() throws IOException {
        server.close();
        host.close();
    }
}
