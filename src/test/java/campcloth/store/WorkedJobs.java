package campcloth.store;

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
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;

/** Jobs on a real database, and workers for them that do what a test says. */
@WithoutWorkers
abstract class WorkedJobs {

    /** Looks and beats come at once; claims run out by their time long after the test has ended, however slow the machine. */
    static final Pace BRISK = new Pace(
            Duration.ofMillis(30), Duration.ofMillis(30), Duration.ofHours(1), Duration.ofMinutes(2), Duration.ZERO);

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
    private final List<Workers> begun = new ArrayList<>();

    @BeforeEach
    void briskly() {
        queue = new JobQueueInPostgres(sql, json, presence, BRISK);
    }

    @AfterEach
    void end() {
        begun.forEach(workers -> workers.stop(Awaited.PATIENCE));
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
        return workers(List.of(work));
    }

    Workers workers(List<Work> works) {
        Workers workers = new Workers(queue, works, askers, ids, bell, BRISK, 2);
        begun.add(workers);
        workers.start();
        return workers;
    }

    void leaseRunsOut() {
        sql.update("update job set lease_until = lease_until - interval '2 hours' where state = 'RUNNING'");
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

    static void pause() {
        try {
            Thread.sleep(10);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }
}
