package campcloth.store;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Which row an id has: open addressing over the ids in the columns, at most half full. A row keeps its id for ever, so readers of
 * older columns may look while newer rows are put in; those they pass over. One thread writes.
 */
final class RowsById {

    private static final int LEAST = 1024;

    /** Row + 1; 0 where nothing is. */
    private final int[] slots;

    private RowsById(int[] slots) {
        this.slots = slots;
    }

    static RowsById empty() {
        return new RowsById(new int[LEAST]);
    }

    /** Room for another row: these, or greater ones with all rows of the columns. */
    RowsById withRoomFor(int rows, ColumnChunk[] chunks) {
        if (2L * rows < slots.length) {
            return this;
        }
        RowsById greater = new RowsById(new int[2 * slots.length]);
        for (int row = 0; row < rows - 1; row++) {
            greater.put(row, id(chunks, row));
        }
        return greater;
    }

    void put(int row, String id) {
        int slot = start(id);
        while (slots[slot] != 0) {
            slot = next(slot);
        }
        slots[slot] = row + 1;
    }

    /** @param rows how many rows the columns have */
    OptionalInt row(String id, int rows, ColumnChunk[] chunks) {
        int slot = start(id);
        for (int found = slots[slot]; found != 0; found = slots[slot]) {
            if (found <= rows && id(chunks, found - 1).equals(id)) {
                return OptionalInt.of(found - 1);
            }
            slot = next(slot);
        }
        return OptionalInt.empty();
    }

    private static String id(ColumnChunk[] chunks, int row) {
        return Optional.ofNullable(chunks[row / ColumnChunk.ROWS].id[row % ColumnChunk.ROWS])
                .orElseThrow();
    }

    private int start(String id) {
        int hash = id.hashCode();
        return (hash ^ (hash >>> 15)) * 0x9E3779B1 >>> 1 & (slots.length - 1);
    }

    private int next(int slot) {
        return (slot + 1) & (slots.length - 1);
    }
}
