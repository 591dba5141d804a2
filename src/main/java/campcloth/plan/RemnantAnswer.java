package campcloth.plan;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.garment.Design;
import campcloth.garment.Designs;
import campcloth.garment.Saving;
import campcloth.layout.Effort;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Whether a piece of cloth at hand is enough, and if not, which changes make it so. Each change named was laid out and
 * fits; a change that is not named may still fit in a better layout, unless the bound rules it out.
 */
final class RemnantAnswer {

    private static final double TOUCH_CM = 1e-6;
    private static final Search QUICK = Search.of(new Effort(0.05, 1));
    private static final double[] SMALLER_BY_CM = {2, 3, 4, 5, 8, 10, 15, 20, 30};
    private static final double[] SEAMS_CM = {1.8, 1.5, 1.2};
    private static final double[] HEMS_CM = {4, 3, 2};
    private static final int MOST_PIECES_TO_TRY = 60;

    private static final String SEAMS = " cm at the seams (option " + Design.SEAM_ALLOWANCE + ").";
    private static final String HEMS = " cm at the hem (option " + Design.HEM_ALLOWANCE + ").";
    private static final String HEMS_AND_CUFFS =
            " cm at hem and cuffs (options " + Design.HEM_ALLOWANCE + " and " + Design.CUFF_ALLOWANCE + ").";
    /** Project choice: what is cut down by more than this share of its size is another garment. */
    private static final double MOST_SHARE = 1.0 / 3;

    private final CuttingOrder order;
    private final CutPieces pieces;
    private final CuttingPlanner.Laid laid;

    RemnantAnswer(CuttingOrder order, CutPieces pieces, CuttingPlanner.Laid laid) {
        this.order = order;
        this.pieces = pieces;
        this.laid = laid;
    }

    Optional<CuttingPlan.Remnant> answer() {
        return order.remnantLengthCm().map(this::answerFor);
    }

    private CuttingPlan.Remnant answerFor(double remnantCm) {
        double lengthCm = order.cloth().cutLengthCm(remnantCm);
        double neededCm = laid.chosen().lengthCm();
        String has = "it gives " + Words.fixed(lengthCm, 1) + " cm"
                + (order.cloth().isWashedFirst() ? " after the wash" : "") + ", the layout takes "
                + Words.fixed(neededCm, 1) + " cm";
        if (neededCm <= lengthCm + TOUCH_CM) {
            return new CuttingPlan.Remnant(
                    lengthCm, true, 0, "It is enough: " + has + left(lengthCm - neededCm), List.of());
        }
        String certain = laid.lowerBoundCm() > lengthCm + TOUCH_CM
                ? " and no layout can take less than " + Words.fixed(laid.lowerBoundCm(), 1) + " cm"
                : "; no shorter layout was found, which does not rule one out";
        return new CuttingPlan.Remnant(
                lengthCm, false, neededCm - lengthCm, "It is not enough: " + has + certain + ".", wouldHelp(lengthCm));
    }

    /** What the layout leaves of the remnant. */
    private static String left(double leftCm) {
        return "; " + Words.fixed(Math.max(0, leftCm), 1) + " cm are left over"
                + (leftCm < CuttingOrder.SQUARING_CM ? ", which is little for squaring the cut ends." : ".");
    }

    /** The gentlest changes first, of each kind the least one that does. */
    private List<String> wouldHelp(double lengthCm) {
        List<String> help = new ArrayList<>();
        if (laid.chosen().pieces().size() > MOST_PIECES_TO_TRY) {
            return help;
        }
        if (laid.open().lengthCm() <= lengthCm + TOUCH_CM) {
            help.add("Cut it open in one layer: that takes "
                    + Words.fixed(laid.open().lengthCm(), 1) + " cm.");
        }
        addNarrowerAllowances(help, lengthCm);
        addShorterPieces(help, lengthCm);
        TooNarrow.narrower(order)
                .filter(narrower -> fits(narrower.order(), lengthCm))
                .ifPresent(narrower -> help.add(sentence(narrower.how())));
        savings().forEach(saving -> addSmaller(help, lengthCm, saving));
        OtherCuts.of(order).stream()
                .filter(other -> fits(other.order(), lengthCm))
                .forEach(other -> help.add(sentence(other.how())));
        return help;
    }

    /** Each size that can be cut down, once for all garments that have it. */
    private List<Saving> savings() {
        Map<String, Saving> savings = new LinkedHashMap<>();
        pieces.garments()
                .forEach(madeUp ->
                        madeUp.garment().savings().forEach(s -> savings.merge(s.measurement(), s, Saving::together)));
        return List.copyOf(savings.values());
    }

    private void addSmaller(List<String> help, double lengthCm, Saving saving) {
        addFirst(
                help,
                lengthCm,
                Arrays.stream(SMALLER_BY_CM)
                        .filter(cm -> cm <= MOST_SHARE * saving.sizeCm())
                        .toArray(),
                cm -> Changed.each(order, pieces, madeUp -> smaller(madeUp, saving, cm)),
                cm -> "Make the " + saving.part() + " " + Words.number(cm) + " cm "
                        + saving.kind().words() + (saving.kind() == Saving.Kind.NARROWER ? " round." : "."));
    }

    private static CuttingOrder.Line smaller(CutPieces.MadeUp madeUp, Saving saving, double byCm) {
        return madeUp.garment().savings().stream()
                .filter(own -> own.measurement().equals(saving.measurement()))
                .findFirst()
                .map(own -> Changed.smaller(madeUp.line(), own, byCm))
                .orElse(madeUp.line());
    }

    private void addNarrowerAllowances(List<String> help, double lengthCm) {
        int before = help.size();
        addFirst(help, lengthCm, SEAMS_CM, this::withSeams, cm -> "Leave " + Words.number(cm) + SEAMS);
        addFirst(help, lengthCm, HEMS_CM, this::withHems, cm -> "Leave " + Words.number(cm) + hemsWords());
        if (help.size() == before) {
            double seamCm = SEAMS_CM[SEAMS_CM.length - 1];
            addFirst(
                    help,
                    lengthCm,
                    HEMS_CM,
                    cm -> hems(withSeams(seamCm), cm),
                    cm -> "Leave " + Words.number(seamCm) + " cm at the seams and " + Words.number(cm) + hemsWords());
        }
    }

    private String hemsWords() {
        return hasOption(Design.CUFF_ALLOWANCE) ? HEMS_AND_CUFFS : HEMS;
    }

    private boolean hasOption(String key) {
        return order.garments().stream()
                .flatMap(line -> Designs.named(line.design()).options().stream())
                .anyMatch(option -> option.key().equals(key));
    }

    /** Bands in pieces that are no longer than the piece at hand. */
    private void addShorterPieces(List<String> help, double lengthCm) {
        double longestCm = Math.floor(lengthCm);
        String key = Design.LONGEST_PIECE;
        if (hasOption(key)
                && fits(Changed.each(order, pieces, m -> Changed.option(m.line(), key, longestCm)), lengthCm)) {
            help.add("Cut the bands in pieces of at most " + Words.number(longestCm) + " cm (option " + key + ").");
        }
    }

    private CuttingOrder withSeams(double cm) {
        return Changed.each(order, pieces, madeUp -> Changed.option(madeUp.line(), Design.SEAM_ALLOWANCE, cm));
    }

    private CuttingOrder withHems(double cm) {
        return hems(order, cm);
    }

    private static CuttingOrder hems(CuttingOrder order, double cm) {
        return order.with(order.garments().stream()
                .map(line -> Changed.option(Changed.option(line, Design.HEM_ALLOWANCE, cm), Design.CUFF_ALLOWANCE, cm))
                .toList());
    }

    /** Adds the first of the steps that fits, where one does. */
    private static void addFirst(
            List<String> help,
            double lengthCm,
            double[] steps,
            DoubleFunction<CuttingOrder> changed,
            DoubleFunction<String> words) {
        Arrays.stream(steps)
                .filter(cm -> fits(changed.apply(cm), lengthCm))
                .boxed()
                .findFirst()
                .ifPresent(cm -> help.add(words.apply(cm)));
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }

    /** Whether a changed order is possible at all and lies on the remnant. */
    private static boolean fits(CuttingOrder changed, double lengthCm) {
        try {
            CutPieces pieces = CutPieces.of(changed);
            return !TooNarrow.isTooNarrow(changed, pieces)
                    && pieces.areaCm2()
                            <= (lengthCm + TOUCH_CM) * changed.cloth().usableWidthCm()
                    && CuttingPlanner.laid(changed, pieces, QUICK).chosen().lengthCm() <= lengthCm + TOUCH_CM;
        } catch (Refused notPossible) {
            return false;
        }
    }
}
