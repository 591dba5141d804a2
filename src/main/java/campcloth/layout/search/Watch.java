package campcloth.layout.search;

/** Who follows a search: is told of each better length, and may end it. Called from any thread of the search. */
public interface Watch {

    /** Nobody looks on. */
    Watch NONE = new Watch() {
        @Override
        public void better(double length) {}

        @Override
        public boolean isStopped() {
            return false;
        }
    };

    /** A layout was found that is shorter than all that this search found before; its length in cm. */
    void better(double length);

    /** Whether the search shall end with what it has; asked often. */
    boolean isStopped();
}
