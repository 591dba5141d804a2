package campcloth.pages.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.cloth.KeptCloth.Origin;
import campcloth.pages.NotHere;
import campcloth.pages.lists.UploadedList.Stage;
import campcloth.supply.ListDesk;
import campcloth.supply.ListHead;
import campcloth.supply.ListOrder;
import campcloth.supply.ListReport;
import campcloth.supply.ListWriter;
import campcloth.supply.Lists;
import campcloth.supply.Spool;
import campcloth.supply.SupplierLists;
import campcloth.supply.SupplierLists.OnBadRow;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** How many lists are kept, for how long, and how many wait. */
class UploadedListsTest {

    private static final ListOrder ORDER = new ListOrder("Mill", Optional.empty(), Optional.empty());

    private final CountDownLatch gate = new CountDownLatch(1);
    private final SetClock clock = new SetClock();
    private boolean held;
    private Optional<RuntimeException> failure = Optional.empty();
    private final UploadedLists lists = new UploadedLists(new ListDesk(new Desk(), Lists.READER), new Askers(Asker.LOCAL), clock);

    @AfterEach
    void end() throws InterruptedException {
        gate.countDown();
        lists.end();
    }

    @Test
    void aListIsLookedAtFirstAndTakenOverWhenAsked() throws Exception {
        UploadedList list = settled(add());
        assertThat(list.stage()).isInstanceOf(Stage.LookedAt.class);
        lists.take(list);
        assertThat(settled(list).stage()).isInstanceOf(Stage.Ended.class);
        lists.take(list);
        assertThat(list.stage()).isInstanceOf(Stage.Ended.class);
    }

    @Test
    void idsAreLongAndNoTwoAlike() throws Exception {
        String one = add().id();
        String other = add().id();
        assertThat(one).hasSize(24).isNotEqualTo(other);
        assertThatThrownBy(() -> lists.named(one.substring(1))).isInstanceOf(NotHere.class);
    }

    @Test
    void aListGoesHalfAnHourAfterSomebodyLastAsked() throws Exception {
        UploadedList list = settled(add());
        clock.passes(UploadedLists.KEPT.minusSeconds(1));
        assertThat(lists.named(list.id())).isSameAs(list);
        clock.passes(UploadedLists.KEPT.plusSeconds(1));
        assertThatThrownBy(() -> lists.named(list.id())).isInstanceOf(NotHere.class);
        lists.sweep();
        assertThat(lists.size()).isZero();
        assertThatThrownBy(() -> list.bytes().size()).isInstanceOf(IOException.class);
    }

    @Test
    void theOneThatWaitedLongestMakesRoom() throws Exception {
        UploadedList first = settled(add());
        for (int i = 0; i < UploadedLists.MOST; i++) {
            clock.passes(Duration.ofSeconds(1));
            settled(add());
        }
        assertThat(lists.size()).isEqualTo(UploadedLists.MOST);
        assertThatThrownBy(() -> lists.named(first.id())).isInstanceOf(NotHere.class);
    }

    @Test
    void noMoreWaitThanMay() throws Exception {
        held = true;
        for (int i = 0; i < UploadedLists.MOST_WAITING + 1; i++) {
            add();
        }
        assertThatThrownBy(this::add).isInstanceOf(UploadedLists.Full.class);
        assertThat(lists.size()).isEqualTo(UploadedLists.MOST_WAITING + 1);
    }

    @Test
    void workThatIsCutShortCanBeTriedAgain() throws Exception {
        failure = Optional.of(new IllegalStateException("the database went away"));
        UploadedList list = settled(add());
        assertThat(list.stage()).isInstanceOf(Stage.Broken.class);
        failure = Optional.empty();
        lists.take(list);
        assertThat(settled(list).stage()).isInstanceOf(Stage.Ended.class);
    }

    private UploadedList add() throws Exception {
        Spool spool = new Spool();
        spool.take(new ByteArrayInputStream(new byte[] {'a'}), 10);
        return lists.add("list.csv", ORDER, OnBadRow.SKIP, spool);
    }

    /** Waits for the end of the work that was asked for. */
    private static UploadedList settled(UploadedList list) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
        while (list.isWorking() && System.nanoTime() < end) {
            Thread.onSpinWait();
        }
        assertThat(list.isWorking()).isFalse();
        return list;
    }

    /** Says what was asked of it, as soon as it may. */
    private final class Desk implements SupplierLists {

        @Override
        public ListReport take(Order order, Source list, Watcher watcher) {
            if (held) {
                await();
            }
            failure.ifPresent(reason -> {
                throw reason;
            });
            return new ListReport(
                    new ListHead(';', List.of(), List.of()),
                    !order.dryRun(),
                    new ListReport.Counts(1, 1, 0, 0, 0),
                    List.of());
        }

        private void await() {
            try {
                gate.await();
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
        }

        @Override
        public void each(Set<Origin> origins, Consumer<ListWriter.Line> lines) {}
    }

    /** A clock that stands until it is moved. */
    private static final class SetClock extends Clock {

        private volatile Instant now = Instant.parse("2026-11-26T00:00:00Z");

        void passes(Duration time) {
            now = now.plus(time);
        }

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }
}
