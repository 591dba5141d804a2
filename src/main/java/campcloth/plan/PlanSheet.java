package campcloth.plan;

import campcloth.figure.Words;
import campcloth.layout.ClothEdge;
import campcloth.layout.CuttingSheet;
import campcloth.layout.SheetPart;
import java.util.ArrayList;
import java.util.List;

/** A plan as a sheet to draw: the cloth as it lies, folded where it is folded, with what is known of it in words. */
final class PlanSheet {

    private final CuttingPlan plan;

    private PlanSheet(CuttingPlan plan) {
        this.plan = plan;
    }

    static CuttingSheet of(CuttingPlan plan) {
        return new PlanSheet(plan).sheet();
    }

    private CuttingSheet sheet() {
        List<PlacedPiece> placed = plan.layoutOrder();
        FoldedSheet.Lying lying = switch (plan.lay()) {
            case NONE, ANY -> open(placed);
            case ONE -> FoldedSheet.once(placed, plan.usableWidthCm());
            case TWO -> FoldedSheet.twice(placed, plan.usableWidthCm());
        };
        return new CuttingSheet(
                "Cutting layout",
                facts(),
                lying.widthCm(),
                plan.netLengthCm(),
                lying.left(),
                lying.right(),
                lying.parts(),
                plan.cloth().map(CutCloth::nap).orElse(false),
                List.of());
    }

    private FoldedSheet.Lying open(List<PlacedPiece> placed) {
        List<SheetPart> parts = placed.stream()
                .map(piece -> FoldedSheet.part(placed, piece, SheetPart.Cut.ONE_LAYER, 0))
                .toList();
        return new FoldedSheet.Lying(plan.usableWidthCm(), ClothEdge.SELVEDGE, ClothEdge.SELVEDGE, parts);
    }

    private List<String> facts() {
        List<String> facts = new ArrayList<>();
        String buy = "Length to buy " + cm(plan.buyLengthCm());
        plan.cloth()
                .ifPresentOrElse(
                        cloth -> {
                            facts.add((cloth.name().isBlank() ? "Cloth" : cloth.name()) + ", " + cm(cloth.widthCm())
                                    + " wide as bought, selvedges of " + cm(cloth.selvedgeCm()) + " left out. " + buy
                                    + ".");
                            facts.add(cloth.washing().words());
                        },
                        () -> facts.add(buy + "."));
        facts.add("Outlines are cutting lines: seams of up to " + cm(plan.seamAllowanceCm())
                + " and the hems' allowances lie inside them. Usable width between the selvedges "
                + cm(plan.usableWidthCm()) + "; square the cut edge before measuring.");
        return facts;
    }

    private static String cm(double value) {
        String fixed = Words.fixed(value, 1);
        return (fixed.endsWith(".0") ? fixed.substring(0, fixed.length() - 2) : fixed) + " cm";
    }
}
