package ouzel.app.flight;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import ouzel.app.desk.Sample;
import ouzel.app.estimate.Verdict.Grade;
import ouzel.app.exit.ExitCode;
import ouzel.app.exit.FileTrouble;
import ouzel.app.exit.Refusal;
import ouzel.app.journal.JournalFiles;
import ouzel.app.journal.JournalHeader;
import ouzel.app.journal.Recorder;
import ouzel.app.report.SampleTable;
import ouzel.protocol.message.Sampler;
import ouzel.simulator.profile.ProfileFile;
import ouzel.simulator.radio.Weather;
import ouzel.simulator.rehearsal.Site;

/**
 * Whole sorties in virtual time: a scripted operator takes air, then water, then soil at one site. Everything follows
 * from the seed; the same seed gives the same files, byte for byte.
 *
 * <p><b>Thread:</b> any, one at a time.
 */
public final class HeadlessRehearsal {
    /** What one sortie owes, in the order in which one sampler cannot spoil the next one's sample. */
    private static final List<Sampler> OWED = List.of(Sampler.AIR, Sampler.WATER, Sampler.SOIL);
    /** A sortie that has not ended by then is broken off, ms. */
    private static final long LONGEST_MILLIS = 900_000;

    private static final int LOOK_MILLIS = 100;

    private HeadlessRehearsal() {}

    /**
     * What sorties brought home.
     *
     * @param samples what the desk recorded, oldest first
     * @param virtualMillis flown time, ms
     * @param realNanos time it took, ns
     */
    public record Result(List<Sample> samples, long virtualMillis, long realNanos) {
        /** How many times faster than real time it was flown. */
        public double ratio() {
            return virtualMillis * 1e6 / Math.max(1, realNanos);
        }

        /** True if every owed sample was brought home and accepted. */
        public boolean isComplete() {
            return samples.size() == OWED.size()
                    && samples.stream().allMatch(sample -> sample.verdict().grade() == Grade.ACCEPTED);
        }
    }

    /**
     * Flies one sortie and writes its journal and {@code samples.csv} into {@code out}; what a former rehearsal left
     * there under these names is replaced.
     *
     * @throws Refusal if the files cannot be written
     */
    public static Result fly(Site site, long seed, Path out, String programVersion) throws Refusal {
        JournalHeader header = new JournalHeader(VirtualFlight.STARTED, true, programVersion);
        List<String> trouble = new ArrayList<>();
        JournalFiles.Opened journal = JournalFiles.reproducible(journalOf(out, seed), header, trouble::add);
        Result result;
        try (Recorder recorder = journal.recorder()) {
            result = fly(site, seed, recorder);
        }
        if (!trouble.isEmpty()) {
            throw new Refusal(ExitCode.NOT_WRITABLE, trouble.get(0));
        }
        writeTable(result.samples(), out.resolve("samples.csv"));
        return result;
    }

    /** Where {@link #fly} puts the journal of the sortie of {@code seed}. */
    public static Path journalOf(Path out, long seed) {
        return out.resolve("rehearsal-" + seed + JournalFiles.SUFFIX);
    }

    /** Flies one sortie, recorded by {@code recorder}. */
    static Result fly(Site site, long seed, Recorder recorder) {
        long begun = System.nanoTime();
        VirtualFlight flight = new VirtualFlight(
                new VirtualFlight.World(ProfileFile.reference(), site, Weather.LIGHT_LOSS, seed), recorder);
        ScriptedOperator operator = new ScriptedOperator(flight, OWED);
        while (!operator.isDone() && flight.nowMillis() < LONGEST_MILLIS) {
            flight.step();
            if (flight.nowMillis() % LOOK_MILLIS == 0) {
                operator.look(flight.state(), flight.nowMillis());
            }
        }
        // One more look of the desk, so that the truth of the last sample is told too.
        flight.runTo(flight.nowMillis() + LOOK_MILLIS);
        return new Result(flight.state().samples(), flight.nowMillis(), System.nanoTime() - begun);
    }

    private static void writeTable(List<Sample> samples, Path file) throws Refusal {
        try (BufferedWriter target = Files.newBufferedWriter(file)) {
            SampleTable.write(samples, target);
        } catch (IOException trouble) {
            throw new Refusal(
                    ExitCode.NOT_WRITABLE,
                    "The table " + file + " cannot be written: " + FileTrouble.words(trouble) + ".",
                    trouble);
        }
    }
}
