package ouzel.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.logging.Logger;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ouzel.app.exit.ExitCode;
import ouzel.app.journal.Sorties;
import ouzel.app.key.KeyFile;
import ouzel.app.link.Port;
import ouzel.app.link.SerialPorts;
import ouzel.protocol.session.PairingKey;
import ouzel.simulator.rehearsal.Site;

class ShellTest {
    /** Held here, for a log settings' owner that nobody holds is forgotten with its settings. */
    private static final Logger LOG = Logger.getLogger(Shell.class.getName());

    @TempDir
    Path home;

    private final RecordingPrograms programs = new RecordingPrograms();
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private boolean display = true;
    private SerialPorts.Found ports = new SerialPorts.Found(List.of(), "");

    @BeforeAll
    static void keepTheLogOutOfTheTestsOutput() {
        LOG.setUseParentHandlers(false);
    }

    @Test
    void aloneItOpensARehearsalWithItsOwnStore() {
        assertThat(run()).isZero();

        DeskRequest request = programs.desk.orElseThrow();
        assertThat(request.port()).isEmpty();
        assertThat(request.rehearsal()).isTrue();
        assertThat(request.key()).isEqualTo(PairingKey.rehearsal());
        assertThat(request.journals()).isEqualTo(home.resolve(".ouzel/rehearsals"));
    }

    @Test
    void optionsWithoutACommandAreThoseOfTheDesk() {
        run("--tcp", "localhost:5760", "--site", "reed bed");

        assertThat(programs.desk.orElseThrow().port()).contains(new Port.Tcp("localhost", 5_760));
        assertThat(programs.desk.orElseThrow().site()).isEqualTo("reed bed");
    }

    @Test
    void aPayloadOnWhicheverSerialLineIsSearchedFor() throws Exception {
        KeyFile.create(home.resolve("k"));
        String key = home.resolve("k").toString();

        run("desk", "--serial", "auto,/dev/serial/by-id/*", "--baud", "115200", "--key", key);

        assertThat(programs.desk.orElseThrow().port())
                .contains(new Port.Search(List.of("/dev/serial/by-id/*"), 115_200, false));
        assertThat(run("payload", "--serial", "auto", "--key", key)).isEqualTo(ExitCode.USAGE.code());
    }

    @Test
    void aLinkTestIsToldWhereAndHowLongAndEndsAsItFound() {
        assertThat(run("link-test", "--tcp", "localhost:5760", "--seconds", "7"))
                .isEqualTo(ExitCode.LINK_POOR.code());

        assertThat(programs.linkTest)
                .contains(new LinkTestRequest(new Port.Tcp("localhost", 5_760), PairingKey.rehearsal(), 7));
    }

    @ParameterizedTest
    @ValueSource(strings = {"link-test", "link-test --tcp localhost", "link-test --tcp a:1 --seconds 1"})
    void aLinkTestThatMakesNoSenseIsNotUnderstood(String line) {
        assertThat(run(line.split(" "))).isEqualTo(ExitCode.USAGE.code());
        assertThat(programs.linkTest).isEmpty();
    }

    @Test
    void aRealPayloadOnASerialLineIsNoRehearsalAndHasTheOtherStore() throws Exception {
        KeyFile.create(home.resolve("k"));
        run(
                "desk",
                "--serial",
                "/dev/ttyUSB0",
                "--baud",
                "115200",
                "--key",
                home.resolve("k").toString());

        DeskRequest request = programs.desk.orElseThrow();
        assertThat(request.port()).contains(new Port.Serial("/dev/ttyUSB0", 115_200));
        assertThat(request.rehearsal()).isFalse();
        assertThat(request.journals()).isEqualTo(home.resolve(".ouzel/journals"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"desk", "payload"})
    void theRehearsalKeyIsRefusedOnASerialLine(String command) {
        assertThat(run(command, "--serial", "/dev/ttyUSB0")).isEqualTo(ExitCode.KEY_REFUSED.code());

        assertThat(complaint()).startsWith("The rehearsal key, which everybody knows, is refused on a serial line");
        assertThat(programs.desk).isEmpty();
        assertThat(programs.payload).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "desk --tpc x, Unknown option '--tpc': did you mean '--tcp'?, desk",
        "--serail x, Unknown option '--serail': did you mean '--serial'?, desk",
        "desk --frobnicate, Unknown option '--frobnicate'., desk",
        "desk --seed abc, Invalid value for option '--seed': 'abc' is not a whole number., desk",
        "desk --tcp a:1 --serial b, 'Give either --tcp or --serial, not both.', desk",
        "desk --baud 9600, --baud and --hold-lines-low belong to a serial line: name it with --serial., desk",
        "playback, Missing required parameter: 'FILE'., playback",
        "payload, Say where the payload is to be reached: --tcp PORT or --serial PORT., payload",
        "rehearse --headless --flights 0, '--flights 0 cannot be flown: 1 to 100000 is expected.', rehearse",
        "payload --tcp 70000, There is no TCP port 70000: 0 to 65535 is expected., payload",
    })
    void whatIsNotUnderstoodIsOneSentenceThatHelps(String line, String sentence, String command) {
        assertThat(run(line.split(" "))).isEqualTo(ExitCode.USAGE.code());

        assertThat(complaint().lines()).containsExactly(sentence + " See 'ouzel " + command + " --help'.");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void aCommandThatDoesNotExistIsAnsweredWithTheNearest() {
        assertThat(run("rehaerse")).isEqualTo(ExitCode.USAGE.code());

        assertThat(complaint().lines())
                .containsExactly("Unknown word 'rehaerse': did you mean 'rehearse'? See 'ouzel --help'.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-5", "12345"})
    void aSpeedThatIsNotOfferedIsRefusedWithTheOnesThatAre(String baud) {
        assertThat(run("desk", "--serial", "x", "--baud", baud)).isEqualTo(ExitCode.USAGE.code());

        assertThat(complaint()).contains("57600").contains("921600");
    }

    @ParameterizedTest
    @CsvSource({
        "desk, ouzel rehearse --headless --seed 1 --out DIR",
        "rehearse, ouzel rehearse --headless --seed 1 --out DIR",
        "playback x.ouzel, ouzel playback x.ouzel --headless"
    })
    void withoutADisplayItNamesWhatDoesTheSameWithoutOne(String line, String instead) {
        display = false;

        assertThat(run(line.split(" "))).isEqualTo(ExitCode.NO_DISPLAY.code());
        assertThat(complaint()).contains(instead);
    }

    @Test
    void aHeadlessRehearsalNeedsNoDisplay() {
        display = false;

        assertThat(run("rehearse", "--headless", "--seed", "42", "--out", "there"))
                .isZero();
        assertThat(programs.rehearsal).contains(new RehearsalRequest(42, Path.of("there"), Site.QUARRY, 1));
    }

    @Test
    void aRehearsalAtAnUnknownSiteNamesTheOnesThereAre() {
        assertThat(run("rehearse", "--headless", "--site", "the moon")).isEqualTo(ExitCode.USAGE.code());
        assertThat(complaint()).contains("no site 'the moon'", "Reed bed inlet");
    }

    @Test
    void noRehearsalOrTooManyAreRefused() {
        assertThat(run("rehearse", "--headless", "--flights", "0")).isEqualTo(ExitCode.USAGE.code());
        assertThat(complaint()).contains("--flights 0 cannot be flown");
    }

    @Test
    void aPayloadIsReachedFromThisComputerAloneUnlessAskedOtherwise() {
        run("payload", "--tcp", "0", "--seed", "7");

        assertThat(programs.payload)
                .contains(new PayloadRequest(Optional.empty(), 0, false, PairingKey.rehearsal(), 7));
    }

    @Test
    void aFaultOfTheProgramIsOneSentenceWithTheLogsPlaceAndNoTrace() {
        programs.fault = Optional.of(new IllegalStateException("secret inside"));

        assertThat(run("desk")).isEqualTo(ExitCode.INTERNAL.code());
        assertThat(complaint().lines())
                .containsExactly("The program ran into a fault of its own (IllegalStateException); "
                        + home.resolve(".ouzel/ouzel.log") + " tells the details.");
    }

    @Test
    void theSerialLinesAreListedWithTheirDescriptions() {
        ports = new SerialPorts.Found(List.of(new SerialPorts.Entry("/dev/ttyUSB0", "radio modem")), "");

        assertThat(run("ports")).isZero();
        assertThat(out).hasToString("/dev/ttyUSB0  radio modem" + System.lineSeparator());
    }

    @Test
    void aMissingNativePartIsOneSentence() {
        ports = new SerialPorts.Found(List.of(), "Serial lines cannot be used here.");

        assertThat(run("ports")).isEqualTo(ExitCode.PORT_UNSUITABLE.code());
        assertThat(complaint()).startsWith("Serial lines cannot be used here.");
    }

    @Test
    void playbackPrintsEachSampleAndSaysThatOneWasNotAccepted() throws Exception {
        Path journal = Sorties.file(home, Sorties.withOneUnseenDraw());

        assertThat(run("playback", journal.toString(), "--headless")).isEqualTo(1);
        assertThat(out.toString().lines()).hasSize(1).last().asString().startsWith("sample 1 air   asked 600 mL");
        assertThat(complaint()).startsWith("REHEARSAL at reed bed, begun 2026-05-04T07:30:09Z");
    }

    @Test
    void playbackOfACutJournalPrintsWhatIsWholeAndSaysWhatWasDropped() throws Exception {
        Path journal = Sorties.file(home, Sorties.opened());
        Sorties.cut(journal, 3);

        assertThat(run("playback", journal.toString(), "--headless")).isEqualTo(ExitCode.JOURNAL_CUT.code());
        assertThat(complaint()).contains("1 records.").contains("bytes, from byte");
    }

    @Test
    void playbackWritesItsTableOnceAndNeverOverAnotherFile() throws Exception {
        String journal = Sorties.file(home, Sorties.withOneUnseenDraw()).toString();
        Path table = home.resolve("samples.csv");

        assertThat(run("playback", journal, "--headless", "--csv", table.toString()))
                .isEqualTo(1);
        assertThat(Files.readAllLines(table)).hasSize(2);
        assertThat(run("playback", journal, "--headless", "--csv", table.toString()))
                .isEqualTo(ExitCode.NOT_WRITABLE.code());
    }

    @Test
    void aFileThatIsNoJournalHasItsOwnExitCode() throws Exception {
        Path file = Files.writeString(home.resolve("x.ouzel"), "x");

        assertThat(run("playback", file.toString(), "--headless")).isEqualTo(ExitCode.JOURNAL_UNREADABLE.code());
        assertThat(complaint()).isEqualTo(file + " is not a journal of this program." + System.lineSeparator());
    }

    @Test
    void keyMakesAKeyAndDoesNotShowIt() throws Exception {
        Path file = home.resolve("pond.key");

        assertThat(run("key", file.toString())).isZero();
        assertThat(out.toString() + err).doesNotContain(Files.readString(file).strip());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "desk", "rehearse", "payload", "playback", "ports", "key"})
    void everyHelpShowsAnExampleAndAllExitCodes(String command) {
        assertThat(run((command + " --help").strip().split(" "))).isZero();

        assertThat(out.toString()).contains("Example").contains("  ouzel " + command);
        Arrays.stream(ExitCode.values())
                .forEach(ending -> assertThat(out.toString()).contains(ending.meaning()));
    }

    @Test
    void theVersionIsTheOneTheBuildPutIn() {
        assertThat(run("--version")).isZero();

        assertThat(out.toString()).matches("ouzel \\d+\\.\\d+\\.\\d+\\R");
    }

    private int run(String... words) {
        Shell shell = new Shell(programs, new Screens(() -> display), new Home(home), () -> ports);
        return shell.printingTo(new PrintWriter(out, true), new PrintWriter(err, true))
                .run(words);
    }

    private String complaint() {
        return err.toString();
    }
}
