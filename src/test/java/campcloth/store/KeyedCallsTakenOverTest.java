package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.access.CallAnswer;
import campcloth.access.KeyedCall;
import campcloth.access.KeyedCalls.Start;
import campcloth.access.TakenOver;
import campcloth.access.Turn;
import campcloth.event.KeptEvent;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
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
        Instance one = instance();
        Instance other = instance();
        Turn first = one.turn(call);
        one.line().cut();
        assertThat(other.calls().begin(call)).as("it may come back").isInstanceOf(Start.Running.class);
        silentFor(first, 3);
        Turn next = untilBegun(other);
        assertThat(next.seed()).isEqualTo(first.seed());
        assertThat(next.claim()).isNotEqualTo(first.claim());
    }

    @Test
    void aCallOfOneThatLivesIsWaitedForHoweverLittleIsHeardOfIt() {
        Instance one = instance();
        Turn first = one.turn(call);
        silentFor(first, 3);
        assertThat(instance().calls().begin(call)).isInstanceOf(Start.Running.class);
        assertThat(one.calls().begin(call)).isInstanceOf(Start.Running.class);
        one.calls().answered(call, first, ANSWER);
        assertThat(instance().calls().begin(call)).isEqualTo(new Start.Answered(ANSWER));
    }

    @Test
    void beatsHoldACallThatTakesLongerThanAClaimHolds() {
        Instance one = instance();
        Turn turn = one.turn(call);
        for (int time = 0; time < 3; time++) {
            silentFor(turn, 2 * (int) WorkedJobs.BRISK.lease().toMinutes());
            if (time == 0) {
                one.atWork().afterSingletonsInstantiated();
            }
            Awaited.until(() -> isHeld(turn));
            assertThat(instance().calls().begin(call)).isInstanceOf(Start.Running.class);
        }
    }

    @Test
    void whoIsThoughtGoneAndLivesMakesNothingTwiceAndHasNoMoreSay() throws Exception {
        Instance one = instance();
        Instance other = instance();
        Turn late = one.turn(call);
        Turn next = takenOver(one, late, other);
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
        Instance one = instance();
        Instance other = instance();
        Turn late = one.turn(call);
        Turn next = takenOver(one, late, other);
        KeptEvent event = made(next);
        other.calls().answered(call, next, ANSWER);
        events.remove(event.id(), event.version());
        assertThatThrownBy(() -> made(late)).isInstanceOf(TakenOver.class);
        assertThat(kept(late)).isZero();
    }

    @Test
    void whoWouldTakeACallOverWaitsForACommitUnderWayAndFindsWhatItMade() throws Exception {
        Instance one = instance();
        Instance other = instance();
        Turn late = one.turn(call);
        silentFor(late, 3);
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
        Awaited.until(this::somebodyWaitsForALock);
        assertThat(taking).isNotDone();
        goOn.countDown();
        KeptEvent event = making.get(3, TimeUnit.MINUTES);
        assertThat(made(taking.get(3, TimeUnit.MINUTES)).id()).isEqualTo(event.id());
        assertThat(kept(late)).isEqualTo(1);
    }

    @Test
    void whoseEndCouldNotBeToldGoesOnWhereItWasBegun() {
        AtomicBoolean away = new AtomicBoolean();
        Instance one = instance(WorkedJobs.BRISK, new Breaking(transactions, away));
        Turn first = one.turn(call);
        away.set(true);
        assertThatThrownBy(() -> one.calls().leave(call, first)).isInstanceOf(CannotCreateTransactionException.class);
        away.set(false);
        assertThat(instance().calls().begin(call)).as("nobody else can know").isInstanceOf(Start.Running.class);
        assertThat(one.turn(call).seed()).isEqualTo(first.seed());
    }

    @Test
    void whatMayHaveBeenMadeBeforeKeepsItsSeedThoughTheNextMakesNothing() throws Exception {
        Instance one = instance();
        Instance other = instance();
        Turn first = one.turn(call);
        KeptEvent event = made(first);
        other.calls().forget(call, takenOver(one, first, other));
        Turn again = other.turn(call);
        assertThat(made(again).id()).isEqualTo(event.id());
        KeyedCall unused = call();
        Turn refused = other.turn(unused);
        other.calls().forget(unused, refused);
        assertThat(other.turn(unused).seed()).isNotEqualTo(refused.seed());
    }

    /** One is thought gone that has begun the call, and another goes on with it. */
    private Turn takenOver(Instance one, Turn begun, Instance other) throws Exception {
        one.line().cut();
        silentFor(begun, 3);
        return untilBegun(other);
    }

    private boolean isHeld(Turn turn) {
        return Boolean.TRUE.equals(sql.queryForObject(
                "select busy_until > clock_timestamp() from keyed_call where claim = ?", Boolean.class, turn.claim()));
    }

    private boolean somebodyWaitsForALock() {
        return Boolean.TRUE.equals(sql.queryForObject(
                "select exists (select 1 from pg_stat_activity where datname = current_database() and wait_event_type = 'Lock')",
                Boolean.class));
    }

    private Turn untilBegun(Instance instance) {
        Turn[] begun = new Turn[1];
        Awaited.until(() -> {
            if (instance.calls().begin(call) instanceof Start.First first) {
                begun[0] = first.turn();
            }
            return begun[0] != null;
        });
        return begun[0];
    }

    private static void waitFor(CountDownLatch latch) {
        try {
            assertThat(latch.await(3, TimeUnit.MINUTES)).isTrue();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }

    /** The database is away by times. */
    private record Breaking(PlatformTransactionManager whole, AtomicBoolean away)
            implements PlatformTransactionManager {

        @Override
        public TransactionStatus getTransaction(@Nullable TransactionDefinition definition) {
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
