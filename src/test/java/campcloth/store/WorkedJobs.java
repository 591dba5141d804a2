package campcloth.store;

import static org.awaitility.Awaitility.await;

import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.NewIds;
import campcloth.access.Role;
import campcloth.job.Bell;
import campcloth.job.Job;
import campcloth.job.JobKind;
import campcloth.job.JobQueue;
import campcloth.job.JobRun;
import campcloth.job.Jobs;
import campcloth.job.Pace;
import campcloth.job.Work;
import campcloth.job.Workers;
import campcloth.store.postgres.OnRealPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.JdbcTemplate;

/** Jobs on a real database, and workers for them that do what a test says. */
@SpringBootTest(properties = {"campcloth.jobs.run=false", "spring.datasource.hikari.maximum-pool-size=5"})
@OnRealPostgres
abstract class WorkedJobs {

    static final Duration PATIENCE = Duration.ofSeconds(30);
    static final Pace BRISK = new Pace(
            Duration.ofMillis(30), Duration.ofMillis(30), Duration.ofSeconds(30), Duration.ofSeconds(3), Duration.ZERO);
    static final Set<JobKind> LAYOUTS = Set.of(JobKind.LAYOUT);

    @Autowired
    Jobs jobs;

    @Autowired
    Json json;

    @Autowired
    Presence presence;

    @Autowired
    Askers askers;

    @Autowired
    NewIds ids;

    @Autowired
    JdbcTemplate sql;

    JobQueue queue;
    final Bell bell = new Bell();
    final List<Workers> begun = new ArrayList<>();

    @BeforeEach
    void nothingToDo() {
        sql.update("delete from job");
        queue = new JobQueueInPostgres(sql, json, presence, BRISK);
    }

    @AfterEach
    void end() {
        begun.forEach(workers -> workers.stop(PATIENCE));
    }

    static String untilStopped(String request, JobRun run) {
        while (true) {
            run.goOn();
            pause();
        }
    }

    interface Does {
        String run(String request, JobRun run);
    }

    Workers workers(Does does) {
        Work work = new Work() {
            @Override
            public JobKind kind() {
                return JobKind.LAYOUT;
            }

            @Override
            public String run(String request, JobRun run) {
                return does.run(request, run);
            }
        };
        Workers workers = new Workers(queue, List.of(work), askers, ids, bell, BRISK, 2);
        begun.add(workers);
        workers.start();
        return workers;
    }

    void leaseRunsOut() {
        sql.update("update job set lease_until = lease_until - interval '1 minute' where state = 'RUNNING'");
    }

    Job kept(Job job) {
        return jobs.byId(job.id().toString()).orElseThrow().job();
    }

    long number(String query) {
        Long found = sql.queryForObject(query, Long.class);
        return found == null ? -1 : found;
    }

    static Asker account() {
        return Asker.of(UUID.randomUUID(), Set.of(Role.MAKER));
    }

    interface Asking<T> {
        T ask() throws IOException;
    }

    <T> T as(Asker asker, Asking<T> work) {
        return askers.as(asker, () -> {
            try {
                return work.ask();
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        });
    }

    static void until(Callable<Boolean> there) {
        await().pollInSameThread()
                .pollInterval(Duration.ofMillis(20))
                .atMost(Duration.ofMinutes(2))
                .until(there);
    }

    static void pause() {
        try {
            Thread.sleep(10);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }
}
