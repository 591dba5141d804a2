package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.NewIds;
import campcloth.access.NotAllowed;
import campcloth.access.Role;
import campcloth.access.Turn;
import campcloth.job.Bell;
import campcloth.job.Claim;
import campcloth.job.Job;
import campcloth.job.JobKind;
import campcloth.job.JobQueue;
import campcloth.job.JobRun;
import campcloth.job.JobState;
import campcloth.job.Jobs;
import campcloth.job.NewJob;
import campcloth.job.Pace;
import campcloth.job.Stopped;
import campcloth.job.Work;
import campcloth.job.Workers;
import campcloth.store.postgres.OnRealPostgres;
import campcloth.supply.AskedList;
import campcloth.supply.ListJobs;
import campcloth.supply.ListOrder;
import campcloth.supply.Spool;
import campcloth.supply.SupplierLists.OnBadRow;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.JdbcTemplate;

/** What a job wrote before its instance went away is there once when another has done it again. */
@SpringBootTest(properties = {"campcloth.jobs.run=false", "spring.datasource.hikari.maximum-pool-size=5"})
@OnRealPostgres
class JobsWriteOnceTest {

    private static final int ROWS = 5000;

    @Autowired
    private Jobs jobs;

    @Autowired
    private ListJobs lists;

    @Autowired
    private JobQueue queue;

    @Autowired
    private List<Work> works;

    @Autowired
    private Askers askers;

    @Autowired
    private NewIds ids;

    @Autowired
    private JdbcTemplate sql;

    @BeforeEach
    void nothingToDo() {
        sql.update("delete from job");
    }

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
        Job job = handedIn();
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
        handedIn();
        Claim claim = claim();
        AfterSomeRows run = new AfterSomeRows(claim);
        assertThatThrownBy(() -> work(claim.kind()).run(claim.request(), run)).isInstanceOf(Stopped.class);
        assertThat(run.written).isPositive().isLessThan(ROWS);
        assertThat(number("select count(*) from cloth")).isEqualTo(before);
        assertThat(number("select count(*) from cloth_clock")).isEqualTo(1);
    }

    @Test
    void whoKeepsNoCatalogueIsRefusedBeforeTheListWaits() {
        Asker maker = Asker.of(UUID.randomUUID(), Set.of(Role.MAKER));
        assertThatThrownBy(() -> askers.as(maker, () -> {
                    try {
                        return handedIn();
                    } catch (IOException broken) {
                        throw new UncheckedIOException(broken);
                    }
                }))
                .isInstanceOf(NotAllowed.class);
        assertThat(number("select count(*) from job")).isZero();
    }

    private Job handedIn() throws IOException {
        StringBuilder list = new StringBuilder("key,name,composition\n");
        for (int i = 0; i < ROWS; i++) {
            list.append('K').append(i).append(",Cloth ").append(i).append(",100% wool\n");
        }
        ListOrder how = new ListOrder("Mill " + UUID.randomUUID(), Optional.empty(), Optional.empty());
        try (Spool spool = new Spool()) {
            spool.take(new ByteArrayInputStream(list.toString().getBytes(StandardCharsets.UTF_8)), Integer.MAX_VALUE);
            return lists.add(new AskedList("list.csv", how, OnBadRow.SKIP, false), spool);
        }
    }

    /** All of the work of a job, whose instance then goes away before it can say so. */
    private String workedOnAndLost() {
        Claim claim = claim();
        Turn turn = new Turn(Turn.Of.JOB, claim.id(), claim.token());
        String result = askers.as(
                claim.asker(),
                () -> ids.under(turn, () -> work(claim.kind()).run(claim.request(), new Undisturbed(claim))));
        sql.update("update job set lease_until = lease_until - interval '1 minute'");
        return result;
    }

    private void done(Job job) {
        Workers workers = new Workers(queue, works, askers, ids, new Bell(), Pace.USUAL, 1);
        workers.start();
        try {
            await().pollInSameThread().atMost(2, TimeUnit.MINUTES).until(() -> jobs.byId(
                            job.id().toString())
                    .orElseThrow()
                    .job()
                    .state()
                    .hasEnded());
        } finally {
            workers.stop(Duration.ofSeconds(30));
        }
        Job ended = jobs.byId(job.id().toString()).orElseThrow().job();
        assertThat(ended.state()).as(ended.toString()).isEqualTo(JobState.DONE);
        assertThat(ended.attempts()).isEqualTo(2);
    }

    private Claim claim() {
        return queue.claim(Set.of(JobKind.values())).orElseThrow();
    }

    private Work work(JobKind kind) {
        return works.stream().filter(work -> work.kind() == kind).findFirst().orElseThrow();
    }

    private long number(String query) {
        Long found = sql.queryForObject(query, Long.class);
        return found == null ? -1 : found;
    }

    private class Undisturbed implements JobRun {

        private final Claim claim;

        Undisturbed(Claim claim) {
            this.claim = claim;
        }

        @Override
        public InputStream payload() throws IOException {
            return queue.payload(claim);
        }

        @Override
        public void tell(Map<String, Double> progress) {}

        @Override
        public boolean isStopped() {
            return false;
        }
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
