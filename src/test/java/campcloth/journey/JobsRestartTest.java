package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import campcloth.job.Job;
import campcloth.job.JobKind;
import campcloth.job.JobState;
import campcloth.job.Jobs;
import campcloth.job.NewJob;
import campcloth.store.postgres.PostgresForTests;
import campcloth.supply.AskedList;
import campcloth.supply.ListJobs;
import campcloth.supply.ListOrder;
import campcloth.supply.Spool;
import campcloth.supply.SupplierLists.OnBadRow;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.springframework.context.ConfigurableApplicationContext;

/** Jobs when the service starts again, and behind two instances over one database. */
class JobsRestartTest {

    private static final String LIST = "key,name,composition\nA,Linen,100% linen\n";

    /** Long enough to be seen at work and to be interrupted, on a fast machine too; in the end it is done whole. */
    private static final String SEARCH = Bodies.LAYOUT.replace("\"seconds\": 0.05", "\"seconds\": 10");

    private final PostgresForTests.Database database = PostgresForTests.fresh();

    @Test
    void whatWasHandedInOrRanIsDoneByWhoeverComesNext() throws Exception {
        Job search;
        Job list;
        try (ConfigurableApplicationContext first = started(true)) {
            Jobs jobs = first.getBean(Jobs.class);
            search = jobs.add(NewJob.of(JobKind.LAYOUT, SEARCH));
            until(jobs, search, JobState.RUNNING);
        }
        try (ConfigurableApplicationContext second = started(false)) {
            Jobs jobs = second.getBean(Jobs.class);
            Job left = jobs.byId(search.id().toString()).orElseThrow().job();
            assertThat(left.state()).isEqualTo(JobState.QUEUED);
            assertThat(left.attempts()).as("shutting down is no failure").isZero();
            list = list(second.getBean(ListJobs.class));
            try (ConfigurableApplicationContext third = started(true)) {
                until(jobs, search, JobState.DONE);
                until(jobs, list, JobState.DONE);
                assertThat(third.getBean(Jobs.class).latest(10)).hasSize(2);
            }
            assertThat(second.getBean(ListJobs.class)
                            .byId(list.id().toString())
                            .orElseThrow()
                            .report()
                            .orElseThrow()
                            .counts()
                            .added())
                    .isEqualTo(1);
        }
    }

    private static Job list(ListJobs lists) throws Exception {
        ListOrder how = new ListOrder("Wendlow Mill", Optional.empty(), Optional.empty());
        try (Spool spool = new Spool()) {
            spool.take(new ByteArrayInputStream(LIST.getBytes(StandardCharsets.UTF_8)), Integer.MAX_VALUE);
            return lists.add(new AskedList("list.csv", how, OnBadRow.SKIP, false), spool);
        }
    }

    private ConfigurableApplicationContext started(boolean runs) {
        return ProgramHere.over(database, "campcloth.jobs.run=" + runs);
    }

    private static void until(Jobs jobs, Job job, JobState state) {
        await().pollInSameThread()
                .pollInterval(20, TimeUnit.MILLISECONDS)
                .atMost(4, TimeUnit.MINUTES)
                .untilAsserted(() -> {
                    Job now = jobs.byId(job.id().toString()).orElseThrow().job();
                    assertThat(now.state()).as(now.toString()).isEqualTo(state);
                });
    }
}
