/**
 * Work that takes longer than somebody waits for an answer: handed in, kept until it is done, shared out among the instances of
 * the service, looked at, cancelled. What the work itself is, other rooms say ({@link campcloth.job.Work}).
 */
@NullMarked
package campcloth.job;

import org.jspecify.annotations.NullMarked;
