package campcloth.plan;

import campcloth.figure.Refused;
import campcloth.garment.SewnBy;
import java.util.List;

/**
 * What most orders do without.
 *
 * @param sewnBy how the garments are sewn
 * @param atHand pieces of the same cloth that are to be used up first
 * @param repeat the pattern that has to match
 */
public record Particulars(SewnBy sewnBy, List<AtHand> atHand, Repeat repeat) {

    /** By machine, nothing at hand, plain cloth. */
    public static final Particulars USUAL = new Particulars(SewnBy.MACHINE, List.of(), Repeat.NONE);

    private static final int MOST_LENGTHS = 8;

    public Particulars {
        atHand = List.copyOf(atHand);
        if (atHand.size() > MOST_LENGTHS) {
            throw Refused.of(
                    "lengthsAtHand", "has " + atHand.size() + " entries", "give at most " + MOST_LENGTHS + " lengths");
        }
    }
}
