package campcloth.rest;

import campcloth.job.JobKind;
import campcloth.job.JobRun;
import campcloth.job.LayoutGate;
import campcloth.job.Notation;
import campcloth.job.Work;
import campcloth.layout.Layout;
import campcloth.layout.Progress;
import java.util.Map;
import org.springframework.stereotype.Component;

/** Does a job about a layout: the same search as at once, for as long as a job may take. */
@Component
class LayoutWork implements Work {

    private final LayoutGate gate;
    private final Notation notation;

    LayoutWork(LayoutGate gate, Notation notation) {
        this.gate = gate;
        this.notation = notation;
    }

    @Override
    public JobKind kind() {
        return JobKind.LAYOUT;
    }

    @Override
    public String run(String request, JobRun run) {
        LayoutRequest asked = notation.read(request, LayoutRequest.class);
        Layout layout = gate.inTime(run::goOn, () -> asked.laidOutByJob(new Told(run, asked.wantedSeconds())));
        run.goOn();
        return notation.write(LayoutAnswer.of(layout));
    }

    /** Tells the job each better length. */
    private static final class Told implements Progress {

        private final JobRun run;
        private final double askedSeconds;
        private final long begun = System.nanoTime();

        Told(JobRun run, double askedSeconds) {
            this.run = run;
            this.askedSeconds = askedSeconds;
        }

        @Override
        public void better(double lengthCm, double usedPercent) {
            run.tell(Map.of(
                    "lengthCm", lengthCm,
                    "usedPercent", usedPercent,
                    "foundAfterSeconds", (System.nanoTime() - begun) / 1e9,
                    "askedSeconds", askedSeconds));
        }

        @Override
        public boolean isStopped() {
            return run.isStopped();
        }
    }
}
