package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.access.NotAllowed;
import campcloth.access.Turn;
import campcloth.job.Claim;
import campcloth.job.Job;
import campcloth.job.JobKind;
import campcloth.job.JobState;
import campcloth.job.NewJob;
import campcloth.job.Stopped;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a job wrote before its instance went away is there once when another has done it again. */
class JobsWriteOnceTest extends WorkedLists {

    private static final int ROWS = 5000;

    @Test
    void aPlanIsKeptOnce() throws Exception {
        long before = number("select count(*) from cutting_plan");
        String order = """
                {"secondsALayout": 0.1, "plan": {"cloth": {"widthCm": 150, "weightGsm": 200, "selvedgeCm": 1,
                 "shrinkWarpPercent": 5, "shrinkWeftPercent": 3, "prewash": true},
                 "garments": [{"design": "tunic", "wearer": {"finishedChestCm": 126}}]}}
                """;
        Job job = jobs.add(NewJob.of(JobKind.CUTTING_PLAN, order));
        String first = workedOnAndLost();
        assertThat(number("select count(*) from cutting_plan")).isEqualTo(before + 1);
        done(job);
        assertThat(jobs.byId(job.id().toString()).orElseThrow().result()).contains(first);
        assertThat(number("select count(*) from cutting_plan")).isEqualTo(before + 1);
    }

    @Test
    void aListIsTakenOverOnce() throws Exception {
        long before = number("select count(*) from cloth");
        Job job = handedIn(ROWS);
        workedOnAndLost();
        assertThat(number("select count(*) from cloth")).isEqualTo(before + ROWS);
        done(job);
        assertThat(lists.byId(job.id().toString())
                        .orElseThrow()
                        .report()
                        .orElseThrow()
                        .counts()
                        .unchanged())
                .isEqualTo(ROWS);
        assertThat(number("select count(*) from cloth")).isEqualTo(before + ROWS);
    }

    @Test
    void aListThatIsStoppedWhileItIsWrittenLeavesNothing() throws Exception {
        long before = number("select count(*) from cloth");
        handedIn(ROWS);
        Claim claim = claim();
        AfterSomeRows run = new AfterSomeRows(claim);
        assertThatThrownBy(() -> work(claim.kind()).run(claim.request(), run)).isInstanceOf(Stopped.class);
        assertThat(run.written).isPositive().isLessThan(ROWS);
        assertThat(number("select count(*) from cloth")).isEqualTo(before);
        assertThat(number("select count(*) from cloth_clock")).isEqualTo(1);
    }

    @Test
    void whoKeepsNoCatalogueIsRefusedBeforeTheListWaits() {
        assertThatThrownBy(() -> as(account(), () -> handedIn(ROWS))).isInstanceOf(NotAllowed.class);
        assertThat(number("select count(*) from job")).isZero();
    }

    /** All of the work of a job, whose instance then goes away before it can say so. */
    private String workedOnAndLost() {
        Claim claim = claim();
        Turn turn = new Turn(Turn.Of.JOB, claim.id(), claim.token());
        String result = askers.as(
                claim.asker(),
                () -> ids.under(turn, () -> work(claim.kind()).run(claim.request(), new Undisturbed(claim))));
        leaseRunsOut();
        return result;
    }

    private void done(Job job) {
        workers(works);
        Awaited.until(() -> kept(job).state().hasEnded());
        Job ended = kept(job);
        assertThat(ended.state()).as(ended.toString()).isEqualTo(JobState.DONE);
        assertThat(ended.attempts()).isEqualTo(2);
    }

    private Claim claim() {
        return queue.claim(Set.of(JobKind.values())).orElseThrow();
    }

    private final class AfterSomeRows extends Undisturbed {

        private double written;

        AfterSomeRows(Claim claim) {
            super(claim);
        }

        @Override
        public void tell(Map<String, Double> progress) {
            written = progress.getOrDefault("rowsWritten", 0.0);
        }

        @Override
        public boolean isStopped() {
            return written > 0;
        }
    }
}
