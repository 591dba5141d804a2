package campcloth.advice;

import static campcloth.figure.Words.fixed;

import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.comfort.Comfort;
import campcloth.comfort.SpellNeeds;
import campcloth.comfort.Wardrobe;
import campcloth.fire.OutfitAdvice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Layers where no cloth that may be chosen is warm enough in every spell. The comfort model is run again with each garment of
 * the lists on top, the one that adds most first, until the wearer feels neutral or the list is at its end; so the advice can be
 * told as an outfit and gives the figures it promised. How the layers behave at a fire is not judged: their cloth is not known.
 */
final class LayerAdvice {

    private static final List<Kind> BENEATH =
            List.of(Kind.WARM_UNDERWEAR, Kind.SHIRT, Kind.UNDER_TUNIC, Kind.HOSE, Kind.FOOTWEAR, Kind.MITTENS);
    private static final List<Kind> OVER = List.of(Kind.CLOAK, Kind.OVERGARMENT, Kind.HOOD);

    /** A garment that adds less is no layer, clo. */
    private static final double LEAST_WORTH_CLO = 0.04;

    /** Missing less is not missing, clo. */
    private static final double NO_GAP_CLO = 0.005;

    private static final double MOST_ADDED_CLO = 3;
    private static final double TOLERANCE_CLO = 0.005;

    private LayerAdvice() {}

    /** @param weighed the cloths, best first */
    static Optional<Layers> of(List<Weighed> weighed, Question question, Comfort comfort, OutfitAdvice fire) {
        List<Weighed> open = weighed.stream().filter(Weighed::isOpenToChoice).toList();
        boolean oneIsWarm = open.stream()
                .anyMatch(w -> w.gap().filter(gap -> gap.clo() > NO_GAP_CLO).isEmpty());
        if (open.isEmpty() || oneIsWarm) {
            return Optional.empty();
        }
        Weighed best = open.get(0);
        LayeredWear worn = new LayeredWear(comfort, best.facts().cloth(), question.wear(), question.outfit());
        return best.gap()
                .map(gap -> layers(best, worn, gap, new PairSearch(question, comfort, fire).best(open, weighed)));
    }

    private static Layers layers(Weighed best, LayeredWear worn, ColdGap gap, Optional<LayerPair> pair) {
        List<AddedLayer> base = added(worn, gap.spell(), BENEATH);
        List<AddedLayer> outer = added(worn, gap.spell(), OVER);
        Optional<Double> mustAdd = mustAdd(worn);
        return new Layers(
                best.judged().candidate().id(),
                gap.spell().spell().name(),
                gap.clo(),
                mustAdd,
                base,
                outer,
                pair,
                because(gap, mustAdd) + proposed(worn, base, outer) + atFire(worn));
    }

    private record Proposal(Kind kind, double listedClo, double addsClo) {}

    /** What of these kinds is not worn yet, what adds most first. What somebody said they wear is not replaced. */
    private static List<Proposal> proposals(Wardrobe wardrobe, List<Kind> kinds) {
        return kinds.stream()
                .filter(kind -> !wardrobe.isTold(kind))
                .map(kind ->
                        new Proposal(kind, Wardrobe.warmestClo(kind), Wardrobe.warmestClo(kind) - wardrobe.clo(kind)))
                .filter(proposal -> proposal.addsClo >= LEAST_WORTH_CLO)
                .sorted(Comparator.comparingDouble(Proposal::addsClo).reversed())
                .toList();
    }

    private static List<AddedLayer> added(LayeredWear start, SpellNeeds coldest, List<Kind> kinds) {
        Wardrobe before = start.wardrobe(coldest);
        List<AddedLayer> added = new ArrayList<>();
        LayeredWear worn = start;
        for (Proposal proposal : proposals(before, kinds)) {
            Optional<LayeredWear> more =
                    worn.with(new OutfitPart(proposal.kind, Optional.empty(), Optional.of(proposal.listedClo)));
            Optional<ColdGap> gap = more.flatMap(LayeredWear::gap);
            if (more.isEmpty() || gap.isEmpty()) {
                break;
            }
            worn = more.get();
            added.add(new AddedLayer(
                    proposal.kind,
                    name(proposal, before),
                    proposal.listedClo,
                    proposal.addsClo,
                    gap.get().clo(),
                    gap.get().closes()));
            if (gap.get().closes() == Closes.NEUTRAL) {
                break;
            }
        }
        return added;
    }

    private static String name(Proposal proposal, Wardrobe before) {
        boolean inPart = before.clo(proposal.kind) > 0;
        return switch (proposal.kind) {
            case WARM_UNDERWEAR ->
                inPart ? "warm undershirt, beside the warm under-hose" : "warm undershirt and under-hose";
            case SHIRT -> "long-sleeved shirt";
            case UNDER_TUNIC -> "woollen under-tunic";
            case HOSE -> inPart ? "thick hose in place of thin" : "thick hose";
            case FOOTWEAR -> "boots and knee socks";
            case OVERGARMENT -> "light overgarment";
            case CLOAK -> "cloak to the calf, of cloth 2 mm thick";
            case HOOD -> "hood with a shoulder cape";
            case MITTENS, LINING, WADDING, INTERLINING, TRIM, THREAD -> proposal.kind.words();
        };
    }

    /** Garment insulation to add, wherever it is worn: beneath, so that it does not change what meets the wind. */
    private static Optional<Double> mustAdd(LayeredWear worn) {
        if (missing(worn, MOST_ADDED_CLO) > 0) {
            return Optional.empty();
        }
        double tooLittle = 0;
        double enough = MOST_ADDED_CLO;
        while (enough - tooLittle > TOLERANCE_CLO) {
            double middle = (tooLittle + enough) / 2;
            if (missing(worn, middle) > 0) {
                tooLittle = middle;
            } else {
                enough = middle;
            }
        }
        return Optional.of(enough);
    }

    private static double missing(LayeredWear worn, double addedClo) {
        return worn.withMoreBeneath(addedClo).gap().map(ColdGap::clo).orElse(Double.POSITIVE_INFINITY);
    }

    private static String because(ColdGap gap, Optional<Double> mustAdd) {
        return "In \"" + gap.spell().spell().name() + "\" " + fixed(gap.clo(), 2)
                + " clo are missing with the best of these cloths, and none of them is warm enough alone. "
                + mustAdd.map(clo -> "Garments of " + fixed(clo, 2)
                                + " clo more would meet the need: wind and overlap take the" + " rest of it.")
                        .orElse("Even garments of " + fixed(MOST_ADDED_CLO, 0) + " clo more would be too little.");
    }

    private static String proposed(LayeredWear worn, List<AddedLayer> base, List<AddedLayer> outer) {
        return told(" Beneath it and on legs, feet and hands: ", base)
                + told(" Over it: ", outer)
                + together(worn, base, outer);
    }

    private static String atFire(LayeredWear worn) {
        return worn.comfort().needs().stream()
                        .anyMatch(need -> need.spell().fireInUse().isPresent())
                ? " At the fire the cloth of every layer counts: ask for it, too, before you wear it."
                : "";
    }

    private static String told(String where, List<AddedLayer> layers) {
        if (layers.isEmpty()) {
            return "";
        }
        AddedLayer last = layers.get(layers.size() - 1);
        return where
                + layers.stream()
                        .map(layer -> layer.name() + " (" + fixed(layer.addsClo(), 2) + " clo more)")
                        .collect(Collectors.joining(" + "))
                + ": " + last.closes().words()
                + stillMissing(last.gapClo()) + ".";
    }

    /** Both lists, where neither alone is enough; and what else to do where not even that is. */
    private static String together(LayeredWear worn, List<AddedLayer> base, List<AddedLayer> outer) {
        if (meets(base) || meets(outer)) {
            return "";
        }
        LayeredWear all = worn;
        for (AddedLayer layer : Stream.concat(outer.stream(), base.stream()).toList()) {
            all = all.with(part(layer)).orElse(all);
        }
        String both = base.isEmpty() || outer.isEmpty()
                ? ""
                : all.gap()
                        .map(gap -> " All together: " + gap.closes().words() + stillMissing(gap.clo()) + ".")
                        .orElse("");
        boolean enough = all.gap().filter(gap -> gap.closes() == Closes.NEUTRAL).isPresent();
        return both + (enough ? "" : " Move, warm up in between, stay shorter.");
    }

    private static String stillMissing(double clo) {
        return clo > 0 ? ", " + fixed(clo, 2) + " clo stay missing" : "";
    }

    private static boolean meets(List<AddedLayer> layers) {
        return !layers.isEmpty() && layers.get(layers.size() - 1).closes() == Closes.NEUTRAL;
    }

    private static OutfitPart part(AddedLayer layer) {
        return new OutfitPart(layer.kind(), Optional.empty(), Optional.of(layer.insulationClo()));
    }
}
