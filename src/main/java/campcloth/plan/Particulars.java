package campcloth.plan;

import campcloth.figure.Refused;
import campcloth.garment.SewnBy;
import campcloth.layout.AtHand;
import campcloth.layout.Repeat;
import java.util.List;
import java.util.Optional;

/**
 * What most orders do without.
 *
 * @param sewnBy how the garments are sewn
 * @param atHand pieces of the same cloth that are to be used up first
 * @param repeat the pattern that has to match, as the shop sells the cloth; empty for plain cloth
 */
public record Particulars(SewnBy sewnBy, List<AtHand> atHand, Optional<Repeat> repeat) {

    /** By machine, nothing at hand, plain cloth. */
    public static final Particulars USUAL = new Particulars(SewnBy.MACHINE, List.of(), Optional.empty());

    private static final int MOST_LENGTHS = 8;

    public Particulars {
        atHand = List.copyOf(atHand);
        if (atHand.size() > MOST_LENGTHS) {
            throw Refused.of(
                    "lengthsAtHand", "has " + atHand.size() + " entries", "give at most " + MOST_LENGTHS + " lengths");
        }
    }
}
