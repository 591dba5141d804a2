package campcloth.plan;

import campcloth.figure.Refused;
import campcloth.layout.Layout;
import campcloth.layout.MatchPhase;
import campcloth.layout.Piece;
import campcloth.layout.Repeat;
import campcloth.layout.Strip;
import java.util.List;
import java.util.Optional;

/**
 * A layout for stripes and checks: of each garment, the pieces that end at the hem meet the same line of the pattern there, so
 * that they match along a seam from the hem up, and have their middle (or their seam, where left and right are cut apart) on
 * the same stripe, so that both sides look alike. Copies of every other piece match each other; sleeves at their upper edge.
 * The repeat shrinks with the cloth. No piece is turned, since nothing is known of the pattern's symmetry.
 *
 * <p>That sleeves carry the body's line on at the armhole is not looked for. A pattern that is not its own mirror image cannot
 * match on both sides.
 */
final class MatchedLay {

    private final CuttingOrder order;
    private final Repeat repeat;
    private final Layout layout;

    private MatchedLay(CuttingOrder order, Repeat repeat, Layout layout) {
        this.order = order;
        this.repeat = repeat;
        this.layout = layout;
    }

    /** Empty where the cloth has no pattern to match, or a piece finds no place where it meets it. */
    static Optional<MatchedLay> of(CuttingOrder order, CutPieces pieces, Search search) {
        return order.particulars()
                .repeat()
                .flatMap(sold -> asCut(sold, order.cloth()))
                .flatMap(repeat ->
                        layout(order, repeat, pieces, search).map(layout -> new MatchedLay(order, repeat, layout)));
    }

    /** What the wash leaves of a repeat; so small a one that nobody matches it is left out. */
    private static Optional<Repeat> asCut(Repeat sold, ClothToCut cloth) {
        Optional<Double> along = sold.lengthCm().map(cloth::cutLengthCm).filter(Repeat::isMatched);
        Optional<Double> across = sold.widthCm()
                .map(cm -> cm * cloth.usableWidthCm() / cloth.nominalWidthCm())
                .filter(Repeat::isMatched);
        return along.isEmpty() && across.isEmpty() ? Optional.empty() : Optional.of(Repeat.every(along, across));
    }

    private static Optional<Layout> layout(CuttingOrder order, Repeat repeat, CutPieces pieces, Search search) {
        Strip strip = new Strip(order.cloth().usableWidthCm(), 0, 0, 0, Optional.of(repeat), List.of());
        List<Piece> matched = pieces.cuts().stream()
                .map(cut -> cut.matched(order.cloth().nap()))
                .toList();
        try {
            return Optional.of(search.layout(strip, matched));
        } catch (Refused noPlace) {
            return Optional.empty();
        }
    }

    Lay lay() {
        return Lay.of(layout);
    }

    Layout layout() {
        return layout;
    }

    Matched matched(double unmatchedBuyCm) {
        double buyCm = Math.max(unmatchedBuyCm, order.buyLengthCm(layout.lengthCm()));
        double extraCm = buyCm - unmatchedBuyCm;
        Optional<MatchPhase> first = layout.matchPhases().stream().findFirst();
        return new Matched(
                repeat.lengthCm(),
                repeat.widthCm(),
                layout.lengthCm(),
                buyCm,
                extraCm,
                order.cloth().price().map(price -> price.times(extraCm / 100)),
                lay().pieces(),
                first.flatMap(MatchPhase::alongCm),
                first.flatMap(MatchPhase::acrossCm));
    }
}
