package campcloth.supply;

import campcloth.job.Job;

/** How far a list has come, under the names that its job tells it by. */
public record ListProgress(long rowsRead, long rowsWritten, long clothsIndexed) {

    static final String ROWS_READ = "rowsRead";
    static final String ROWS_WRITTEN = "rowsWritten";
    static final String CLOTHS_INDEXED = "clothsIndexed";

    public static ListProgress of(Job job) {
        return new ListProgress(number(job, ROWS_READ), number(job, ROWS_WRITTEN), number(job, CLOTHS_INDEXED));
    }

    private static long number(Job job, String name) {
        return job.progress().getOrDefault(name, 0.0).longValue();
    }
}
