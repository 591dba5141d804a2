package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.access.CallAnswer;
import campcloth.access.KeyedCall;
import campcloth.access.KeyedCalls.Start;
import campcloth.access.TakenOver;
import campcloth.access.Turn;
import campcloth.event.KeptEvent;
import campcloth.job.Pace;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.transaction.CannotCreateTransactionException;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.TransactionStatus;
import org.springframework.transaction.support.TransactionTemplate;

/** A call with a key whose instance is gone goes on elsewhere at once; whoever was only thought gone writes nothing more. */
class KeyedCallsTakenOverTest extends KeyedCallsBench {

    private static final CallAnswer ANSWER = new CallAnswer(201, Map.of(), "made");

    private final KeyedCall call = call();

    @Test
    void aCallOfOneThatIsGoneGoesOnFromItsSeedOnceNothingWasHeardOfItForALittleWhile() throws Exception {
        Instance one = instance(PATIENT);
        Instance other = instance(PATIENT);
        Turn first = one.turn(call);
        one.line().cut();
        assertThat(other.calls().begin(call)).as("it may come back").isInstanceOf(Start.Running.class);
        silentFor(3);
        Turn next = untilBegun(other);
        assertThat(next.seed()).isEqualTo(first.seed());
        assertThat(next.claim()).isNotEqualTo(first.claim());
    }

    @Test
    void aCallOfOneThatLivesIsWaitedForHoweverLittleIsHeardOfIt() {
        Instance one = instance(PATIENT);
        Turn first = one.turn(call);
        silentFor(3);
        assertThat(instance(PATIENT).calls().begin(call)).isInstanceOf(Start.Running.class);
        assertThat(one.calls().begin(call)).isInstanceOf(Start.Running.class);
        one.calls().answered(call, first, ANSWER);
        assertThat(instance(PATIENT).calls().begin(call)).isEqualTo(new Start.Answered(ANSWER));
    }

    @Test
    void beatsHoldACallThatTakesLongerThanAClaimHolds() throws Exception {
        Duration beat = Duration.ofMillis(50);
        Pace brisk = new Pace(beat, beat, Duration.ofSeconds(2), Duration.ofSeconds(2), Duration.ZERO);
        Instance one = instance(brisk);
        one.atWork().afterSingletonsInstantiated();
        one.turn(call);
        TimeUnit.SECONDS.sleep(4);
        assertThat(instance(brisk).calls().begin(call)).isInstanceOf(Start.Running.class);
    }

    @Test
    void whoIsThoughtGoneAndLivesMakesNothingTwiceAndHasNoMoreSay() throws Exception {
        Instance one = instance(PATIENT);
        Instance other = instance(PATIENT);
        Turn late = one.turn(call);
        one.line().cut();
        silentFor(3);
        Turn next = untilBegun(other);
        assertThatThrownBy(() -> made(late)).isInstanceOf(TakenOver.class);
        assertThat(kept(late)).isZero();
        made(next);
        one.calls().forget(call, late);
        one.calls().leave(call, late);
        one.calls().answered(call, late, new CallAnswer(201, Map.of(), "late"));
        other.calls().answered(call, next, ANSWER);
        assertThat(kept(next)).isEqualTo(1);
        assertThat(other.calls().begin(call)).isEqualTo(new Start.Answered(ANSWER));
    }

    @Test
    void whatWasRemovedSinceDoesNotComeBackByALateCommit() throws Exception {
        Instance one = instance(PATIENT);
        Instance other = instance(PATIENT);
        Turn late = one.turn(call);
        one.line().cut();
        silentFor(3);
        Turn next = untilBegun(other);
        KeptEvent event = made(next);
        other.calls().answered(call, next, ANSWER);
        events.remove(event.id(), event.version());
        assertThatThrownBy(() -> made(late)).isInstanceOf(TakenOver.class);
        assertThat(kept(late)).isZero();
    }

    @Test
    void whoWouldTakeACallOverWaitsForACommitUnderWayAndFindsWhatItMade() throws Exception {
        Instance one = instance(PATIENT);
        Instance other = instance(PATIENT);
        Turn late = one.turn(call);
        silentFor(3);
        CountDownLatch looked = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        CompletableFuture<KeptEvent> making = CompletableFuture.supplyAsync(() -> ids.under(
                late,
                () -> new TransactionTemplate(transactions).execute(status -> {
                    KeptEvent event = events.add(event(late.seed().toString()));
                    sql.execute((ConnectionCallback<Boolean>) fence::holds);
                    looked.countDown();
                    waitFor(goOn);
                    return event;
                })));
        waitFor(looked);
        one.line().cut();
        CompletableFuture<Turn> taking = CompletableFuture.supplyAsync(() -> untilBegun(other));
        TimeUnit.MILLISECONDS.sleep(500);
        assertThat(taking).isNotDone();
        goOn.countDown();
        KeptEvent event = making.get(20, TimeUnit.SECONDS);
        assertThat(made(taking.get(20, TimeUnit.SECONDS)).id()).isEqualTo(event.id());
        assertThat(kept(late)).isEqualTo(1);
    }

    @Test
    void whoseEndCouldNotBeToldGoesOnWhereItWasBegun() {
        AtomicBoolean away = new AtomicBoolean();
        Instance one = instance(PATIENT, new Breaking(transactions, away));
        Turn first = one.turn(call);
        away.set(true);
        assertThatThrownBy(() -> one.calls().leave(call, first)).isInstanceOf(CannotCreateTransactionException.class);
        away.set(false);
        assertThat(instance(PATIENT).calls().begin(call))
                .as("nobody else can know")
                .isInstanceOf(Start.Running.class);
        assertThat(one.turn(call).seed()).isEqualTo(first.seed());
    }

    @Test
    void whatMayHaveBeenMadeBeforeKeepsItsSeedThoughTheNextMakesNothing() throws Exception {
        Instance one = instance(PATIENT);
        Instance other = instance(PATIENT);
        Turn first = one.turn(call);
        KeptEvent event = made(first);
        one.line().cut();
        silentFor(3);
        other.calls().forget(call, untilBegun(other));
        Turn again = other.turn(call);
        assertThat(made(again).id()).isEqualTo(event.id());
        KeyedCall unused = call();
        Turn refused = other.turn(unused);
        other.calls().forget(unused, refused);
        assertThat(other.turn(unused).seed()).isNotEqualTo(refused.seed());
    }

    private Turn untilBegun(Instance instance) {
        Turn[] begun = new Turn[1];
        WorkedJobs.until(() -> {
            if (instance.calls().begin(call) instanceof Start.First first) {
                begun[0] = first.turn();
            }
            return begun[0] != null;
        });
        return begun[0];
    }

    private static void waitFor(CountDownLatch latch) {
        try {
            assertThat(latch.await(30, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }

    /** The database is away by times. */
    private record Breaking(PlatformTransactionManager whole, AtomicBoolean away)
            implements PlatformTransactionManager {

        @Override
        public TransactionStatus getTransaction(TransactionDefinition definition) {
            if (away.get()) {
                throw new CannotCreateTransactionException("away");
            }
            return whole.getTransaction(definition);
        }

        @Override
        public void commit(TransactionStatus status) {
            whole.commit(status);
        }

        @Override
        public void rollback(TransactionStatus status) {
            whole.rollback(status);
        }
    }
}
