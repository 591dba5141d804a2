package campcloth.job;

import campcloth.access.Askers;
import campcloth.access.NewIds;
import campcloth.access.NotAllowed;
import campcloth.access.TakenOver;
import campcloth.access.Turn;
import campcloth.figure.Refused;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * The workers of one instance: a few threads for what is searched, one for lists. They claim jobs one by one, hold them by beats
 * while they work, and give them back when the instance shuts down. May be started again after they ended.
 */
public final class Workers {

    private static final Logger LOG = System.getLogger(Workers.class.getName());
    private static final Duration SWEEP = Duration.ofMinutes(1);
    private static final int AWAY_FACTOR = 5;

    private final JobQueue queue;
    private final Map<JobKind, Work> works = new EnumMap<>(JobKind.class);
    private final Askers askers;
    private final NewIds ids;
    private final Bell bell;
    private final Pace pace;
    private final int searches;
    private final Set<Running> running = ConcurrentHashMap.newKeySet();
    private final List<Thread> threads = new ArrayList<>();
    private Optional<ScheduledExecutorService> clockwork = Optional.empty();
    private volatile boolean stopping;

    /** @param searches how many jobs other than lists are worked on at once */
    public Workers(JobQueue queue, List<Work> works, Askers askers, NewIds ids, Bell bell, Pace pace, int searches) {
        this.queue = queue;
        works.forEach(work -> this.works.put(work.kind(), work));
        this.askers = askers;
        this.ids = ids;
        this.bell = bell;
        this.pace = pace;
        this.searches = searches;
    }

    public synchronized void start() {
        stopping = false;
        Set<JobKind> searched = Set.of(JobKind.LAYOUT, JobKind.CUTTING_PLAN);
        for (int i = 0; i < searches; i++) {
            begin("job-search-" + i, searched);
        }
        begin("job-list", Set.of(JobKind.LIST));
        ScheduledExecutorService beats = Executors.newSingleThreadScheduledExecutor(task -> daemon(task, "job-beat"));
        beats.scheduleWithFixedDelay(
                () -> running.forEach(Running::beat),
                pace.beat().toMillis(),
                pace.beat().toMillis(),
                TimeUnit.MILLISECONDS);
        beats.scheduleWithFixedDelay(this::sweep, 0, SWEEP.toMillis(), TimeUnit.MILLISECONDS);
        clockwork = Optional.of(beats);
    }

    private void begin(String name, Set<JobKind> kinds) {
        Thread thread = daemon(() -> work(kinds), name);
        threads.add(thread);
        thread.start();
    }

    /** Ends the work: jobs that run are put back for others at once, wherever their work may be. */
    public synchronized void stop(Duration patience) {
        stopping = true;
        bell.ring();
        running.forEach(job -> job.stop(Running.Reason.SHUTDOWN));
        long end = System.nanoTime() + patience.toNanos();
        threads.forEach(thread -> join(thread, end));
        running.forEach(job -> settle(() -> queue.giveBack(job.claim())));
        threads.clear();
        clockwork.ifPresent(ScheduledExecutorService::shutdownNow);
        clockwork = Optional.empty();
    }

    private static void join(Thread thread, long endNanos) {
        try {
            TimeUnit.NANOSECONDS.timedJoin(thread, Math.max(1, endNanos - System.nanoTime()));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private void work(Set<JobKind> kinds) {
        while (!stopping) {
            long rung = bell.count();
            try {
                Optional<Claim> claim = queue.claim(kinds);
                if (claim.isPresent()) {
                    run(claim.get());
                } else {
                    bell.await(rung, pace.look());
                }
            } catch (InterruptedException stopped) {
                return;
            } catch (RuntimeException away) {
                LOG.log(Level.WARNING, "No jobs are worked on for now: {0}", away.getMessage());
                rest();
            }
        }
    }

    private void rest() {
        try {
            bell.await(bell.count(), pace.look().multipliedBy(AWAY_FACTOR));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private void run(Claim claim) {
        Running job = new Running(claim, queue, pace.lease());
        running.add(job);
        if (stopping) {
            job.stop(Running.Reason.SHUTDOWN);
        }
        try {
            Turn turn = new Turn(Turn.Of.JOB, claim.id(), claim.token());
            String result = askers.as(claim.asker(), () -> ids.under(turn, () -> done(claim, job)));
            settle(() -> {
                queue.beat(claim, job.progress());
                queue.done(claim, result);
            });
        } catch (Stopped stopped) {
            job.reason().ifPresent(reason -> end(claim, reason));
        } catch (TakenOver elsewhere) {
            end(claim, Running.Reason.LOST);
        } catch (Refused refused) {
            Failure why = new Failure("What was handed in cannot be used.", refused.refusals());
            settle(() -> queue.failed(claim, why));
        } catch (NotAllowed forbidden) {
            Failure why = new Failure(String.valueOf(forbidden.getMessage()), List.of());
            settle(() -> queue.failed(claim, why));
        } catch (RuntimeException | OutOfMemoryError | StackOverflowError broken) {
            LOG.log(Level.WARNING, "Job " + claim.id() + " went wrong, attempt " + claim.attempt(), broken);
            settle(() -> wentWrong(claim));
        } finally {
            running.remove(job);
        }
    }

    private void wentWrong(Claim claim) {
        if (claim.attempt() < Job.MOST_ATTEMPTS) {
            queue.putOff(claim);
        } else {
            queue.failed(claim, GivenUp.afterErrors());
        }
    }

    private String done(Claim claim, Running job) {
        Work work = Optional.ofNullable(works.get(claim.kind()))
                .orElseThrow(() -> new IllegalStateException("nobody does jobs of kind " + claim.kind()));
        job.goOn();
        return work.run(claim.request(), job);
    }

    private void end(Claim claim, Running.Reason reason) {
        switch (reason) {
            case CANCELLED -> settle(() -> queue.cancelled(claim));
            case SHUTDOWN -> settle(() -> queue.giveBack(claim));
            case LOST -> LOG.log(Level.INFO, "Job {0} is somebody else''s now", claim.id());
        }
    }

    /** Tells what came of a job. Where that does not get through, the claim runs out and the job is taken over. */
    private static void settle(Runnable telling) {
        try {
            telling.run();
        } catch (RuntimeException away) {
            LOG.log(Level.WARNING, "What came of a job could not be kept: {0}", away.getMessage());
        }
    }

    private void sweep() {
        settle(queue::sweep);
    }

    private static Thread daemon(Runnable task, String name) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        return thread;
    }
}
