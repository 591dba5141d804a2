package campcloth.errand;

import static campcloth.figure.Words.fixed;
import static campcloth.figure.Words.number;

import campcloth.cloth.OutfitPart;
import campcloth.cloth.Property;
import campcloth.errand.ShoppingItem.Kind;
import campcloth.garment.Scrap;
import campcloth.plan.CuttingPlan;
import campcloth.plan.GarmentWork;
import campcloth.plan.Making;
import campcloth.plan.Money;
import campcloth.plan.ScrapPiece;
import campcloth.plan.SeveralLengths;
import campcloth.plan.SmallPieces;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What to buy for an errand. */
final class Shopping {

    /** Usual on household spools; common practice, no source. */
    private static final double SPOOL_M = 100;

    private final CutErrand cut;
    private final CuttingPlan plan;
    private final List<ShoppingItem> items = new ArrayList<>();

    private Shopping(CutErrand cut) {
        this.cut = cut;
        this.plan = cut.plan();
    }

    static List<ShoppingItem> items(CutErrand cut) {
        Shopping shopping = new Shopping(cut);
        shopping.addCloth();
        shopping.addThread();
        shopping.addNeedle();
        shopping.addScraps();
        shopping.addNotions();
        shopping.addSewnIn();
        return shopping.items;
    }

    private void addCloth() {
        Optional<SeveralLengths> atHand = plan.making().flatMap(Making::lengthsAtHand);
        double buyCm = atHand.map(SeveralLengths::buyLengthCm).orElse(plan.buyLengthCm());
        Optional<Money> cost = atHand.map(SeveralLengths::cost).orElse(plan.cost());
        items.add(new ShoppingItem(Kind.CLOTH, clothName(), length(buyCm), clothReason(atHand.isPresent()), cost));
        if (atHand.isEmpty() && plan.buyLengthHighCm() > plan.buyLengthCm()) {
            items.add(new ShoppingItem(
                    Kind.CLOTH_AT_MOST,
                    "The same cloth, in place of that length",
                    length(plan.buyLengthHighCm()),
                    "Should it shrink as much as its figures allow: " + number(shrinkHigh(true)) + " % along and "
                            + number(shrinkHigh(false)) + " % across. Buy that, or wash a swatch first.",
                    plan.cost().map(money -> money.times(plan.buyLengthHighCm() / plan.buyLengthCm()))));
        }
    }

    private double shrinkHigh(boolean along) {
        return (along ? cut.toCut().shrinkWarpPercent() : cut.toCut().shrinkWeftPercent()).high();
    }

    private String clothName() {
        return cut.cloth().name() + ", " + cut.cloth().blend().words();
    }

    private String length(double cm) {
        return number(cm) + " cm, " + number(cut.toCut().widthCm()) + " cm wide";
    }

    private String clothReason(boolean atHand) {
        String net = atHand
                ? "What does not lie on the lengths at hand, "
                : "The pieces take " + fixed(plan.netLengthCm(), 1) + " cm as cut, ";
        String wash = cut.toCut().isWashedFirst()
                ? "washed first; the wash takes " + KnownAs.words(cut.toCut().shrinkWarpPercent(), "%") + " along. "
                : "";
        String weight = "Width " + KnownAs.words(cut.cloth().required(Property.WIDTH_CM), "cm") + ".";
        return net + "with 2 cm for squaring the ends (common practice, no source), rounded up to what the shop cuts; "
                + wash + weight;
    }

    private void addThread() {
        int spools = (int) Math.max(1, Math.ceil(plan.threadM() / SPOOL_M));
        items.add(ShoppingItem.of(
                Kind.THREAD,
                cut.atAFire()
                        ? "Sewing thread of cotton or linen, in the cloth's colour"
                        : "Sewing thread in the cloth's colour",
                number(plan.threadM()) + " m: " + spools + (spools == 1 ? " spool of " : " spools of ")
                        + number(SPOOL_M) + " m",
                "Reckoned from every seam and hem, its stitch and the cloth's thickness, waste included. A spool is"
                        + " counted as " + number(SPOOL_M) + " m (common practice, no source)."
                        + (cut.atAFire() ? " Near a fire synthetic thread can melt where the cloth does not." : "")));
    }

    private void addNeedle() {
        String weight = KnownAs.words(cut.cloth().required(Property.WEIGHT_GSM), "g/m2");
        if (cut.byHand()) {
            items.add(ShoppingItem.of(
                    Kind.NEEDLE,
                    "Hand-sewing needles, sharp",
                    "a few sizes",
                    "For cloth of " + weight + ": as fine as the thread lets them be. " + ErrandSheet.PRACTICE));
            return;
        }
        boolean stretches = cut.cloth().stretch() || cut.cloth().weave().isKnit();
        items.add(ShoppingItem.of(
                Kind.NEEDLE,
                "Machine needles NM " + plan.needleNm() + (stretches ? ", ball point" : ""),
                "2",
                "For cloth of " + weight + "; straight stitch " + number(plan.stitchLengthMm())
                        + " mm. One more, for needles bend and blunt. " + ErrandSheet.PRACTICE));
    }

    /** A scrap as it is looked for. */
    private record WantedScrap(String name, double acrossCm, double alongCm) {}

    /** Scraps of one size stand in one row, for whichever garments they are. */
    private void addScraps() {
        Map<WantedScrap, List<GarmentWork>> whose = new LinkedHashMap<>();
        Map<WantedScrap, Integer> counts = new HashMap<>();
        for (GarmentWork work : cut.works()) {
            for (ScrapPiece scrap : work.scraps().orElse(List.of())) {
                WantedScrap wanted =
                        new WantedScrap(scrap.name(), Scrap.sideCm(scrap.acrossCm()), Scrap.sideCm(scrap.alongCm()));
                whose.computeIfAbsent(wanted, any -> new ArrayList<>()).add(work);
                counts.merge(wanted, scrap.count() * work.count(), Integer::sum);
            }
        }
        whose.forEach((scrap, works) -> items.add(ShoppingItem.of(
                Kind.SCRAP,
                ofGarments(works, scrap.name()),
                counts.getOrDefault(scrap, 0) + " x, each from a scrap of about " + number(scrap.acrossCm()) + " x "
                        + number(scrap.alongCm()) + " cm",
                scrapReason())));
    }

    private String scrapReason() {
        String same = plan.making()
                .flatMap(Making::smallPieces)
                .map(Shopping::fromTheSame)
                .orElse("");
        return "From thin, firm cloth" + (cut.atAFire() ? " of a fibre no worse near fire" : "") + "." + same
                + " Sizes of the pieces with 2 cm to spare, in steps of 10 cm.";
    }

    private static String fromTheSame(SmallPieces small) {
        if (small.inOffcuts()) {
            return " From the same cloth it lies in what the layout leaves over: nothing more is to buy.";
        }
        return small.buyLengthWithCm()
                .map(cm -> " With all small pieces from the same cloth, buy " + number(cm) + " cm of it.")
                .orElse("");
    }

    private void addNotions() {
        Map<String, List<GarmentWork>> whose = new LinkedHashMap<>();
        for (GarmentWork work : cut.works()) {
            for (String notion : work.notions()) {
                whose.computeIfAbsent(notion, any -> new ArrayList<>()).add(work);
            }
        }
        whose.forEach((notion, works) -> {
            int times = works.stream().mapToInt(GarmentWork::count).sum();
            items.add(ShoppingItem.of(
                    Kind.NOTION,
                    ofGarments(works, notion),
                    times == 1 ? "once" : times + " times",
                    "For each garment. " + ErrandSheet.PRACTICE));
        });
    }

    /** What only some of the garments want is called by them. */
    private String ofGarments(List<GarmentWork> works, String what) {
        return works.containsAll(cut.works())
                ? what
                : works.stream().map(GarmentWork::garment).distinct().collect(Collectors.joining(", ")) + ": " + what;
    }

    private void addSewnIn() {
        for (OutfitPart part : cut.errand().garment().outfit().parts()) {
            if (part.kind().isSewnIn()) {
                items.add(ShoppingItem.of(
                        Kind.SEWN_IN,
                        part.kind().words()
                                + part.cloth().map(cloth -> ", " + cloth.name()).orElse(""),
                        "not reckoned",
                        "It is told to be sewn in; how much of it is needed is not reckoned here."));
            }
        }
    }
}
