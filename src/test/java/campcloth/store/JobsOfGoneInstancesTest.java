package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.job.Claim;
import campcloth.job.Job;
import campcloth.job.JobKind;
import campcloth.job.JobQueue;
import campcloth.job.JobState;
import campcloth.job.NewJob;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.env.Environment;

/** A job whose instance is there no more is begun again long before its time has run out; one whose instance lives is not. */
class JobsOfGoneInstancesTest extends WorkedJobs {

    @Autowired
    private Environment database;

    private OtherInstance one;
    private OtherInstance other;
    private JobQueue atOne;
    private JobQueue atOther;

    @BeforeEach
    void twoInstances() {
        one = new OtherInstance(database);
        other = new OtherInstance(database);
        atOne = new JobQueueInPostgres(sql, json, one.presence(), BRISK);
        atOther = new JobQueueInPostgres(sql, json, other.presence(), BRISK);
    }

    @AfterEach
    void bothEnd() {
        one.close();
        other.close();
    }

    @Test
    void whatRanOnOneThatIsGoneIsTakenOverOnceNothingWasHeardOfItForALittleWhile() throws Exception {
        Claim lost = begunAtOne();
        one.cut();
        assertThat(atOther.claim(LAYOUTS)).as("it may come back").isEmpty();
        silentFor(3);
        Claim next = untilClaimed();
        assertThat(next.id()).isEqualTo(lost.id());
        assertThat(next.attempt()).isEqualTo(2);
        assertThat(atOne.done(lost, "\"late\"")).isFalse();
        assertThat(atOther.done(next, "\"next\"")).isTrue();
    }

    @Test
    void whatRunsOnOneThatLivesIsNotHoweverLittleIsHeardOfIt() throws Exception {
        Claim claim = begunAtOne();
        silentFor(3);
        assertThat(atOther.claim(LAYOUTS)).isEmpty();
        assertThat(atOne.done(claim, "\"done\"")).isTrue();
    }

    @Test
    void whoseLineBrokeAndWasMendedHasItsJobsStill() throws Exception {
        Claim claim = begunAtOne();
        one.cut();
        one.mend();
        assertThat(atOne.beat(claim, Map.of())).isEqualTo(JobQueue.Beat.GO_ON);
        silentFor(3);
        assertThat(atOther.claim(LAYOUTS))
                .as("the beat names the new connection")
                .isEmpty();
    }

    @Test
    void whoWasAwayItselfSaysOfNobodyThatItIsGone() throws Exception {
        Claim claim = begunAtOne();
        one.cut();
        other.cut();
        silentFor(3);
        assertThat(atOther.claim(LAYOUTS)).isEmpty();
        try (OtherInstance justBack = new OtherInstance(database, Duration.ofHours(1))) {
            assertThat(new JobQueueInPostgres(sql, json, justBack.presence(), BRISK).claim(LAYOUTS))
                    .isEmpty();
        }
        other.mend();
        assertThat(untilClaimed().id()).isEqualTo(claim.id());
    }

    @Test
    void whatIsCancelledOnOneThatIsGoneEndsAndIsNotBegunAgain() throws Exception {
        Claim claim = begunAtOne();
        jobs.cancel(claim.id().toString());
        one.cut();
        silentFor(3);
        Job job = jobs.byId(claim.id().toString()).orElseThrow().job();
        Awaited.until(() -> {
            assertThat(atOther.claim(LAYOUTS)).isEmpty();
            return kept(job).state() == JobState.CANCELLED;
        });
    }

    private Claim begunAtOne() throws Exception {
        jobs.add(NewJob.of(JobKind.LAYOUT, "1"));
        return atOne.claim(LAYOUTS).orElseThrow();
    }

    /** As though that much time had passed. */
    private void silentFor(int minutes) {
        sql.update(
                "update job set lease_until = lease_until - make_interval(mins => ?) where state = 'RUNNING'", minutes);
    }

    /** The server notices within a moment that a connection has ended. */
    private Claim untilClaimed() {
        Claim[] claimed = new Claim[1];
        Awaited.until(() -> atOther.claim(LAYOUTS)
                .map(claim -> {
                    claimed[0] = claim;
                    return true;
                })
                .orElse(false));
        return claimed[0];
    }
}
