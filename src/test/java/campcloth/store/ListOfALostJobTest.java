package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.access.TakenOver;
import campcloth.access.Turn;
import campcloth.job.Claim;
import campcloth.job.JobKind;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A list is written in a transaction of its own making; that, too, is not committed under a claim that somebody else has by now. */
class ListOfALostJobTest extends WorkedLists {

    private static final Set<JobKind> LISTS = Set.of(JobKind.LIST);
    private static final int ROWS = 3000;

    @Test
    void leavesNothing() throws Exception {
        long before = number("select count(*) from cloth");
        handedIn(ROWS);
        Claim claim = queue.claim(LISTS).orElseThrow();
        LostAfterSomeRows run = new LostAfterSomeRows(claim);
        Turn turn = new Turn(Turn.Of.JOB, claim.id(), claim.token());
        assertThatThrownBy(() -> ids.under(turn, () -> work(JobKind.LIST).run(claim.request(), run)))
                .isInstanceOf(TakenOver.class);
        assertThat(run.next.orElseThrow().id()).isEqualTo(claim.id());
        assertThat(number("select count(*) from cloth")).isEqualTo(before);
    }

    /** Taken for gone while it writes, and not told. */
    private final class LostAfterSomeRows extends Undisturbed {

        private Optional<Claim> next = Optional.empty();

        LostAfterSomeRows(Claim claim) {
            super(claim);
        }

        @Override
        public void tell(Map<String, Double> progress) {
            if (next.isEmpty() && progress.getOrDefault("rowsWritten", 0.0) > 0) {
                leaseRunsOut();
                next = queue.claim(LISTS);
            }
        }
    }
}
