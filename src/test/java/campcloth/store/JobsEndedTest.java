package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.NotAllowed;
import campcloth.figure.Refused;
import campcloth.job.Job;
import campcloth.job.JobKind;
import campcloth.job.JobState;
import campcloth.job.Jobs;
import campcloth.job.NewJob;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** How a job ends that does not come to what was asked: in errors, refused, cancelled. */
class JobsEndedTest extends WorkedJobs {

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
        Awaited.until(
                () -> kept(poison).state().hasEnded() && kept(other).state().hasEnded());
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
        Awaited.until(() -> kept(job).state().hasEnded());
        assertThat(kept(job).attempts()).isEqualTo(1);
        assertThat(kept(job).failure().orElseThrow().refusals().get(0).field()).isEqualTo("pieces[0]");
    }

    @Test
    void whatItsAskerMayNotHaveDoneIsNotTriedAgain() throws Exception {
        Job job = jobs.add(NewJob.of(JobKind.LAYOUT, "1"));
        workers((request, run) -> {
            throw new NotAllowed("Ask a keeper.");
        });
        Awaited.until(() -> kept(job).state().hasEnded());
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
        workers(WorkedJobs::untilStopped);
        Awaited.until(() -> kept(running).state() == JobState.RUNNING);
        jobs.cancel(running.id().toString());
        Awaited.until(() -> kept(running).state() == JobState.CANCELLED);
        assertThat(kept(running).cancelAsked()).isTrue();
    }
}
