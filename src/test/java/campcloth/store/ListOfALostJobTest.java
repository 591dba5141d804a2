package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.access.TakenOver;
import campcloth.access.Turn;
import campcloth.job.Claim;
import campcloth.job.JobKind;
import campcloth.job.JobRun;
import campcloth.job.Work;
import campcloth.supply.AskedList;
import campcloth.supply.ListJobs;
import campcloth.supply.ListOrder;
import campcloth.supply.Spool;
import campcloth.supply.SupplierLists.OnBadRow;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A list is written in a transaction of its own making; that, too, is not committed under a claim that somebody else has by now. */
class ListOfALostJobTest extends WorkedJobs {

    private static final Set<JobKind> LISTS = Set.of(JobKind.LIST);
    private static final int ROWS = 3000;

    @Autowired
    private ListJobs lists;

    @Autowired
    private List<Work> works;

    @Test
    void leavesNothing() throws Exception {
        long before = number("select count(*) from cloth");
        handedIn();
        Claim claim = queue.claim(LISTS).orElseThrow();
        LostAfterSomeRows run = new LostAfterSomeRows(claim);
        Work work = works.stream()
                .filter(one -> one.kind() == JobKind.LIST)
                .findFirst()
                .orElseThrow();
        Turn turn = new Turn(Turn.Of.JOB, claim.id(), claim.token());
        assertThatThrownBy(() -> ids.under(turn, () -> work.run(claim.request(), run)))
                .isInstanceOf(TakenOver.class);
        assertThat(run.next.orElseThrow().id()).isEqualTo(claim.id());
        assertThat(number("select count(*) from cloth")).isEqualTo(before);
    }

    private void handedIn() throws IOException {
        StringBuilder list = new StringBuilder("key,name,composition\n");
        for (int i = 0; i < ROWS; i++) {
            list.append('L').append(i).append(",Cloth ").append(i).append(",100% wool\n");
        }
        ListOrder how = new ListOrder("Mill " + UUID.randomUUID(), Optional.empty(), Optional.empty());
        try (Spool spool = new Spool()) {
            spool.take(new ByteArrayInputStream(list.toString().getBytes(StandardCharsets.UTF_8)), Integer.MAX_VALUE);
            lists.add(new AskedList("list.csv", how, OnBadRow.SKIP, false), spool);
        }
    }

    /** Taken for gone while it writes, and not told. */
    private final class LostAfterSomeRows implements JobRun {

        private final Claim claim;
        private Optional<Claim> next = Optional.empty();

        LostAfterSomeRows(Claim claim) {
            this.claim = claim;
        }

        @Override
        public InputStream payload() throws IOException {
            return queue.payload(claim);
        }

        @Override
        public void tell(Map<String, Double> progress) {
            if (next.isEmpty() && progress.getOrDefault("rowsWritten", 0.0) > 0) {
                leaseRunsOut();
                next = queue.claim(LISTS);
            }
        }

        @Override
        public boolean isStopped() {
            return false;
        }
    }
}
