package campcloth.job;

import java.time.Duration;

/**
 * How fast jobs go about, and how long whatever is claimed is held.
 *
 * @param look how soon a worker without work looks again for some that another instance took in
 * @param beat how often a claim is held on
 * @param lease how long a claim holds without that
 * @param silence how long a claim that is not held on is left alone all the same, though its instance is not there: its line to the
 *     database may have broken, and it comes back
 * @param putOff how long a job waits that went wrong, for each time it did
 */
public record Pace(Duration look, Duration beat, Duration lease, Duration silence, Duration putOff) {

    public static final Pace USUAL = new Pace(
            Duration.ofSeconds(2),
            Duration.ofSeconds(1),
            Duration.ofSeconds(30),
            Duration.ofSeconds(3),
            Duration.ofSeconds(5));
}
