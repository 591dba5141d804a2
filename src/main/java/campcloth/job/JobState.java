package campcloth.job;

/** How far a job has come. */
public enum JobState {
    QUEUED,
    RUNNING,
    DONE,
    FAILED,
    CANCELLED;

    public boolean hasEnded() {
        return this != QUEUED && this != RUNNING;
    }
}
