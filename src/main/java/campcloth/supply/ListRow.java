package campcloth.supply;

import campcloth.figure.Refusal;
import java.util.List;

/** A row of a list as it was read. */
public sealed interface ListRow {

    /** Number of the line on which the row ends, the head's being 1. */
    long line();

    /** The supplier's key; empty where there is none. */
    String key();

    /**
     * A row that can be used.
     *
     * @param notes what to know of its reading
     */
    record Good(long line, Listed listed, List<String> notes) implements ListRow {

        public Good {
            notes = List.copyOf(notes);
        }

        @Override
        public String key() {
            return listed.key();
        }
    }

    /** A row that cannot be used, and every reason why. */
    record Bad(long line, String key, List<Refusal> refusals) implements ListRow {

        public Bad {
            refusals = List.copyOf(refusals);
        }
    }
}
