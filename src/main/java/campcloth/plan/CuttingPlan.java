package campcloth.plan;

import campcloth.garment.Hem;
import campcloth.garment.Seam;
import campcloth.layout.CuttingSheet;
import campcloth.layout.Layout;
import campcloth.layout.Strip;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How much cloth to buy and how to cut and sew it.
 *
 * @param buyLengthCm what to ask for in the shop
 * @param buyLengthHighCm what to ask for should the cloth shrink as much as its figures allow
 * @param netLengthCm cloth that the layout takes, as it is cut (washed where it is washed first)
 * @param lowerBoundCm length that no layout of these pieces can fall below
 * @param usableWidthCm width between the selvedges, as it is cut
 * @param usedPercent area of the pieces in percent of width times net length
 * @param ruleOfThumbCm what people would buy without a layout
 * @param ruleOfThumb which rule that is
 * @param lay how the cloth lies in the layout given: {@code NONE} open, {@code ONE} or {@code TWO} folded
 * @param openLengthCm net length on open cloth
 * @param foldedLengthCm net length on cloth folded once; empty where the pieces cannot be cut so
 * @param twoFoldsLengthCm net length on cloth folded twice; empty where the pieces cannot be cut so
 * @param remnant whether the piece at hand is enough, where one was named
 * @param placements where each piece lies; on folded cloth as it lies after unfolding
 * @param seams seams of each garment
 * @param hems edges of each garment
 * @param seamAllowanceCm cloth beyond each seam line
 * @param needleNm machine needle
 * @param stitchLengthMm straight stitch
 * @param threadM sewing thread for all garments, with waste
 * @param cost price of the length to buy, where the price is known
 * @param making how it is sewn, what the small pieces take, what the plan saves; empty in plans of the first form
 * @param notes what was taken for granted and what helps
 * @param cautions what to mind
 * @param cloth the cloth it was made for; empty in plans of old
 */
public record CuttingPlan(
        double buyLengthCm,
        double buyLengthHighCm,
        double netLengthCm,
        double lowerBoundCm,
        double usableWidthCm,
        double usedPercent,
        double ruleOfThumbCm,
        String ruleOfThumb,
        Fold lay,
        double openLengthCm,
        Optional<Double> foldedLengthCm,
        Optional<Double> twoFoldsLengthCm,
        Optional<Remnant> remnant,
        List<PlacedPiece> placements,
        List<GarmentSeam> seams,
        List<GarmentHem> hems,
        double seamAllowanceCm,
        int needleNm,
        double stitchLengthMm,
        double threadM,
        Optional<Money> cost,
        Optional<Making> making,
        List<String> notes,
        List<String> cautions,
        Optional<CutCloth> cloth) {

    /** A seam of one of the garments; {@code garment} is empty where there is but one. */
    public record GarmentSeam(String garment, Seam seam) {}

    /** An edge of one of the garments; {@code garment} is empty where there is but one. */
    public record GarmentHem(String garment, Hem hem) {}

    /**
     * Whether a piece of cloth at hand is enough.
     *
     * @param lengthCm its length as it is cut, after the wash where it is washed first
     * @param fits whether the layout lies on it
     * @param shortCm how much longer it would have to be, as it is cut; 0 where it fits
     * @param because what decides it
     * @param wouldHelp changes that make it fit, tried out
     */
    public record Remnant(double lengthCm, boolean fits, double shortCm, String because, List<String> wouldHelp) {

        public Remnant {
            wouldHelp = List.copyOf(wouldHelp);
        }
    }

    public CuttingPlan {
        placements = List.copyOf(placements);
        seams = List.copyOf(seams);
        hems = List.copyOf(hems);
        notes = List.copyOf(notes);
        cautions = List.copyOf(cautions);
    }

    /** Whether the remnant is enough; empty where none was named. */
    public Optional<Boolean> fitsRemnant() {
        return remnant.map(Remnant::fits);
    }

    /** The cloth as it lies to be cut, to draw it. */
    public CuttingSheet sheet() {
        return PlanSheet.of(this);
    }

    /** The cloth with its pattern and the pieces as they match it; empty where nothing is matched. */
    public Optional<CuttingSheet> matchedSheet() {
        return making.flatMap(Making::matched).map(matched -> PlanSheet.matched(this, matched));
    }

    List<PlacedPiece> layoutOrder() {
        return inOrder(placements);
    }

    static List<PlacedPiece> inOrder(List<PlacedPiece> placements) {
        return placements.stream()
                .sorted(Comparator.comparing(PlacedPiece::piece).thenComparingInt(PlacedPiece::copy))
                .toList();
    }

    /** The layout on open cloth; every piece free to lie as it does. */
    public Layout layout() {
        List<PlacedPiece> ordered = layoutOrder();
        return new Layout(
                Strip.ofWidth(usableWidthCm),
                ordered.stream().map(PlacedPiece::asPiece).toList(),
                netLengthCm,
                lowerBoundCm,
                usedPercent,
                ordered.stream().map(PlacedPiece::placement).toList());
    }
}
