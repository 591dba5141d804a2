package campcloth.store;

import campcloth.cloth.ClothInNumbers;
import campcloth.cloth.KeptCloth;
import java.util.Arrays;
import java.util.BitSet;
import java.util.OptionalInt;

/**
 * Changes of the columns on the way from one tick to the next. Of what readers see only the chunks in which something changes are
 * copied, each once. One thread at a time; nobody sees anything of it before {@link #done}.
 */
final class ColumnsEdit {

    private final Makes makes;
    private final BitSet mine = new BitSet();
    private ColumnChunk[] chunks;
    private RowsById byId;
    private int rows;
    private int cloths;

    ColumnsEdit(Columns from, Makes makes) {
        this.makes = makes;
        this.chunks = from.chunks().clone();
        this.byId = from.byId();
        this.rows = from.rows();
        this.cloths = from.cloths();
    }

    void put(KeptCloth kept, ClothInNumbers cloth) {
        String id = kept.id();
        OptionalInt known = byId.row(id, rows, chunks);
        int row = known.isPresent() ? known.getAsInt() : added(id);
        ColumnChunk chunk = own(row / ColumnChunk.ROWS);
        int at = row % ColumnChunk.ROWS;
        cloths += chunk.isThere(at) ? 0 : 1;
        chunk.put(at, kept, makes.number(cloth.make()), cloth);
    }

    void remove(String id) {
        OptionalInt known = byId.row(id, rows, chunks);
        if (known.isPresent()) {
            ColumnChunk chunk = own(known.getAsInt() / ColumnChunk.ROWS);
            int at = known.getAsInt() % ColumnChunk.ROWS;
            cloths -= chunk.isThere(at) ? 1 : 0;
            chunk.remove(at);
        }
    }

    int cloths() {
        return cloths;
    }

    Columns done() {
        return new Columns(chunks, rows, cloths, byId, makes.seen());
    }

    private int added(String id) {
        int row = rows++;
        int number = row / ColumnChunk.ROWS;
        if (number == chunks.length) {
            chunks = Arrays.copyOf(chunks, number + 1);
            chunks[number] = new ColumnChunk();
            mine.set(number);
        }
        own(number).id[row % ColumnChunk.ROWS] = id;
        byId = byId.withRoomFor(rows, chunks);
        byId.put(row, id);
        return row;
    }

    private ColumnChunk own(int number) {
        if (!mine.get(number)) {
            chunks[number] = chunks[number].copy();
            mine.set(number);
        }
        return chunks[number];
    }
}
