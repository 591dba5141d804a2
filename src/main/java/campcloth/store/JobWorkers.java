package campcloth.store;

import campcloth.job.Workers;
import java.time.Duration;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/**
 * Begins the work on jobs when all is there, and ends it first when the service shuts down, so that another instance can go on at
 * once. An instance with {@code campcloth.jobs.run=false} takes jobs in and leaves the work to others.
 */
@Component
class JobWorkers implements SmartLifecycle {

    /** Shorter than a phase of shutting down may take. */
    private static final Duration PATIENCE = Duration.ofSeconds(6);

    private final Workers workers;
    private final boolean runs;
    private volatile boolean running;

    JobWorkers(Workers workers, @Value("${campcloth.jobs.run:true}") boolean runs) {
        this.workers = workers;
        this.runs = runs;
    }

    @Override
    public boolean isAutoStartup() {
        return runs;
    }

    @Override
    public void start() {
        workers.start();
        running = true;
    }

    @Override
    public void stop() {
        running = false;
        workers.stop(PATIENCE);
    }

    @Override
    public boolean isRunning() {
        return running;
    }
}
