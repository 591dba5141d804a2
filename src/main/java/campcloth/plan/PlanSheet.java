package campcloth.plan;

import campcloth.figure.Words;
import campcloth.layout.ClothEdge;
import campcloth.layout.CuttingSheet;
import campcloth.layout.SheetPart;
import campcloth.layout.Stripes;
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
        return sheet(lying, "Cutting layout", plan.buyLengthCm(), plan.netLengthCm(), List.of());
    }

    /** On open cloth, with the lines of the pattern that the hems and the middles meet. */
    static CuttingSheet matched(CuttingPlan plan, Matched matched) {
        PlanSheet sheet = new PlanSheet(plan);
        List<Stripes> stripes = new ArrayList<>();
        matched.repeatLengthCm()
                .ifPresent(
                        every -> stripes.add(new Stripes(matched.lineFromCutCm().orElse(0.0), every, false)));
        matched.repeatWidthCm()
                .ifPresent(every ->
                        stripes.add(new Stripes(matched.lineFromSelvedgeCm().orElse(0.0), every, true)));
        return sheet.sheet(
                sheet.open(CuttingPlan.inOrder(matched.placements())),
                "Cutting layout, pattern matched",
                matched.buyLengthCm(),
                matched.lengthCm(),
                stripes);
    }

    private CuttingSheet sheet(
            FoldedSheet.Lying lying, String title, double buyCm, double lengthCm, List<Stripes> stripes) {
        return new CuttingSheet(
                title,
                facts(buyCm),
                lying.widthCm(),
                lengthCm,
                lying.left(),
                lying.right(),
                lying.parts(),
                plan.cloth().map(CutCloth::nap).orElse(false),
                stripes);
    }

    private FoldedSheet.Lying open(List<PlacedPiece> placed) {
        List<SheetPart> parts = placed.stream()
                .map(piece -> FoldedSheet.part(placed, piece, SheetPart.Cut.ONE_LAYER, 0))
                .toList();
        return new FoldedSheet.Lying(plan.usableWidthCm(), ClothEdge.SELVEDGE, ClothEdge.SELVEDGE, parts);
    }

    private List<String> facts(double buyCm) {
        List<String> facts = new ArrayList<>();
        String buy = "Length to buy " + cm(buyCm);
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
