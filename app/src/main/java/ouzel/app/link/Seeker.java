package ouzel.app.link;

import java.io.File;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import ouzel.protocol.frame.Frame;

/**
 * A serial line to the payload, wherever it is plugged in: opened again whenever it is lost, and found again under
 * another name by what the payload proves, never by the name.
 *
 * <pre>
 *   home      where the payload was last, or is said to be: tried first, at once and for ever
 *   elsewhere the other lines of this computer: tried once home has not been there for {@value #ABSENCE_MILLIS} ms, or
 *             has been open without proof for {@value #PATIENCE_MILLIS} ms; all at once if there is no home
 * </pre>
 *
 * <p>A line elsewhere is greeted for {@value #PROBATION_MILLIS} ms and then left to others for
 * {@value #REST_MILLIS} ms. A line that a person named and on which the payload was never met is used as it is, and
 * nothing else is touched: a name with a slip of the pen must not open the wrong device.
 *
 * <p>Opening a line restarts some controllers, so that a device which stays in its plug is opened at the pace of
 * {@link RetryPace}. One that was unplugged has restarted anyway and is opened as soon as it is back.
 *
 * <p>Thread: any; everything is done on the link thread.
 */
public final class Seeker implements Line {
    static final long ABSENCE_MILLIS = 500;
    static final long PATIENCE_MILLIS = 3_000;
    static final long PROBATION_MILLIS = 6_000;
    static final long REST_MILLIS = 10_000;

    private static final String GOES_ON = " Trying again by itself.";
    private static final long MILLISECOND = 1_000_000;
    private static final Duration LOOK_PAUSE = Duration.ofMillis(200);
    /** Pause after a try that never reached a device, ns. */
    private static final long UNTOUCHED_PAUSE_NANOS = 400 * MILLISECOND;

    private final LinkLoop loop;
    private final SerialPorts ports;
    private final int baud;
    private final boolean holdsControlLinesLow;
    private final Supplier<Greeting> greetings;
    private final LineListener listener;
    private final AtomicLong dropped = new AtomicLong();
    private final CompletableFuture<Void> finished = new CompletableFuture<>();
    private final Map<String, Candidate> candidates = new HashMap<>();
    private final Map<String, RetryPace> paces = new HashMap<>();
    private final Map<String, Long> notBeforeNanos = new HashMap<>();

    private Optional<String> home;
    /** The line in use; empty while it is sought. */
    private Optional<Candidate> current = Optional.empty();

    private boolean wasMet;
    private boolean isListing;
    private boolean isClosed;
    private long soughtSinceNanos;
    private long homeSeenNanos;
    private String told = "";
    private LinkLoop.Appointment looking = () -> {};

    private Seeker(
            LinkLoop loop,
            Optional<String> home,
            Port.Search search,
            SerialPorts ports,
            Supplier<Greeting> greetings,
            LineListener listener) {
        this.loop = loop;
        this.home = home;
        this.ports = ports;
        this.baud = search.baud();
        this.holdsControlLinesLow = search.holdsControlLinesLow();
        this.greetings = greetings;
        this.listener = listener;
    }

    /** Opens the named line, and looks elsewhere only once the payload was met and is gone. */
    public static Seeker at(LinkLoop loop, Port.Serial port, Supplier<Greeting> greetings, LineListener listener) {
        Port.Search search = new Port.Search(List.of(), port.baud(), port.holdsControlLinesLow());
        return started(new Seeker(loop, Optional.of(port.name()), search, new SerialPorts(), greetings, listener));
    }

    /** Looks for the payload on all serial lines. */
    public static Seeker everywhere(
            LinkLoop loop, Port.Search search, Supplier<Greeting> greetings, LineListener listener) {
        return in(loop, Optional.empty(), search, SerialPorts.andMatching(search.patterns()), greetings, listener);
    }

    /** Looks at {@code home} and, as above, in what {@code ports} finds. */
    static Seeker in(
            LinkLoop loop,
            Optional<String> home,
            Port.Search search,
            SerialPorts ports,
            Supplier<Greeting> greetings,
            LineListener listener) {
        return started(new Seeker(loop, home, search, ports, greetings, listener));
    }

    private static Seeker started(Seeker seeker) {
        seeker.loop.execute(seeker::seek);
        return seeker;
    }

    /** The payload proved itself on the line in use: it is this payload that will be sought. Thread: link. */
    public void recognised() {
        wasMet = current.isPresent();
    }

    private void seek() {
        soughtSinceNanos = loop.nowNanos();
        homeSeenNanos = soughtSinceNanos;
        looking.cancel();
        looking = loop.every(LOOK_PAUSE, this::look);
    }

    private void look() {
        if (isClosed || current.isPresent()) {
            looking.cancel();
            return;
        }
        home.ifPresent(this::lookHome);
        endProbations();
        if (current.isEmpty() && mayLookElsewhere() && !isListing) {
            isListing = true;
            ports.search().thenAccept(found -> loop.execute(() -> found(found)));
        }
    }

    private void lookHome(String name) {
        if (isGone(name)) {
            paces.remove(name);
            notBeforeNanos.remove(name);
            tell(SerialTrouble.notThere(name, null).getMessage());
        } else {
            homeSeenNanos = loop.nowNanos();
            tryOn(name);
        }
    }

    /** True for a name that is a file's and not there; whether a line of another name is there only opening tells. */
    private static boolean isGone(String name) {
        return name.startsWith("/") && !new File(name).exists();
    }

    private boolean mayLookElsewhere() {
        if (home.isEmpty()) {
            return true;
        }
        long now = loop.nowNanos();
        Optional<Candidate> atHome = Optional.ofNullable(candidates.get(home.get()));
        boolean isAbsent = now - homeSeenNanos >= ABSENCE_MILLIS * MILLISECOND
                || atHome.isEmpty() && !home.get().startsWith("/") && isSoughtFor(ABSENCE_MILLIS);
        boolean isSilent = atHome.filter(candidate -> now - candidate.startedNanos() >= PATIENCE_MILLIS * MILLISECOND)
                .isPresent();
        return wasMet && (isAbsent || isSilent);
    }

    private boolean isSoughtFor(long millis) {
        return loop.nowNanos() - soughtSinceNanos >= millis * MILLISECOND;
    }

    private void found(SerialPorts.Found found) {
        isListing = false;
        if (isClosed || current.isPresent()) {
            return;
        }
        List<String> names =
                found.entries().stream().map(SerialPorts.Entry::name).toList();
        notBeforeNanos.keySet().removeIf(name -> !names.contains(name) && !home.equals(Optional.of(name)));
        names.forEach(this::tryOn);
        if (!found.trouble().isEmpty()) {
            tell(found.trouble());
        } else if (home.isEmpty() && names.isEmpty()) {
            tell("There is no serial line on this computer now. Plug the radio in.");
        } else if (home.isEmpty() && isSoughtFor(PATIENCE_MILLIS)) {
            tell("No payload that holds this desk's key answers on "
                    + names.stream().sorted().collect(Collectors.joining(", "))
                    + ". Switch it on, and check that no other program has its line.");
        }
    }

    private void tryOn(String name) {
        boolean isDue = loop.nowNanos() - notBeforeNanos.getOrDefault(name, Long.MIN_VALUE / 2) >= 0;
        if (isDue && !candidates.containsKey(name)) {
            Port.Serial port = new Port.Serial(name, baud, holdsControlLinesLow);
            candidates.put(name, new Candidate(loop, port, greetings.get(), new Watch(), listener, dropped));
        }
    }

    private void endProbations() {
        long now = loop.nowNanos();
        List<Candidate> over = candidates.values().stream()
                .filter(candidate -> !home.equals(Optional.of(candidate.port().name())))
                .filter(candidate -> now - candidate.startedNanos() >= PROBATION_MILLIS * MILLISECOND)
                .toList();
        for (Candidate candidate : over) {
            candidates.remove(candidate.port().name());
            notBeforeNanos.put(candidate.port().name(), now + REST_MILLIS * MILLISECOND);
            candidate.close();
        }
    }

    private void adopt(Candidate chosen) {
        if (isClosed || current.isPresent()) {
            return;
        }
        current = Optional.of(chosen);
        home = Optional.of(chosen.port().name());
        told = "";
        looking.cancel();
        List<Candidate> others = candidates.values().stream()
                .filter(candidate -> candidate != chosen)
                .toList();
        candidates.clear();
        others.forEach(Candidate::close);
        chosen.adopt();
    }

    private RetryPace pace(Candidate candidate) {
        return paces.computeIfAbsent(candidate.port().name(), name -> new RetryPace());
    }

    private void tell(String sentence) {
        if (!sentence.equals(told)) {
            told = sentence;
            listener.failed(sentence + GOES_ON);
        }
    }

    @Override
    public LineKind kind() {
        return LineKind.SERIAL;
    }

    @Override
    public void send(Frame frame) {
        loop.run(() -> current.ifPresentOrElse(candidate -> candidate.line().send(frame), dropped::incrementAndGet));
    }

    @Override
    public void sendUrgent(Frame frame) {
        loop.run(() ->
                current.ifPresentOrElse(candidate -> candidate.line().sendUrgent(frame), dropped::incrementAndGet));
    }

    @Override
    public long dropped() {
        return dropped.get();
    }

    @Override
    public CompletionStage<Void> close() {
        loop.run(() -> {
            if (!isClosed) {
                isClosed = true;
                looking.cancel();
                candidates.values().forEach(Candidate::close);
                current.map(candidate -> candidate.line().close())
                        .orElseGet(() -> CompletableFuture.completedFuture(null))
                        .thenRun(() -> finished.complete(null));
            }
        });
        return finished;
    }

    /** What becomes of each candidate. */
    private final class Watch implements Candidate.Fate {
        @Override
        public void opened(Candidate candidate) {
            pace(candidate).opened(loop.nowNanos());
            if (!wasMet && home.equals(Optional.of(candidate.port().name()))) {
                adopt(candidate);
            }
        }

        @Override
        public void proven(Candidate candidate) {
            wasMet = true;
            adopt(candidate);
        }

        @Override
        public void remarked(String sentence) {
            listener.garbled(sentence);
        }

        @Override
        public void lost(Candidate candidate, String sentence) {
            String name = candidate.port().name();
            notBeforeNanos.put(name, loop.nowNanos() + pace(candidate).pauseAfterLoss(loop.nowNanos()));
            boolean wasInUse = current.equals(Optional.of(candidate));
            candidates.remove(name, candidate);
            if (wasInUse) {
                current = Optional.empty();
                seek();
                listener.lost(sentence + GOES_ON);
            }
        }

        @Override
        public void failed(Candidate candidate, String sentence) {
            String name = candidate.port().name();
            long now = loop.nowNanos();
            if (candidate.line().hasDisturbedDevice()) {
                pace(candidate).opened(now);
                notBeforeNanos.put(name, now + pace(candidate).pauseAfterFailure(now));
            } else {
                notBeforeNanos.put(name, now + UNTOUCHED_PAUSE_NANOS);
            }
            candidates.remove(name, candidate);
            if (home.equals(Optional.of(name))) {
                tell(sentence);
            }
        }
    }
}
