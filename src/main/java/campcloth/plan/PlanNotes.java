package campcloth.plan;

import campcloth.cloth.Finish;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Words;
import campcloth.garment.GarmentPiece;
import campcloth.garment.Needle;
import campcloth.garment.Scrap;
import campcloth.layout.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a maker should know beside the figures of a plan. All of it is common practice, no source, unless one is named. */
final class PlanNotes {

    private PlanNotes() {}

    static List<String> notes(
            CuttingOrder order,
            CutPieces pieces,
            CuttingPlanner.Laid laid,
            RuleOfThumb rule,
            CuttingPlanner.Bought bought,
            Making making) {
        List<String> notes = new ArrayList<>();
        notes.add(order.cloth().washing());
        shrinkage(order.cloth()).ifPresent(notes::add);
        measuredShrinkage(order.cloth()).ifPresent(notes::add);
        addWorstCase(order, bought, notes);
        notes.add(squaring(order, laid, bought));
        bought.nearMiss().ifPresent(notes::add);
        notes.add(folding(laid));
        addRuleOfThumb(order, laid, rule, notes);
        notes.addAll(MakingNotes.notes(making, rule, order.cloth().sewn().isBulky()));
        notes.add(
                order.cloth().nap()
                        ? "The cloth has a nap: every piece lies the same way up."
                        : "Pieces may lie upside down; on cloth with a nap or a pattern that has an up, say so and plan again.");
        notes.add(Neatening.sentence(order.cloth().sewn(), order.particulars().sewnBy()));
        notes.add("At hand: shears kept for cloth, small scissors or an unpicker, pins, chalk, tape measure, "
                + scrap(pieces) + "matching thread"
                + (order.cloth().finish().filter(Finish::closesPores).isPresent()
                        ? "."
                        : ", iron and pressing cloth."));
        notes.addAll(ofTheGarments(pieces));
        return notes;
    }

    /** For the facing of a neck, 2 cm spare, in steps of 10 cm. */
    private static String scrap(CutPieces pieces) {
        return pieces.garments().stream()
                .flatMap(madeUp -> madeUp.garment().smallPieces().stream())
                .filter(piece -> piece.name().equals(Scrap.FACING))
                .map(GarmentPiece::outline)
                .max(Comparator.comparingDouble(Outline::heightCm))
                .map(facing -> "a scrap of about " + Words.number(Scrap.sideCm(facing.widthCm())) + " x "
                        + Words.number(Scrap.sideCm(facing.heightCm())) + " cm for the facing, ")
                .orElse("");
    }

    private static Optional<String> shrinkage(ClothToCut cloth) {
        if (cloth.isNeverWashed()) {
            return Optional.empty();
        }
        String percents = Words.number(cloth.shrinkWarpPercent().value()) + " % along and "
                + Words.number(cloth.shrinkWeftPercent().value()) + " % across";
        return Optional.of(
                cloth.isWashedFirst()
                        ? "Reckoned with " + percents
                                + " of shrinkage in the wash before cutting; lengths and places in the"
                                + " layout are those of the washed cloth."
                        : "Cut without washing first: the garment shrinks when it is washed. For " + percents
                                + " the pieces are cut wider and the hems hold more length, so that it fits afterwards; lengths"
                                + " and places in the layout are those of the unwashed cloth.");
    }

    /** A measured figure is of so many washes, done in one way: what comes after them it does not know. */
    private static Optional<String> measuredShrinkage(ClothToCut cloth) {
        if (cloth.isNeverWashed()) {
            return Optional.empty();
        }
        String sources = Stream.of(cloth.shrinkWarpPercent(), cloth.shrinkWeftPercent())
                .filter(figure -> figure.basis() == Basis.MEASURED)
                .map(Figure::source)
                .distinct()
                .collect(Collectors.joining("; "));
        return sources.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "The shrinkage was measured (" + sources + "): it holds for as many washes as were measured,"
                                + " done the same way. A hotter wash, or one more, can take more than its interval says.");
    }

    private static void addWorstCase(CuttingOrder order, CuttingPlanner.Bought bought, List<String> notes) {
        CuttingPlanner.WorstCase worst = bought.worst();
        Figure warp = order.cloth().shrinkWarpPercent();
        Figure weft = order.cloth().shrinkWeftPercent();
        String most = "Should it shrink as much as " + Words.number(warp.high()) + " % along and "
                + Words.number(weft.high()) + " % across, ";
        if (!worst.fits()) {
            notes.add(most + "the widest piece no longer fits its width: wash a swatch before buying.");
        } else if (worst.buyLengthCm() > bought.lengthCm()) {
            notes.add(
                    most + "you need " + Words.number(worst.buyLengthCm()) + " cm: buy that, or wash a swatch first.");
        }
    }

    private static String squaring(CuttingOrder order, CuttingPlanner.Laid laid, CuttingPlanner.Bought bought) {
        double spareCm =
                bought.lengthCm() - order.cloth().boughtLengthCm(laid.chosen().lengthCm());
        return "For squaring the cut ends " + Words.number(CuttingOrder.SQUARING_CM)
                + " cm are reckoned into the length to buy; with the rounding, " + Words.fixed(spareCm, 1)
                + " cm are over.";
    }

    private static String folding(CuttingPlanner.Laid laid) {
        String open =
                "Open, in one layer, the pieces take " + Words.fixed(laid.open().lengthCm(), 1) + " cm; ";
        String once = "folded once along its length, which is easier to chalk, "
                + laid.folded().map(PlanNotes::cm).orElse("they do not lie on it");
        String twice = laid.twoFolds()
                .map(lay -> "; with both selvedges folded inwards and each piece on a fold, " + cm(lay))
                .orElse("");
        String drawn = switch (laid.lay()) {
            case ONE -> " The layout given is for one fold, shown unfolded.";
            case TWO -> " The layout given is for two folds, shown unfolded.";
            case NONE, ANY -> " The layout given is for open cloth.";
        };
        return open + once + twice + "." + drawn;
    }

    private static String cm(Lay lay) {
        return Words.fixed(lay.lengthCm(), 1) + " cm";
    }

    private static void addRuleOfThumb(
            CuttingOrder order, CuttingPlanner.Laid laid, RuleOfThumb rule, List<String> notes) {
        if (rule.widthLost()) {
            notes.add(
                    "On the cloth as bought front and back would lie side by side; the wash takes so much of the width"
                            + " (" + Words.fixed(order.cloth().usableWidthCm(), 1) + " cm are left) that they do not.");
        }
        double shortCm = order.cloth().boughtLengthCm(laid.chosen().lengthCm()) - rule.roundedCm();
        if (shortCm > 0) {
            notes.add("The rule of thumb (" + rule.words() + ": " + Words.number(rule.roundedCm()) + " cm) falls "
                    + Words.fixed(shortCm, 1) + " cm short: it leaves out seams, hems and shrinkage.");
        }
    }

    private static Set<String> ofTheGarments(CutPieces pieces) {
        Set<String> notes = new LinkedHashSet<>();
        for (CutPieces.MadeUp madeUp : pieces.garments()) {
            String prefix = madeUp.label().isEmpty() ? "" : madeUp.label() + ": ";
            madeUp.garment().notes().forEach(note -> notes.add(prefix + note));
        }
        return notes;
    }

    static List<String> cautions(CuttingOrder order, CutPieces pieces) {
        ClothToCut cloth = order.cloth();
        List<String> cautions = new ArrayList<>();
        for (CutPieces.MadeUp madeUp : pieces.garments()) {
            String prefix = madeUp.label().isEmpty() ? "" : madeUp.label() + ": ";
            madeUp.garment().cautions().forEach(caution -> cautions.add(prefix + caution));
        }
        if (cloth.stretch() || cloth.weave().filter(w -> w.isKnit()).isPresent()) {
            cautions.add("The design is meant for woven cloth that does not stretch: stretch cloth will not keep these"
                    + " sizes, and wants a ball-point needle and a stretch stitch.");
        }
        if (cloth.finish().filter(Finish::closesPores).isPresent()) {
            cautions.add("Coated and waxed cloth keeps every hole: pin inside the seam allowances, no steam, no hot"
                    + " iron; the " + Needle.forWeight(cloth.weightGsm()).nm() + " needle once, without unpicking.");
        }
        cautions.add("Measure the wearer and the " + (cloth.isWashedFirst() ? "washed " : "")
                + "cloth before cutting; where the cloth is dear, sew one of old"
                + " sheets first.");
        cautions.add("Shears, pins, iron and steam hurt: cut away from the body, count the pins, try the iron's heat on"
                + " a scrap, and keep all of it out of children's reach.");
        cautions.add("A cutting plan says nothing of how the cloth behaves near fire: ask the advice for the event, and"
                + " follow what the event, the venue and the law say.");
        return cautions;
    }
}
