package campcloth.plan;

import java.util.List;
import java.util.Optional;

/**
 * The pieces divided among lengths at hand and the bolt.
 *
 * @param lengths the lengths at hand, as they were given
 * @param boltPieces where the rest lies on cloth to buy; empty where nothing is left to cut
 * @param boltNetCm length that the rest takes, as it is cut; 0 where nothing is left
 * @param buyLengthCm what to buy for it; 0 where nothing is left
 * @param cost price of that, where the price is known
 */
public record SeveralLengths(
        List<OnLength> lengths,
        List<PlacedPiece> boltPieces,
        double boltNetCm,
        double buyLengthCm,
        Optional<Money> cost) {

    /**
     * What is cut from one length at hand.
     *
     * @param lengthCm its length, as it is cut
     * @param usableWidthCm its width between the selvedges, as it is cut
     * @param usedCm how much of the length is used; 0 where nothing lies on it
     * @param pieces where the pieces lie on it
     */
    public record OnLength(double lengthCm, double usableWidthCm, double usedCm, List<PlacedPiece> pieces) {

        public OnLength {
            pieces = List.copyOf(pieces);
        }
    }

    public SeveralLengths {
        lengths = List.copyOf(lengths);
        boltPieces = List.copyOf(boltPieces);
    }
}
