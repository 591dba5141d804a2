package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.access.Asker;
import campcloth.access.Role;
import campcloth.job.Claim;
import campcloth.job.Job;
import campcloth.job.JobKind;
import campcloth.job.JobState;
import campcloth.job.Jobs;
import campcloth.job.NewJob;
import campcloth.job.TooManyJobs;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;

/** What is kept of jobs: how many, whose, which bytes, how long. */
class JobsKeptTest extends WorkedJobs {

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
        List<Asker> askedFor = new CopyOnWriteArrayList<>();
        workers((request, run) -> {
            askedFor.add(askers.now());
            return request;
        });
        Awaited.until(() -> as(one, () -> jobs.byId(id)).orElseThrow().job().state() == JobState.DONE);
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
}
