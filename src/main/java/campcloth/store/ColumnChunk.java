package campcloth.store;

import campcloth.access.Holding;
import campcloth.cloth.Bases;
import campcloth.cloth.ClothInNumbers;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Property;
import campcloth.figure.Figure;

/** Some rows of the columns. Not changed any more once a reader can see it: a change is made on a copy. */
final class ColumnChunk {

    /** So many rows are copied where one of them changes. */
    static final int ROWS = 4096;

    private static final KeptCloth.Origin[] ORIGINS = KeptCloth.Origin.values();

    private static final byte THERE = 1;
    private static final byte MASS_IS_ESTIMATED = 2;
    private static final byte PERMEABILITY_IS_KNOWN = 4;
    private static final byte THICKNESS_IS_KNOWN = 8;

    final String[] id;
    final long[] version;

    /** To whom it belongs; of common cloths the same. */
    final Holding[] holding;

    final int[] make;
    final double[] weightGsm;
    final double[] leastGsm;
    final double[] thicknessMm;
    final double[] permeabilityMmS;
    final double[] vapourResistanceM2PaW;
    final double[] coarseEndsPercent;
    final double[] bastRoughness;

    /** Of those that have one. */
    final double[] pricePerMetre;

    /** See {@link Bases#packed}. */
    final int[] bases;

    private final byte[] origin;
    private final byte[] flags;

    ColumnChunk() {
        id = new String[ROWS];
        version = new long[ROWS];
        holding = new Holding[ROWS];
        make = new int[ROWS];
        weightGsm = new double[ROWS];
        leastGsm = new double[ROWS];
        thicknessMm = new double[ROWS];
        permeabilityMmS = new double[ROWS];
        vapourResistanceM2PaW = new double[ROWS];
        coarseEndsPercent = new double[ROWS];
        bastRoughness = new double[ROWS];
        pricePerMetre = new double[ROWS];
        bases = new int[ROWS];
        origin = new byte[ROWS];
        flags = new byte[ROWS];
    }

    private ColumnChunk(ColumnChunk other) {
        id = other.id.clone();
        version = other.version.clone();
        holding = other.holding.clone();
        make = other.make.clone();
        weightGsm = other.weightGsm.clone();
        leastGsm = other.leastGsm.clone();
        thicknessMm = other.thicknessMm.clone();
        permeabilityMmS = other.permeabilityMmS.clone();
        vapourResistanceM2PaW = other.vapourResistanceM2PaW.clone();
        coarseEndsPercent = other.coarseEndsPercent.clone();
        bastRoughness = other.bastRoughness.clone();
        pricePerMetre = other.pricePerMetre.clone();
        bases = other.bases.clone();
        origin = other.origin.clone();
        flags = other.flags.clone();
    }

    ColumnChunk copy() {
        return new ColumnChunk(this);
    }

    void put(int at, KeptCloth kept, int newMake, ClothInNumbers cloth) {
        id[at] = kept.id();
        version[at] = kept.version();
        holding[at] = kept.holding().equals(Holding.COMMON) ? Holding.COMMON : kept.holding();
        make[at] = newMake;
        weightGsm[at] = cloth.weightGsm();
        leastGsm[at] = cloth.leastGsm();
        thicknessMm[at] = cloth.thicknessMm();
        permeabilityMmS[at] = cloth.permeabilityMmS();
        vapourResistanceM2PaW[at] = cloth.vapourResistanceM2PaW();
        coarseEndsPercent[at] = cloth.coarseEndsPercent();
        bastRoughness[at] = cloth.bastRoughness();
        pricePerMetre[at] =
                kept.cloth().figure(Property.PRICE_PER_METRE).map(Figure::value).orElse(0.0);
        bases[at] = Bases.of(kept.cloth()).packed();
        origin[at] = (byte) kept.origin().ordinal();
        flags[at] = (byte) (THERE
                | (cloth.massIsEstimated() ? MASS_IS_ESTIMATED : 0)
                | (cloth.thicknessIsKnown() ? THICKNESS_IS_KNOWN : 0)
                | (cloth.permeabilityIsKnown() ? PERMEABILITY_IS_KNOWN : 0));
    }

    /** The row stays the cloth's own, for when it comes back. */
    void remove(int at) {
        flags[at] = 0;
    }

    KeptCloth.Origin origin(int at) {
        return ORIGINS[origin[at]];
    }

    boolean isThere(int at) {
        return (flags[at] & THERE) != 0;
    }

    boolean massIsEstimated(int at) {
        return (flags[at] & MASS_IS_ESTIMATED) != 0;
    }

    boolean thicknessIsKnown(int at) {
        return (flags[at] & THICKNESS_IS_KNOWN) != 0;
    }

    boolean permeabilityIsKnown(int at) {
        return (flags[at] & PERMEABILITY_IS_KNOWN) != 0;
    }
}
