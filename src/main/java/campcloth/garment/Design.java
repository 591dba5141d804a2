package campcloth.garment;

import campcloth.cloth.Wear;
import java.util.List;
import java.util.Optional;

/**
 * A garment that can be sewn from a few measurements. What is refused is named by its path: {@code wearer.lengthCm},
 * {@code options.flareCm}.
 */
public interface Design {

    /** Key of the option for the cloth beyond each seam line, in designs that have it. */
    String SEAM_ALLOWANCE = "seamAllowanceCm";
    /** The same for the hem. */
    String HEM_ALLOWANCE = "hemAllowanceCm";
    /** The same for the sleeves' ends. */
    String CUFF_ALLOWANCE = "cuffAllowanceCm";
    /** Key of the option for a triangle in each side seam. */
    String SIDE_GORES = "sideGores";
    /** Key of the option for the longest piece of a band that is cut, in cm. */
    String LONGEST_PIECE = "longestPieceCm";
    /** Key of the measurement for the finished circumference, in designs that have it. */
    String FINISHED_ROUND = "finishedChestCm";

    String key();

    String name();

    /** What it needs to know of the wearer, all in cm. */
    List<Measurement> measurements();

    /** What can be chosen. */
    List<Option> options();

    /** How its cloth is worn, for what the sciences ask; what is not given of the wearer is taken as usual. */
    Wear wear(boolean nextToSkin, Measurements wearer);

    /** What {@link #wear} took for granted of the wearer, one sentence each. */
    List<String> assumptions(Measurements wearer);

    /** Pieces, seams and hems for one wearer. */
    Garment madeUp(Measurements wearer, Options options, SewnCloth cloth);

    /**
     * The same choice of options with narrower pieces, where the design knows a way; for cloth that is too narrow. Designs that
     * piece by the cloth's width of themselves have none.
     */
    Optional<Narrower> narrower(Options options);

    /**
     * A way to cut narrower pieces.
     *
     * @param options the options that ask for it
     * @param how what to do, in words that follow "or"
     */
    record Narrower(Options options, String how) {}
}
