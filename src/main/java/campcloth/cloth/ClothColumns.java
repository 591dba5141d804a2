package campcloth.cloth;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Cloths of the catalogue column by column, as they all stood at one moment: what a look over a million of them costs little by.
 * Rows are numbered from 0; some hold no cloth, or none of those asked for. What the figures are: {@link ClothInNumbers}. Never
 * changes, may be read by many threads.
 */
public interface ClothColumns {

    /** How many rows there are, those without a cloth included. */
    int rows();

    /** Whether a row holds a cloth that was asked for; of the others nothing may be asked. */
    boolean holds(int row);

    String id(int row);

    /** Number of the cloth's make, below {@link #makes}. */
    int make(int row);

    /** How many makes there are, those of which no cloth is left included. */
    int makes();

    ClothMake makeNumbered(int number);

    double weightGsm(int row);

    double leastGsm(int row);

    boolean massIsEstimated(int row);

    double thicknessMm(int row);

    double permeabilityMmS(int row);

    double vapourResistanceM2PaW(int row);

    double coarseEndsPercent(int row);

    double bastRoughness(int row);

    boolean thicknessIsKnown(int row);

    boolean permeabilityIsKnown(int row);

    /** How its figures are known. */
    Bases bases(int row);

    /** Who put it there. */
    KeptCloth.Origin origin(int row);

    /** How many cloths there are. */
    default int cloths() {
        return (int) IntStream.range(0, rows()).filter(this::holds).count();
    }

    /** Ids of all cloths; only where they are few. */
    default List<String> ids() {
        return IntStream.range(0, rows()).filter(this::holds).mapToObj(this::id).toList();
    }
}
