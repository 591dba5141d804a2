package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.NewIds;
import campcloth.access.NotAllowed;
import campcloth.access.Role;
import campcloth.figure.Refused;
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
import campcloth.job.TooManyJobs;
import campcloth.job.Work;
import campcloth.job.Workers;
import campcloth.store.postgres.OnRealPostgres;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.JdbcTemplate;

/** Jobs on a real database: worked on once whoever works, taken over, given back, ended, bounded. */
@SpringBootTest(properties = {"campcloth.jobs.run=false", "spring.datasource.hikari.maximum-pool-size=5"})
@OnRealPostgres
class JobsTest {

    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final Pace BRISK =
            new Pace(Duration.ofMillis(30), Duration.ofMillis(30), Duration.ofSeconds(30), Duration.ZERO);
    private static final Set<JobKind> LAYOUTS = Set.of(JobKind.LAYOUT);

    @Autowired
    private Jobs jobs;

    @Autowired
    private Json json;

    @Autowired
    private Askers askers;

    @Autowired
    private NewIds ids;

    @Autowired
    private JdbcTemplate sql;

    private JobQueue queue;
    private final Bell bell = new Bell();
    private final List<Workers> begun = new ArrayList<>();

    @BeforeEach
    void nothingToDo() {
        sql.update("delete from job");
        queue = new JobQueueInPostgres(sql, json, BRISK);
    }

    @AfterEach
    void end() {
        begun.forEach(workers -> workers.stop(PATIENCE));
    }

    @Test
    void eachJobIsDoneOnceHoweverManyInstancesWork() throws Exception {
        Map<String, AtomicInteger> done = new ConcurrentHashMap<>();
        int count = 120;
        for (int i = 0; i < count; i++) {
            String request = "\"" + i + "\"";
            as(account(), () -> jobs.add(NewJob.of(JobKind.LAYOUT, request)));
        }
        for (int i = 0; i < 3; i++) {
            workers((request, run) -> {
                done.computeIfAbsent(request, name -> new AtomicInteger()).incrementAndGet();
                return request;
            });
        }
        until(() -> number("select count(*) from job where state = 'DONE'") == count);
        assertThat(done).hasSize(count);
        assertThat(done.values()).allMatch(times -> times.get() == 1);
        assertThat(number("select count(*) from job where attempts = 1 and result::text = request::text"))
                .isEqualTo(count);
    }

    @Test
    void whatItsWorkerLeftIsTakenOverAndTheOneBeforeHasNoMoreSay() throws Exception {
        Job job = jobs.add(NewJob.of(JobKind.LAYOUT, "1"));
        Claim first = queue.claim(LAYOUTS).orElseThrow();
        assertThat(queue.claim(LAYOUTS)).isEmpty();
        leaseRunsOut();
        Claim second = queue.claim(LAYOUTS).orElseThrow();
        assertThat(second.id()).isEqualTo(job.id());
        assertThat(second.attempt()).isEqualTo(2);
        assertThat(queue.beat(first, Map.of())).isEqualTo(JobQueue.Beat.LOST);
        assertThat(queue.done(first, "\"first\"")).isFalse();
        assertThat(queue.beat(second, Map.of("lengthCm", 12.5))).isEqualTo(JobQueue.Beat.GO_ON);
        assertThat(kept(job).progress()).isEqualTo(Map.of("lengthCm", 12.5));
        assertThat(queue.done(second, "\"second\"")).isTrue();
        assertThat(jobs.byId(job.id().toString()).orElseThrow().result()).contains("\"second\"");
    }

    @Test
    void whatThreeWorkersLeftIsGivenUp() throws Exception {
        Job job = jobs.add(NewJob.of(JobKind.LAYOUT, "1"));
        for (int i = 0; i < Job.MOST_ATTEMPTS; i++) {
            assertThat(queue.claim(LAYOUTS)).isPresent();
            leaseRunsOut();
        }
        assertThat(queue.claim(LAYOUTS)).isEmpty();
        assertThat(kept(job).state()).isEqualTo(JobState.FAILED);
        assertThat(kept(job).failure().orElseThrow().reason()).contains("begun 3 times");
    }

    @Test
    void whatGoesWrongEachTimeIsGivenUpAndNothingElseIsHeldUp() throws Exception {
        Job poison = jobs.add(NewJob.of(JobKind.LAYOUT, "\"poison\""));
        Job other = jobs.add(NewJob.of(JobKind.LAYOUT, "\"other\""));
        AtomicInteger tried = new AtomicInteger();
        workers((request, run) -> {
            if (request.contains("poison")) {
                tried.incrementAndGet();
                throw new IllegalStateException("spilt");
            }
            return request;
        });
        until(() -> kept(poison).state().hasEnded() && kept(other).state().hasEnded());
        assertThat(tried).hasValue(Job.MOST_ATTEMPTS);
        assertThat(kept(poison).state()).isEqualTo(JobState.FAILED);
        assertThat(kept(poison).failure().orElseThrow().reason())
                .contains("3 times")
                .doesNotContain("spilt");
        assertThat(kept(other).state()).isEqualTo(JobState.DONE);
    }

    @Test
    void whatCannotBeUsedIsNotTriedAgain() throws Exception {
        Job job = jobs.add(NewJob.of(JobKind.LAYOUT, "1"));
        workers((request, run) -> {
            throw Refused.of("pieces[0]", "is \u0000 wide", "take wider cloth");
        });
        until(() -> kept(job).state().hasEnded());
        assertThat(kept(job).attempts()).isEqualTo(1);
        assertThat(kept(job).failure().orElseThrow().refusals().get(0).field()).isEqualTo("pieces[0]");
    }

    @Test
    void whatItsAskerMayNotHaveDoneIsNotTriedAgain() throws Exception {
        Job job = jobs.add(NewJob.of(JobKind.LAYOUT, "1"));
        workers((request, run) -> {
            throw new NotAllowed("Ask a keeper.");
        });
        until(() -> kept(job).state().hasEnded());
        assertThat(kept(job).attempts()).isEqualTo(1);
        assertThat(kept(job).failure().orElseThrow().reason()).isEqualTo("Ask a keeper.");
    }

    @Test
    void whatWaitsIsCancelledAtOnceAndWhatRunsSoon() throws Exception {
        Job waiting = jobs.add(NewJob.of(JobKind.LAYOUT, "1"));
        assertThat(jobs.cancel(waiting.id().toString())).isInstanceOf(Jobs.Cancelling.Asked.class);
        assertThat(kept(waiting).state()).isEqualTo(JobState.CANCELLED);
        assertThat(queue.claim(LAYOUTS)).isEmpty();
        assertThat(jobs.cancel(waiting.id().toString())).isInstanceOf(Jobs.Cancelling.Ended.class);
        assertThat(jobs.cancel(UUID.randomUUID().toString())).isInstanceOf(Jobs.Cancelling.Missing.class);

        Job running = jobs.add(NewJob.of(JobKind.LAYOUT, "2"));
        workers(JobsTest::untilStopped);
        until(() -> kept(running).state() == JobState.RUNNING);
        jobs.cancel(running.id().toString());
        until(() -> kept(running).state() == JobState.CANCELLED);
        assertThat(kept(running).cancelAsked()).isTrue();
    }

    @Test
    void whatIsCancelledAndLeftByItsWorkerIsNotBegunAgain() throws Exception {
        Job job = jobs.add(NewJob.of(JobKind.LAYOUT, "1"));
        assertThat(queue.claim(LAYOUTS)).isPresent();
        jobs.cancel(job.id().toString());
        leaseRunsOut();
        assertThat(queue.claim(LAYOUTS)).isEmpty();
        assertThat(kept(job).state()).isEqualTo(JobState.CANCELLED);
    }

    @Test
    void whatRunsAtShutdownIsGivenBackAtOnceAndDoneByAnother() throws Exception {
        Job job = jobs.add(NewJob.of(JobKind.LAYOUT, "1"));
        Workers leaving = workers(JobsTest::untilStopped);
        until(() -> kept(job).state() == JobState.RUNNING);
        leaving.stop(PATIENCE);
        assertThat(kept(job).state()).isEqualTo(JobState.QUEUED);
        assertThat(kept(job).attempts()).isZero();
        workers((request, run) -> request);
        until(() -> kept(job).state() == JobState.DONE);
    }

    @Test
    void whatDoesNotListenAtShutdownIsGivenBackAllTheSame() throws Exception {
        Job job = jobs.add(NewJob.of(JobKind.LAYOUT, "1"));
        CountDownLatch deaf = new CountDownLatch(1);
        Workers leaving = workers((request, run) -> {
            await(deaf);
            return "\"late\"";
        });
        until(() -> kept(job).state() == JobState.RUNNING);
        leaving.stop(Duration.ofMillis(100));
        List<Claim> claims = new ArrayList<>();
        until(() -> queue.claim(LAYOUTS).map(claims::add).orElse(false));
        Claim next = claims.get(0);
        deaf.countDown();
        assertThat(queue.done(next, "\"next\"")).isTrue();
        assertThat(jobs.byId(job.id().toString()).orElseThrow().result()).contains("\"next\"");
    }

    @Test
    void oneAskerHasNoMoreThanTwentyAndOthersStillHaveTheirs() throws Exception {
        Asker one = account();
        for (int i = 0; i < Jobs.MOST_OWN; i++) {
            as(one, () -> jobs.add(NewJob.of(JobKind.LAYOUT, "1")));
        }
        assertThatThrownBy(() -> as(one, () -> jobs.add(NewJob.of(JobKind.LAYOUT, "1"))))
                .isInstanceOfSatisfying(
                        TooManyJobs.class, many -> assertThat(many.isOwn()).isTrue());
        as(account(), () -> jobs.add(NewJob.of(JobKind.LAYOUT, "1")));
        assertThat(as(one, () -> jobs.latest(100))).hasSize(Jobs.MOST_OWN);
    }

    @Test
    void allTogetherHaveNoMoreThanAThousand() {
        sql.update("insert into job (id, kind, state, request, keeps_payload, owner, roles, not_before, made_at)"
                + " select gen_random_uuid(), 'LAYOUT', 'QUEUED', '1', false, gen_random_uuid(), '{}', now(), now()"
                + " from generate_series(1, " + Jobs.MOST + ")");
        assertThatThrownBy(() -> jobs.add(NewJob.of(JobKind.LAYOUT, "1")))
                .isInstanceOfSatisfying(
                        TooManyJobs.class, many -> assertThat(many.isOwn()).isFalse());
    }

    @Test
    void aJobIsItsOwnersAndRunsAsItsOwner() throws Exception {
        Asker one = Asker.of(UUID.randomUUID(), Set.of(Role.MAKER, Role.KEEPER));
        Job job = as(one, () -> jobs.add(NewJob.of(JobKind.LAYOUT, "1")));
        String id = job.id().toString();
        as(account(), () -> {
            assertThat(jobs.byId(id)).isEmpty();
            assertThat(jobs.cancel(id)).isInstanceOf(Jobs.Cancelling.Missing.class);
            assertThat(jobs.remove(id)).isFalse();
            assertThat(jobs.latest(10)).isEmpty();
            return id;
        });
        List<Asker> askedFor = new ArrayList<>();
        workers((request, run) -> {
            askedFor.add(askers.now());
            return request;
        });
        until(() -> as(one, () -> jobs.byId(id)).orElseThrow().job().state() == JobState.DONE);
        assertThat(askedFor).containsExactly(one);
        assertThat(as(one, () -> jobs.remove(id))).isTrue();
    }

    @Test
    void bytesComeAsTheyWereHandedInAndStayOnlyWhereTheyAreNeeded() throws Exception {
        byte[] bytes = "key;name\n1;x\n".repeat(5000).getBytes(StandardCharsets.UTF_8);
        Job stays = jobs.add(new NewJob(JobKind.LIST, "1", Optional.of(() -> new ByteArrayInputStream(bytes)), true));
        Job goes = jobs.add(new NewJob(JobKind.LIST, "1", Optional.of(() -> new ByteArrayInputStream(bytes)), false));
        for (int i = 0; i < 2; i++) {
            Claim claim = queue.claim(Set.of(JobKind.LIST)).orElseThrow();
            assertThat(queue.payload(claim).readAllBytes()).isEqualTo(bytes);
            queue.done(claim, "1");
        }
        assertThat(jobs.byId(goes.id().toString()).orElseThrow().isPayloadKept())
                .isFalse();
        assertThat(jobs.addOnPayloadOf(goes.id().toString(), "2")).isEmpty();
        Job again = jobs.addOnPayloadOf(stays.id().toString(), "2").orElseThrow();
        assertThat(again.id()).isNotEqualTo(stays.id());
        assertThat(queue.payload(queue.claim(Set.of(JobKind.LIST)).orElseThrow())
                        .readAllBytes())
                .isEqualTo(bytes);
    }

    @Test
    void whatEndedLongAgoIsRemovedAndItsBytesBeforeThat() throws Exception {
        Job job = jobs.add(
                new NewJob(JobKind.LIST, "1", Optional.of(() -> new ByteArrayInputStream(new byte[] {1})), true));
        queue.done(queue.claim(Set.of(JobKind.LIST)).orElseThrow(), "1");
        queue.sweep();
        assertThat(jobs.byId(job.id().toString()).orElseThrow().isPayloadKept()).isTrue();
        sql.update("update job set ended_at = ended_at - interval '31 minutes'");
        queue.sweep();
        assertThat(jobs.byId(job.id().toString()).orElseThrow().isPayloadKept()).isFalse();
        sql.update("update job set ended_at = ended_at - interval '7 days'");
        queue.sweep();
        assertThat(jobs.byId(job.id().toString())).isEmpty();
    }

    private static String untilStopped(String request, JobRun run) {
        while (true) {
            run.goOn();
            pause();
        }
    }

    private interface Does {
        String run(String request, JobRun run);
    }

    private Workers workers(Does does) {
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

    private void leaseRunsOut() {
        sql.update("update job set lease_until = lease_until - interval '1 minute' where state = 'RUNNING'");
    }

    private Job kept(Job job) {
        return jobs.byId(job.id().toString()).orElseThrow().job();
    }

    private long number(String query) {
        Long found = sql.queryForObject(query, Long.class);
        return found == null ? -1 : found;
    }

    private static Asker account() {
        return Asker.of(UUID.randomUUID(), Set.of(Role.MAKER));
    }

    private interface Asking<T> {
        T ask() throws IOException;
    }

    private <T> T as(Asker asker, Asking<T> work) {
        return askers.as(asker, () -> {
            try {
                return work.ask();
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        });
    }

    private static void until(Callable<Boolean> there) {
        Awaitility.await()
                .pollInSameThread()
                .pollInterval(Duration.ofMillis(20))
                .atMost(Duration.ofMinutes(2))
                .until(there);
    }

    private static void pause() {
        try {
            Thread.sleep(10);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
