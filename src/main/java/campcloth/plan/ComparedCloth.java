package campcloth.plan;

import java.util.List;
import java.util.Optional;

/**
 * One cloth of a comparison.
 *
 * @param place its place among the cloths given, counted from 0
 * @param name what it is called
 * @param cloth the cloth
 * @param purchase what it takes; empty where the pieces do not lie on it
 * @param because why it stands where it stands, and where nothing lies on it what would help
 */
public record ComparedCloth(
        int place, String name, ClothToCut cloth, Optional<Purchase> purchase, List<String> because) {

    /**
     * What it takes of a cloth.
     *
     * @param buyLengthCm what to ask for
     * @param netLengthCm cloth that the layout takes, as it is cut
     * @param usedPercent area of the pieces in percent of width times net length
     * @param ruleOfThumbCm what people would buy without a layout
     * @param rows rows of body panels by that rule, of all garments
     * @param cost price of the length to buy, where the price is known
     */
    public record Purchase(
            double buyLengthCm,
            double netLengthCm,
            double usedPercent,
            double ruleOfThumbCm,
            int rows,
            Optional<Money> cost) {

        /** Length by the rule less the length to buy; negative where the rule falls short. */
        public double savedCm() {
            return ruleOfThumbCm - buyLengthCm;
        }
    }

    public ComparedCloth {
        because = List.copyOf(because);
    }

    Optional<Money> cost() {
        return purchase.flatMap(Purchase::cost);
    }

    ComparedCloth because(List<String> sentences) {
        return new ComparedCloth(place, name, cloth, purchase, sentences);
    }
}
