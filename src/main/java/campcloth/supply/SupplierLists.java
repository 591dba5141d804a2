package campcloth.supply;

import campcloth.cloth.KeptCloth;
import java.io.IOException;
import java.util.Set;
import java.util.function.Consumer;

/** What suppliers' lists say, kept beside the catalogue. Each method is one unit of work. */
public interface SupplierLists {

    /** What is said to others. */
    String KEEPERS_ONLY = "Suppliers' lists write the shared catalogue, which keepers keep. Ask a keeper.";

    /**
     * Takes a list over, all of it or nothing: whatever ends the work before its end leaves what is kept as it was. A row is
     * known again by supplier and key, so that taking the same list twice changes nothing.
     *
     * A list writes the shared catalogue, so keepers alone hand one in.
     *
     * @throws IOException where the list or its report cannot be read or written
     */
    ListReport take(Order order, Source list, Watcher watcher) throws IOException;

    /**
     * Hands on every cloth that comes from one of those named and is the asker's own or common, by name.
     */
    void each(Set<KeptCloth.Origin> origins, Consumer<ListWriter.Line> lines);

    /** Rows that come from somewhere. */
    interface Source {
        ListHead read(Consumer<ListRow> rows) throws IOException;
    }

    /** What happens to rows that cannot be used. */
    enum OnBadRow {
        /** One such row, and nothing is written. */
        REFUSE_ALL,
        /** The others are written. */
        SKIP
    }

    /**
     * What to do with a list.
     *
     * @param supplier part of the key of each article
     * @param dryRun whether to report alone
     */
    record Order(String supplier, OnBadRow onBadRow, boolean dryRun) {}

    /**
     * Who follows the work. Nothing of what is told is sure before the report is there. What waits, reads or writes ends, with
     * nothing written, where its watcher throws.
     */
    interface Watcher {

        Watcher NONE = new Watcher() {};

        /** Another list is being worked on. */
        default void waiting() {}

        /** So many rows were read and looked at. */
        default void read(long rows) {}

        /** So many rows were written, of those to be written. */
        default void written(long rows) {}

        /** The list is written; so many cloths can be found by searching by now. */
        default void indexed(long cloths) {}

        /** Whether every row is wanted, once it is clear what came of it. */
        default boolean wantsRows() {
            return false;
        }

        /** What came of a row. */
        default void row(ListReport.Row row) {}
    }
}
