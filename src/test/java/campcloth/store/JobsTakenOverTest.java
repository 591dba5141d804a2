package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.job.Claim;
import campcloth.job.Job;
import campcloth.job.JobKind;
import campcloth.job.JobQueue;
import campcloth.job.JobState;
import campcloth.job.NewJob;
import campcloth.job.Workers;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Each job is done once whoever works: claimed, taken over, given back. */
class JobsTakenOverTest extends WorkedJobs {

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
        Awaited.until(() -> number("select count(*) from job where state = 'DONE'") == count);
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
        Workers leaving = workers(WorkedJobs::untilStopped);
        Awaited.until(() -> kept(job).state() == JobState.RUNNING);
        leaving.stop(Awaited.PATIENCE);
        assertThat(kept(job).state()).isEqualTo(JobState.QUEUED);
        assertThat(kept(job).attempts()).isZero();
        workers((request, run) -> request);
        Awaited.until(() -> kept(job).state() == JobState.DONE);
    }

    @Test
    void whatDoesNotListenAtShutdownIsGivenBackAllTheSame() throws Exception {
        Job job = jobs.add(NewJob.of(JobKind.LAYOUT, "1"));
        CountDownLatch deaf = new CountDownLatch(1);
        Workers leaving = workers((request, run) -> {
            await(deaf);
            return "\"late\"";
        });
        Awaited.until(() -> kept(job).state() == JobState.RUNNING);
        leaving.stop(Duration.ofMillis(100));
        List<Claim> claims = new ArrayList<>();
        Awaited.until(() -> queue.claim(LAYOUTS).map(claims::add).orElse(false));
        Claim next = claims.get(0);
        deaf.countDown();
        assertThat(queue.done(next, "\"next\"")).isTrue();
        assertThat(jobs.byId(job.id().toString()).orElseThrow().result()).contains("\"next\"");
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
