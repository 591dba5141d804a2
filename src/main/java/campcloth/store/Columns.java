package campcloth.store;

import campcloth.access.Holding;
import campcloth.cloth.Bases;
import campcloth.cloth.ClothColumns;
import campcloth.cloth.ClothMake;
import campcloth.cloth.KeptCloth;
import java.util.BitSet;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The columns of the catalogue as they stood at one tick. */
final class Columns implements ClothColumns {

    private final ColumnChunk[] chunks;
    private final int rows;
    private final int cloths;
    private final RowsById byId;
    private final Makes.Seen makes;

    /** Rows asked for; null where all are. */
    private final @Nullable BitSet only;

    Columns(ColumnChunk[] chunks, int rows, int cloths, RowsById byId, Makes.Seen makes) {
        this(chunks, rows, cloths, byId, makes, null);
    }

    private Columns(
            ColumnChunk[] chunks, int rows, int cloths, RowsById byId, Makes.Seen makes, @Nullable BitSet only) {
        this.chunks = chunks;
        this.rows = rows;
        this.cloths = cloths;
        this.byId = byId;
        this.makes = makes;
        this.only = only;
    }

    static Columns none() {
        return new Columns(new ColumnChunk[0], 0, 0, RowsById.empty(), new Makes().seen());
    }

    ColumnChunk[] chunks() {
        return chunks;
    }

    RowsById byId() {
        return byId;
    }

    /** The same with an index of its own: for when an edit that was never done may have left something in the one shared with it. */
    Columns indexedAnew() {
        RowsById own = RowsById.empty();
        for (int row = 0; row < rows; row++) {
            own = own.withRoomFor(row + 1, chunks);
            own.put(row, chunk(row).id[at(row)]);
        }
        return new Columns(chunks, rows, cloths, own, makes, only);
    }

    /** The same with no other cloths than those that are held so; asks in this thread alone. */
    Columns onlyHeld(Predicate<Holding> listed) {
        BitSet seen = new BitSet(rows);
        Holding last = Holding.COMMON;
        boolean lastIsListed = listed.test(last);
        for (int row = 0; row < rows; row++) {
            if (holds(row)) {
                Holding holding = chunk(row).holding[at(row)];
                if (holding != last) {
                    last = holding;
                    lastIsListed = listed.test(holding);
                }
                seen.set(row, lastIsListed);
            }
        }
        int all = seen.cardinality();
        return all == cloths ? this : new Columns(chunks, rows, all, byId, makes, seen);
    }

    /** The same with no other cloths than those of the ids. */
    Columns only(Stream<String> ids) {
        BitSet asked = new BitSet(rows);
        ids.forEach(id -> row(id).ifPresent(asked::set));
        return new Columns(chunks, rows, asked.cardinality(), byId, makes, asked);
    }

    /** The row of a cloth that is there. */
    OptionalInt row(String id) {
        OptionalInt row = everHeld(id);
        return row.isPresent() && holds(row.getAsInt()) ? row : OptionalInt.empty();
    }

    /** The row of a cloth that is there or was. */
    OptionalInt everHeld(String id) {
        return byId.row(id, rows, chunks);
    }

    /** EUR/m, where {@link #bases} tells that one is written. */
    double pricePerMetre(int row) {
        return chunk(row).pricePerMetre[at(row)];
    }

    /** Whether a whole cloth is as new as its row. */
    boolean isAsNew(KeptCloth kept, int row) {
        return kept.version() >= chunk(row).version[at(row)] && kept.holding().equals(chunk(row).holding[at(row)]);
    }

    @Override
    public int rows() {
        return rows;
    }

    @Override
    public int cloths() {
        return cloths;
    }

    @Override
    public boolean holds(int row) {
        return chunk(row).isThere(at(row)) && (only == null || only.get(row));
    }

    @Override
    public String id(int row) {
        return chunk(row).id[at(row)];
    }

    @Override
    public int make(int row) {
        return chunk(row).make[at(row)];
    }

    @Override
    public int makes() {
        return makes.size();
    }

    @Override
    public ClothMake makeNumbered(int number) {
        return makes.makes()[number];
    }

    @Override
    public double weightGsm(int row) {
        return chunk(row).weightGsm[at(row)];
    }

    @Override
    public double leastGsm(int row) {
        return chunk(row).leastGsm[at(row)];
    }

    @Override
    public boolean massIsEstimated(int row) {
        return chunk(row).massIsEstimated(at(row));
    }

    @Override
    public double thicknessMm(int row) {
        return chunk(row).thicknessMm[at(row)];
    }

    @Override
    public double permeabilityMmS(int row) {
        return chunk(row).permeabilityMmS[at(row)];
    }

    @Override
    public double vapourResistanceM2PaW(int row) {
        return chunk(row).vapourResistanceM2PaW[at(row)];
    }

    @Override
    public double coarseEndsPercent(int row) {
        return chunk(row).coarseEndsPercent[at(row)];
    }

    @Override
    public double bastRoughness(int row) {
        return chunk(row).bastRoughness[at(row)];
    }

    @Override
    public boolean thicknessIsKnown(int row) {
        return chunk(row).thicknessIsKnown(at(row));
    }

    @Override
    public boolean permeabilityIsKnown(int row) {
        return chunk(row).permeabilityIsKnown(at(row));
    }

    @Override
    public Bases bases(int row) {
        return new Bases(chunk(row).bases[at(row)]);
    }

    @Override
    public KeptCloth.Origin origin(int row) {
        return chunk(row).origin(at(row));
    }

    private ColumnChunk chunk(int row) {
        return chunks[row / ColumnChunk.ROWS];
    }

    private static int at(int row) {
        return row % ColumnChunk.ROWS;
    }
}
