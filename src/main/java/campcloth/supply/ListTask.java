package campcloth.supply;

import campcloth.job.JobKind;
import campcloth.job.JobRun;
import campcloth.job.Notation;
import campcloth.job.Work;
import campcloth.outage.Crowded;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** Does a job about a list. It may end until the list is written, which is one transaction. */
public final class ListTask implements Work {

    private final ListDesk desk;
    private final Notation notation;

    public ListTask(ListDesk desk, Notation notation) {
        this.desk = desk;
        this.notation = notation;
    }

    @Override
    public JobKind kind() {
        return JobKind.LIST;
    }

    @Override
    public String run(String request, JobRun run) {
        AskedList asked = notation.read(request, AskedList.class);
        try (Spool list = new Spool();
                InputStream bytes = run.payload()) {
            list.take(bytes, ListDesk.MOST_BYTES);
            return notation.write(taken(asked, list, run));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** A job has time: where as many wait as may, it stands in line behind them. */
    private ListReport taken(AskedList asked, Spool list, JobRun run) throws IOException {
        while (true) {
            try {
                return desk.take(asked.how(), asked.onBadRow(), asked.dryRun(), list, new Told(run));
            } catch (Crowded crowded) {
                run.goOn();
                pause();
            }
        }
    }

    private static void pause() throws IOException {
        try {
            TimeUnit.SECONDS.sleep(1);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("the list waited for its turn");
        }
    }

    /** Tells the job what is told of the list, and ends the work where the job shall end. */
    private static final class Told implements SupplierLists.Watcher {

        private final JobRun run;
        private long read;
        private long written;

        Told(JobRun run) {
            this.run = run;
        }

        @Override
        public void waiting() {
            run.goOn();
        }

        @Override
        public void read(long rows) {
            run.goOn();
            read = rows;
            tell(0);
        }

        @Override
        public void written(long rows) {
            run.goOn();
            written = rows;
            tell(0);
        }

        /** The list is written by now, so that there is no more ending. */
        @Override
        public void indexed(long cloths) {
            tell(cloths);
        }

        private void tell(long indexed) {
            run.tell(Map.of(
                    ListProgress.ROWS_READ, (double) read,
                    ListProgress.ROWS_WRITTEN, (double) written,
                    ListProgress.CLOTHS_INDEXED, (double) indexed));
        }
    }
}
