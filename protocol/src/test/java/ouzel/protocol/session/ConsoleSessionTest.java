package ouzel.protocol.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Challenge;
import ouzel.protocol.message.Identity;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.VersionRefusal;
import ouzel.protocol.session.ConsoleSession.State;

class ConsoleSessionTest {
    private final Bench bench = new Bench();

    @Test
    void opensWithOpenChallengeConfirmAndStatus() {
        List<Heard> heard = bench.open();

        assertThat(bench.console.isOpen()).isTrue();
        assertThat(bench.console.session()).isEqualTo(bench.payload.session()).isNotZero();
        assertThat(heard.get(0)).isEqualTo(new Heard.Opened(Bench.PAYLOAD, bench.payload.session()));
        assertThat(heard.get(1)).isInstanceOf(Heard.Said.class);
    }

    @Test
    void repeatsItsOpenEveryFourHundredMillisecondsWithTheSameNonce() {
        Frame first = bench.tickOnce();
        bench.pass(399);
        assertThat(bench.tick()).isEmpty();
        bench.pass(1);

        assertThat(bench.tickOnce().body()).isEqualTo(first.body());
    }

    @Test
    void repeatsItsConfirmWithAFreshCounterUntilAStatusNamesTheSession() {
        bench.consoleHears(bench.challenge(bench.tickOnce()));
        Frame lost = bench.tickOnce();
        bench.pass(400);
        Frame second = bench.tickOnce();

        assertThat(Seal.counter(lost)).isEqualTo(1);
        assertThat(Seal.counter(second)).isEqualTo(2);
        assertThat(bench.payload.hear(second)).isInstanceOf(Verdict.Opened.class);
        assertThat(bench.consoleHearsStatus()).hasSize(2);
        assertThat(bench.console.state()).isEqualTo(State.OPEN);
    }

    @Test
    void doesNotBeginTheSameKeysAgainWhenAChallengeIsRepeated() {
        Frame challenge = bench.challenge(bench.tickOnce());
        bench.consoleHears(challenge);
        Frame first = bench.tickOnce();
        bench.consoleHears(challenge);
        bench.pass(400);

        assertThat(Seal.counter(bench.tickOnce())).isGreaterThan(Seal.counter(first));
    }

    @Test
    void keepsToTheChallengeItAnsweredWhenAnotherOneComes() {
        Frame open = bench.tickOnce();
        bench.consoleHears(bench.challenge(open));
        Frame first = bench.tickOnce();
        bench.restartPayload();
        bench.consoleHears(bench.challenge(open));
        bench.pass(400);

        assertThat(Seal.counter(bench.tickOnce())).isEqualTo(Seal.counter(first) + 1);
    }

    @Test
    void beginsAgainWithAFreshNonceWhenNothingComesOfItsConfirm() {
        Frame open = bench.tickOnce();
        bench.consoleHears(bench.challenge(open));
        bench.pass(2_001);

        assertThat(bench.tickOnce().body()).isNotEqualTo(open.body());
        assertThat(bench.console.state()).isEqualTo(State.OPENING);
    }

    @Test
    void sendsKeepAlivesEveryTwoHundredMillisecondsWhateverElseIsSent() {
        bench.open();
        assertThat(bench.tickOnce().header().kind()).isEqualTo(Kind.KEEP_ALIVE.code());
        bench.pass(150);
        bench.console.seal(new SafeAll(), 1, 1_000, bench.nowNanos);
        assertThat(bench.tick()).isEmpty();
        bench.pass(50);

        assertThat(bench.tickOnce().header().kind()).isEqualTo(Kind.KEEP_ALIVE.code());
    }

    @Test
    void sealsNothingWithoutASession() {
        assertThatThrownBy(() -> bench.console.seal(new SafeAll(), 1, 1_000, 0))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("state : OPENING (expected: OPEN)");
    }

    @Test
    void saysWhenThePayloadHasAnotherKey() {
        bench.payload = Bench.payload(PairingKey.rehearsal(), Bench.PAYLOAD, 1);

        List<Heard> heard = bench.consoleHears(bench.challenge(bench.tickOnce()));

        assertThat(heard).containsExactly(new Heard.WrongKey(Bench.PAYLOAD));
        assertThat(bench.console.state()).isEqualTo(State.OPENING);
    }

    @Test
    void doesNotTakeAChallengeMeantForAnotherNonce() {
        Bytes other = Bytes.of(new byte[16]);

        assertThat(bench.consoleHears(bench.down(new Challenge(other, other, other))))
                .isEmpty();
    }

    @Test
    void doesNotTakeAnOrdersTagForAChallengesTag() {
        Bench other = new Bench();
        Frame confirm = sealedConfirm(other);
        byte[] body = confirm.body().toArray();
        Bytes tag = Bytes.of(java.util.Arrays.copyOfRange(body, body.length - 16, body.length));
        Bytes nonce = Bytes.of(bench.tickOnce().body().toArray());

        List<Heard> heard = bench.consoleHears(bench.down(new Challenge(nonce, Bytes.of(new byte[16]), tag)));

        assertThat(heard).containsExactly(new Heard.WrongKey(Bench.PAYLOAD));
    }

    @Test
    void hearsItsOwnFramesAsAnEchoAndNothingMore() {
        bench.open();
        Frame own = bench.tickOnce();

        assertThat(bench.consoleHears(own)).singleElement().isInstanceOf(Heard.Unreadable.class);
        assertThat(bench.console.isOpen()).isTrue();
    }

    @Test
    void passesOnTelemetryBeforeTheSessionIsOpen() {
        assertThat(bench.consoleHearsStatus()).singleElement().isInstanceOf(Heard.Said.class);
    }

    @Test
    void setsTheExpiryByThePayloadsClockAndNeverBeyondIt() {
        bench.open();
        Frame late = bench.down(bench.status(bench.payload.session()));
        bench.pass(250);
        bench.consoleHears(late);
        bench.pass(70);

        Frame order = bench.console.seal(new Arm(Sampler.WATER, 400, 0), 3, 1_500, bench.nowNanos);

        assertThat(Seal.expiresAtMillis(order)).isEqualTo(bench.payloadMillis - 250 + 1_500);
        assertThat(bench.console.payloadMillis(bench.nowNanos)).hasValue(bench.payloadMillis - 250);
    }

    @Test
    void setsTheExpiryAcrossTheTurnOfThePayloadsClock() {
        bench.payloadMillis = 0xFFFF_FFFFL - 100;
        bench.open();
        bench.pass(50);

        Frame order = bench.console.seal(new SafeAll(), 3, 1_000, bench.nowNanos);

        assertThat(Seal.expiresAtMillis(order)).isEqualTo(949);
    }

    @Test
    void followsTheClockOfAPayloadThatSaysItStartedAgain() {
        bench.payloadMillis = 1_900;
        bench.open();
        bench.restartPayload();
        bench.consoleHears(bench.down(new Identity("reed 1.0", 0, bench.bootCount, 0, true)));

        assertThat(bench.console.payloadMillis(bench.nowNanos)).hasValue(15);
    }

    @Test
    void isNotPutAheadByFramesThatAModemHeldBackFromBeforeARestart() {
        bench.open();
        Frame outcome = bench.down(Outcome.of(1, Outcome.Stage.COMPLETED));
        Frame identity = bench.down(new Identity("reed 1.0", 0, bench.bootCount, 0, true));
        bench.restartPayload();
        bench.console.reopen();
        bench.open();

        bench.consoleHears(outcome);
        assertThat(bench.console.payloadMillis(bench.nowNanos)).hasValue(bench.payloadMillis);
        bench.consoleHears(identity);
        assertThat(bench.console.payloadMillis(bench.nowNanos)).hasValue(bench.payloadMillis);
    }

    @Test
    void opensAnewWhenThePayloadHasNoSessionForOverASecond() {
        bench.open();
        bench.restartPayload();
        assertThat(bench.consoleHearsStatus()).hasSize(1);
        bench.pass(1_000);
        assertThat(bench.consoleHearsStatus()).hasSize(1);
        bench.pass(1);

        assertThat(bench.consoleHearsStatus().get(0))
                .isInstanceOfSatisfying(
                        Heard.Lost.class, lost -> assertThat(lost.reopens()).isTrue());
        assertThat(bench.open().get(0)).isInstanceOf(Heard.Opened.class);
    }

    @Test
    void leavesThePayloadToAnotherConsoleThatTookItOver() {
        bench.open();
        long other = bench.payload.session() ^ 1;
        bench.consoleHears(bench.down(bench.status(other)));
        bench.pass(1_001);

        assertThat(bench.consoleHears(bench.down(bench.status(other))).get(0))
                .isInstanceOfSatisfying(
                        Heard.Lost.class, lost -> assertThat(lost.reopens()).isFalse());
        assertThat(bench.console.state()).isEqualTo(State.CLOSED);
        assertThat(bench.tick()).isEmpty();
    }

    @Test
    void doesNotGiveUpForStatusesThatWereOnTheirWayWhenItOpened() {
        Frame early = bench.down(bench.status(0));
        bench.open();
        bench.consoleHears(early);
        bench.pass(900);
        bench.consoleHearsStatus();
        bench.pass(900);

        assertThat(bench.consoleHears(early)).hasSize(1);
        assertThat(bench.console.isOpen()).isTrue();
    }

    @Test
    void namesASecondPayloadOnTheLine() {
        bench.open();

        assertThat(bench.consoleHears(bench.downFrom(6, bench.status(1)))).containsExactly(new Heard.Foreign(6));
    }

    @Test
    void takesTheFirstPayloadThatProvesTheKeyWhenNoneIsExpected() {
        Bench any = new Bench(0);
        assertThat(any.console.payload()).isEmpty();

        any.open();

        assertThat(any.console.payload()).hasValue(Bench.PAYLOAD);
        assertThat(any.consoleHears(any.downFrom(6, any.status(1)))).containsExactly(new Heard.Foreign(6));
    }

    @Test
    void forgetsTheAdoptedPayloadWhenItIsReopenedByHand() {
        Bench any = new Bench(0);
        any.open();

        any.console.reopen();

        assertThat(any.console.payload()).isEmpty();
        assertThat(any.console.session()).isZero();
        assertThat(any.tickOnce().header().payload()).isZero();
    }

    @Test
    void namesBothVersionsWhenThePayloadSpeaksAnother() {
        Header header = new Header(0x21, Kind.VERSION_REFUSAL.code(), Bench.PAYLOAD, 0, 0);
        Frame refusal = new Frame(header, Bytes.of((byte) 0x21, (byte) 0x10));

        assertThat(bench.consoleHears(refusal)).containsExactly(new Heard.OtherVersion(0x10, 0x21));
    }

    @Test
    void readsFramesOfANewerMinorVersion() {
        Frame status = bench.down(bench.status(0));
        Header newer = new Header(0x1F, status.header().kind(), Bench.PAYLOAD, 0, 0);

        assertThat(bench.consoleHears(new Frame(newer, status.body())))
                .singleElement()
                .isInstanceOf(Heard.Said.class);
        assertThat(bench.consoleHears(bench.down(new VersionRefusal(0x10, 0x20))))
                .singleElement()
                .isInstanceOf(Heard.Said.class);
    }

    @Test
    void saysWhyItCannotReadAFrame() {
        Header unknown = new Header(Header.VERSION, 0x5F, Bench.PAYLOAD, 0, 0);
        Header nobody = new Header(Header.VERSION, Kind.STATUS.code(), 0, 0, 0);

        assertThat(bench.consoleHears(new Frame(unknown, Bytes.of())))
                .containsExactly(new Heard.Unreadable(0x5F, "unknown kind"));
        assertThat(bench.consoleHears(Bench.cut(bench.down(bench.status(0)), 52)))
                .containsExactly(new Heard.Unreadable(0x42, "body : 52 bytes (expected: at least 53)"));
        assertThat(bench.consoleHears(new Frame(nobody, Bytes.of())))
                .containsExactly(new Heard.Unreadable(0x42, "payload : 0 (expected: 1 to 65535)"));
    }

    @Test
    void sendsNothingWhileItIsClosedAndOpensWithAFreshNonceAfterwards() {
        Frame before = bench.tickOnce();
        bench.console.close();
        bench.pass(5_000);
        assertThat(bench.tick()).isEmpty();

        bench.console.reopen();

        assertThat(bench.tickOnce().body()).isNotEqualTo(before.body());
    }

    @Test
    void numbersItsFramesAndTellsItsTime() {
        Frame first = bench.tickOnce();
        bench.pass(400);
        Frame second = bench.tickOnce();

        assertThat(second.header().sequence()).isEqualTo(first.header().sequence() + 1);
        assertThat(second.header().timeMillis() - first.header().timeMillis()).isEqualTo(400);
    }

    @Test
    void refusesANumberThatNoPayloadCanHave() {
        assertThatThrownBy(() -> new Bench(0x1_0000)).hasMessageContaining("expectedPayload : 65536");
    }

    private static Frame sealedConfirm(Bench bench) {
        bench.consoleHears(bench.challenge(bench.tickOnce()));
        return bench.tickOnce();
    }
}
