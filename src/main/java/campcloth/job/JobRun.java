package campcloth.job;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;

/** The work on a job as the one who does it sees it. */
public interface JobRun {

    /** What was handed in beside. */
    InputStream payload() throws IOException;

    /** Tells how far it has come. Costs nothing; asked for once in a while. */
    void tell(Map<String, Double> progress);

    /** Whether it shall end with nothing written. */
    boolean isStopped();

    /** Ends the work where it shall end. */
    default void goOn() {
        if (isStopped()) {
            throw new Stopped();
        }
    }
}
