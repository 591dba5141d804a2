package campcloth.layout;

/** Who follows a search for a layout: is told of each better one, and may end it. Called by one thread at a time. */
public interface Progress {

    /** Nobody looks on. */
    Progress NONE = new Progress() {
        @Override
        public void better(double lengthCm, double usedPercent) {}

        @Override
        public boolean isStopped() {
            return false;
        }
    };

    /**
     * A layout was found that is shorter than all before.
     *
     * @param lengthCm cloth that it takes
     * @param usedPercent area of the pieces in percent of the cloth that it takes
     */
    void better(double lengthCm, double usedPercent);

    /** Whether the search shall end with what it has; asked often, so that it should be quick to answer. */
    boolean isStopped();
}
