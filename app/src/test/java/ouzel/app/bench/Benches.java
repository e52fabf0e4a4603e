package ouzel.app.bench;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.net.URI;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;
import ouzel.app.exit.Refusal;
import ouzel.app.journal.JournalReader;
import ouzel.app.journal.PlaybackFold;

/** Runs the benches and prints the median of each, with its ratio to each peer in the same class. */
public final class Benches {
    private static final int HOURS = 10;

    private Benches() {}

    /** Runs those benches whose name holds one of {@code words}; all without one. */
    public static void main(String... words) throws RunnerException, Refusal, InterruptedException, IOException {
        PrintWriter out = new PrintWriter(System.out, true);
        useTheWholeClassPath();
        List<String> wanted =
                words.length == 0 ? List.of("Decode", "Encode", "Checksum", "Seal", "Latency", "Fold") : List.of(words);
        for (String word : wanted) {
            if ("Latency".startsWith(word)) {
                Latency.measure(out);
            } else {
                run(word, out);
            }
        }
    }

    private static void run(String word, PrintWriter out) throws RunnerException, Refusal, IOException {
        if ("Fold".startsWith(word)) {
            writeJournal(out);
        }
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .addProfiler("gc")
                        .include("ouzel\\.app\\.bench\\." + word + ".*")
                        .verbosity(VerboseMode.SILENT)
                        .shouldFailOnError(true)
                        .build())
                .run();
        out.println();
        out.printf("%-36s %17s   %s%n", word, "median", "times the cost of each peer");
        results.stream().sorted(Comparator.comparing(Benches::name)).forEach(result -> line(result, results, out));
    }

    private static void line(RunResult result, Collection<RunResult> all, PrintWriter out) {
        double score = median(result);
        String ratios = all.stream()
                .filter(peer -> name(peer).contains("peer") && !name(result).contains("peer"))
                .map(peer -> String.format(
                        Locale.ROOT, "%s %.2f", name(peer).replaceFirst(".*peer", ""), score / median(peer)))
                .collect(Collectors.joining(", "));
        out.printf(
                Locale.ROOT,
                "%-36s %11.1f %s   %s%n",
                name(result),
                score,
                result.getPrimaryResult().getScoreUnit(),
                ratios);
        result.getSecondaryResults().forEach((label, figure) -> {
            if (label.endsWith("alloc.rate.norm")) {
                out.printf(Locale.ROOT, "%-36s %11.1f %s%n", "", figure.getScore(), figure.getScoreUnit());
            }
        });
    }

    /** A busy computer spoils a mean, not so easily a median. */
    private static double median(RunResult result) {
        return result.getPrimaryResult().getStatistics().getPercentile(50);
    }

    private static String name(RunResult result) {
        return result.getParams().getBenchmark().replaceFirst(".*\\.(\\w+\\.\\w+)$", "$1");
    }

    private static void writeJournal(PrintWriter out) throws Refusal, IOException {
        long begun = System.nanoTime();
        int samples = LongSortie.write(FoldBench.JOURNAL, HOURS);
        try (JournalReader reader = JournalReader.open(FoldBench.JOURNAL)) {
            PlaybackFold.Result result = PlaybackFold.fold(reader);
            out.printf(
                    Locale.ROOT,
                    "journal of %d h: %.1f MB, %d records, %d samples (%d folded again), flown in %.1f s%n",
                    HOURS,
                    size(FoldBench.JOURNAL) / 1e6,
                    result.records(),
                    samples,
                    result.state().samples().size(),
                    (System.nanoTime() - begun) / 1e9);
        }
    }

    private static long size(Path file) {
        return file.toFile().length();
    }

    /** Forked machines get their class path from this property, which a build tool leaves at its own. */
    private static void useTheWholeClassPath() {
        if (Thread.currentThread().getContextClassLoader() instanceof URLClassLoader loader) {
            System.setProperty(
                    "java.class.path",
                    Arrays.stream(loader.getURLs())
                            .map(url -> Path.of(URI.create(url.toString())).toString())
                            .collect(Collectors.joining(File.pathSeparator)));
        }
    }
}
