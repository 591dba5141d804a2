package campcloth.plan;

import campcloth.garment.Needle;
import campcloth.layout.Effort;
import campcloth.layout.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Plans what to buy and how to cut it. The pieces are laid on the width that remains between the selvedges after the wash,
 * (width - selvedges) (1 - s_weft); the length L that they take is bought as L / (1 - s_warp) and 2 cm for squaring the cut
 * ends (common practice, no source), rounded up to what the shop cuts (shrinkage after ISO 5077 as a positive share, source
 * {@code shrinkage-methods}). A piece at hand is not asked for those 2 cm; what it leaves is told.
 *
 * <p>{@code 204 cm of washed cloth at 6 % warp shrinkage is 204 / 0.94 = 217.02 cm, with 2 cm 219.02, so 220 cm to buy.}
 *
 * <p>Cloth that is not washed first is laid on its full width between the selvedges, and the pieces are cut larger instead:
 * across by the weft's shrinkage, along by a hem that holds what the wash will take; then L is bought as it is. The plan
 * reckons with the likeliest shrinkage and names beside it what the worst would need.
 */
public final class CuttingPlanner {

    private static final long SEED = 1;
    private static final double FOLD_COSTS_NOTHING_CM = 0.05;

    /** Folded cloth leaves little choice. */
    private static final double FOLDED_SHARE = 0.2;

    private final Effort effort;

    /**
     * A planner.
     *
     * @param seconds about how long one layout may be looked for
     */
    public CuttingPlanner(double seconds) {
        this.effort = new Effort(seconds, SEED);
    }

    /** Refuses what no plan could be made of, before anything is searched. */
    public static void check(CuttingOrder order) {
        TooNarrow.check(order, CutPieces.of(order));
    }

    /** The plan for an order; refuses with the path of what is at fault, {@code cloth.widthCm} where it is too narrow. */
    public CuttingPlan plan(CuttingOrder order) {
        return plan(order, Progress.NONE);
    }

    /** The plan for an order, made of what was found so far once somebody ends the search. */
    public CuttingPlan plan(CuttingOrder order, Progress progress) {
        Search search = new Search(effort, progress);
        CutPieces pieces = CutPieces.of(order);
        TooNarrow.check(order, pieces);
        Optional<MatchedLay> matched = MatchedLay.of(order, pieces, search);
        Laid laid = laid(order, pieces, search, matched.map(MatchedLay::lay));
        RuleOfThumb rule = RuleOfThumb.of(order, pieces);
        double buyLengthCm = order.buyLengthCm(laid.chosen().lengthCm());
        WorstCase worst = worstCase(order, buyLengthCm, search);
        Bought bought = new Bought(buyLengthCm, worst, new NearMiss(order, pieces, buyLengthCm, search).note());
        Optional<CuttingPlan.Remnant> remnant = new RemnantAnswer(order, pieces, laid).answer();
        Needle needle = Needle.forWeight(order.cloth().weightGsm());
        double usableCm = order.cloth().usableWidthCm();
        Making making = new Making(
                GarmentWork.of(order, pieces),
                SmallPiecesAnswer.of(order, pieces, laid),
                LengthsAtHand.of(order, pieces),
                matched.map(lay -> lay.matched(buyLengthCm)),
                RuleSaving.of(order, rule, buyLengthCm));
        return new CuttingPlan(
                buyLengthCm,
                worst.buyLengthCm(),
                laid.chosen().lengthCm(),
                Math.min(laid.lowerBoundCm(), laid.chosen().lengthCm()),
                usableCm,
                Math.min(100, 100 * pieces.areaCm2() / (usableCm * laid.chosen().lengthCm())),
                rule.roundedCm(),
                rule.words(),
                laid.lay(),
                laid.open().lengthCm(),
                laid.folded().map(Lay::lengthCm),
                laid.twoFolds().map(Lay::lengthCm),
                remnant,
                laid.chosen().pieces(),
                seams(pieces),
                hems(pieces),
                seamAllowanceCm(pieces),
                needle.nm(),
                needle.stitchLengthMm(),
                GarmentWork.threadM(making.garments()),
                order.cloth().price().map(price -> price.times(buyLengthCm / 100)),
                Optional.of(making),
                PlanNotes.notes(order, pieces, laid, rule, bought, making),
                PlanNotes.cautions(order, pieces),
                Optional.of(CutCloth.of(order.cloth())));
    }

    /** The lays tried and the one chosen. */
    record Laid(Lay open, Optional<Lay> folded, Optional<Lay> twoFolds, double lowerBoundCm, Fold lay) {

        Lay chosen() {
            return switch (lay) {
                case ONE -> folded.orElseThrow();
                case TWO -> twoFolds.orElseThrow();
                case NONE, ANY -> open;
            };
        }
    }

    /** What it takes should the cloth shrink as much as its figures allow; empty where a piece no longer fits. */
    record WorstCase(double buyLengthCm, boolean fits) {}

    /** What to buy, and what would make it less where that is near. */
    record Bought(double lengthCm, WorstCase worst, Optional<String> nearMiss) {}

    static Laid laid(CuttingOrder order, CutPieces pieces, Search search) {
        return laid(order, pieces, search, Optional.empty());
    }

    /** With another lay on open cloth, which stands in where it is shorter. */
    private static Laid laid(CuttingOrder order, CutPieces pieces, Search search, Optional<Lay> other) {
        double usableCm = order.cloth().usableWidthCm();
        boolean nap = order.cloth().nap();
        Lay.Open searched = Lay.open(usableCm, nap, pieces, search);
        Lay open =
                other.filter(lay -> lay.lengthCm() < searched.lay().lengthCm()).orElse(searched.lay());
        Optional<Lay> folded = FoldedLay.of(usableCm, nap, pieces, search.briefer(FOLDED_SHARE));
        Optional<Lay> twoFolds = TwoFoldsLay.of(usableCm, pieces);
        Fold lay = order.fold() == Fold.ANY ? best(open, folded, twoFolds) : order.fold();
        if (lay == Fold.ONE && folded.isEmpty() || lay == Fold.TWO && twoFolds.isEmpty()) {
            throw TooNarrow.toFold(order);
        }
        return new Laid(open, folded, twoFolds, searched.lowerBoundCm(), lay);
    }

    /** Folded where that costs nothing, once rather than twice; else open. */
    private static Fold best(Lay open, Optional<Lay> folded, Optional<Lay> twoFolds) {
        double mostCm = open.lengthCm() + FOLD_COSTS_NOTHING_CM;
        if (folded.filter(f -> f.lengthCm() <= mostCm).isPresent()) {
            return Fold.ONE;
        }
        return twoFolds.filter(f -> f.lengthCm() <= mostCm).isPresent() ? Fold.TWO : Fold.NONE;
    }

    private static WorstCase worstCase(CuttingOrder order, double likelyCm, Search search) {
        if (!order.cloth().shrinkageIsUncertain()) {
            return new WorstCase(likelyCm, true);
        }
        CuttingOrder worst = order.with(order.cloth().shrinkingMost());
        CutPieces pieces = CutPieces.of(worst);
        if (TooNarrow.isTooNarrow(worst, pieces)) {
            return new WorstCase(likelyCm, false);
        }
        Laid laid = laid(worst, pieces, search);
        return new WorstCase(Math.max(likelyCm, worst.buyLengthCm(laid.chosen().lengthCm())), true);
    }

    private static List<CuttingPlan.GarmentSeam> seams(CutPieces pieces) {
        List<CuttingPlan.GarmentSeam> seams = new ArrayList<>();
        pieces.garments()
                .forEach(g -> g.garment()
                        .sewing()
                        .seams()
                        .forEach(s -> seams.add(new CuttingPlan.GarmentSeam(g.label(), s))));
        return seams;
    }

    private static List<CuttingPlan.GarmentHem> hems(CutPieces pieces) {
        List<CuttingPlan.GarmentHem> hems = new ArrayList<>();
        pieces.garments()
                .forEach(g ->
                        g.garment().sewing().hems().forEach(h -> hems.add(new CuttingPlan.GarmentHem(g.label(), h))));
        return hems;
    }

    private static double seamAllowanceCm(CutPieces pieces) {
        return pieces.garments().stream()
                .mapToDouble(g -> g.garment().sewing().seamAllowanceCm())
                .max()
                .orElseThrow();
    }
}
