package campcloth.plan;

import campcloth.garment.LengthRule;
import java.util.ArrayList;
import java.util.List;

/**
 * What people would buy without a layout: for each garment the length as often as its body panels need rows on this cloth,
 * plus a sleeve; the sum rounded up like the shop does. Seams, hems and shrinkage of length are left out, as people do.
 *
 * @param lengthCm the sum
 * @param roundedCm the sum rounded up
 * @param words which rule
 * @param rowsBuyCm what to buy for the rows that the rule has in mind, with seams, hems and shrinkage ({@link RowsLay})
 * @param widthLost whether panels would lie side by side on the cloth as bought, but not as it is cut
 */
record RuleOfThumb(double lengthCm, double roundedCm, String words, double rowsBuyCm, boolean widthLost) {

    static RuleOfThumb of(CuttingOrder order, CutPieces pieces) {
        double usableCm = order.cloth().usableWidthCm();
        double lengthCm = 0;
        boolean widthLost = false;
        List<String> words = new ArrayList<>();
        for (CutPieces.MadeUp madeUp : pieces.garments()) {
            LengthRule rule = madeUp.garment().lengthRule();
            int count = madeUp.line().count();
            lengthCm += count * rule.lengthOnCm(usableCm);
            words.add(count == 1 ? rule.words(usableCm) : count + " x (" + rule.words(usableCm) + ")");
            widthLost |= rule.rows(usableCm) > rule.rows(order.cloth().nominalWidthCm());
        }
        return new RuleOfThumb(
                lengthCm,
                order.roundedUpCm(lengthCm),
                String.join(" and ", words) + ", rounded up",
                order.buyLengthCm(RowsLay.of(usableCm, pieces).lengthCm()),
                widthLost);
    }
}
