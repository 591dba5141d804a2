package campcloth.job;

/** How jobs of one kind are done. */
public interface Work {

    JobKind kind();

    /**
     * Does a job. It may be done again after it wrote, where the instance went away before the end was told: what it makes has
     * an id of {@link campcloth.access.NewIds}, or a key of its own, by which the second time finds it.
     *
     * @param request as it was handed in
     * @return what came of it
     * @throws Stopped where it was asked to end, and has written nothing
     * @throws campcloth.access.NotAllowed where whoever handed it in may not have it done
     * @throws campcloth.figure.Refused where what was handed in cannot be used
     */
    String run(String request, JobRun run);
}
