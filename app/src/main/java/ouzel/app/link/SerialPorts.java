package ouzel.app.link;

import com.fazecast.jSerialComm.SerialPort;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The serial lines this computer has. Asking can take from a millisecond to a minute, so it is done on a thread of its
 * own, and two who ask at the same time share one answer.
 *
 * <p>Thread: any; answers come on the searching thread.
 */
public final class SerialPorts {
    private static final Logger LOG = LoggerFactory.getLogger(SerialPorts.class);

    private final Supplier<Found> search;
    /** The search under way, or null; several threads may ask at once. */
    private final AtomicReference<CompletableFuture<Found>> underWay = new AtomicReference<>();

    /** Asks the system. */
    public SerialPorts() {
        this(SerialPorts::ask);
    }

    SerialPorts(Supplier<Found> search) {
        this.search = search;
    }

    /**
     * Asks the system, and looks at the names that match {@code patterns} too; a line with several names comes once,
     * under the name that was given.
     */
    public static SerialPorts andMatching(List<String> patterns) {
        return new SerialPorts(() -> SerialNames.add(patterns, ask()));
    }

    /** Looks which lines there are now; the answer never fails. */
    public CompletionStage<Found> search() {
        CompletableFuture<Found> mine = new CompletableFuture<>();
        CompletableFuture<Found> running = underWay.compareAndExchange(null, mine);
        if (running != null) {
            return running;
        }
        CompletableFuture.supplyAsync(
                        search,
                        work -> DaemonThreads.named("ouzel serial search", work).start())
                .exceptionally(SerialPorts::unexpected)
                .thenAccept(found -> {
                    underWay.set(null);
                    mine.complete(found);
                });
        return mine;
    }

    private static Found ask() {
        try {
            return new Found(
                    Stream.of(SerialPort.getCommPorts())
                            .map(port -> new Entry(port.getSystemPortPath(), port.getDescriptivePortName()))
                            .sorted(Comparator.comparing(Entry::name))
                            .toList(),
                    "");
        } catch (LinkageError broken) {
            return new Found(List.of(), SerialTrouble.noNativePart());
        }
    }

    private static Found unexpected(Throwable fault) {
        LOG.error("The search for serial lines failed", fault);
        return new Found(List.of(), "The serial lines of this computer could not be listed. Type the name instead.");
    }

    /**
     * The outcome of a search.
     *
     * @param entries the lines, by name
     * @param trouble why there can be none, as a sentence; empty if all is well
     */
    public record Found(List<Entry> entries, String trouble) {
        public Found {
            entries = List.copyOf(entries);
        }
    }

    /**
     * One serial line.
     *
     * @param name the system's name, as {@link Port.Serial} takes it
     * @param description what the device says of itself
     */
    public record Entry(String name, String description) {}
}
