package campcloth.advice;

import static campcloth.figure.Words.fixed;

import campcloth.cloth.Cloth;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.cloth.Property;
import campcloth.cloth.Wear;
import campcloth.comfort.Comfort;
import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort;
import campcloth.comfort.SpellNeeds;
import campcloth.fire.FireJudgement.Gate;
import campcloth.fire.OutfitAdvice;
import campcloth.fire.WornCloth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Two cloths for a hot day and a cold night: one for the garment, worn alone in the heat, one for a cloak over it in the cold. Of
 * the coolest cloths the best ranked are tried with the thickest, tightest cloths that are heavy enough for a cloak and that fire
 * and rules let pass as a loose outer layer; the pair that meets the cold best wins, the cooler garment among equals. A bounded
 * search: not every pair is tried (project choice).
 *
 * <p>Hot is a spell in which an ordinary winter cloth wets the skin more than is comfortable; cold one in which the best ranked cloth
 * alone leaves insulation missing.
 */
final class PairSearch {

    /** A cloak of half a circle, as fire meets it. */
    private static final Wear CLOAK = new Wear(false, Layer.OUTER, Fit.LOOSE, false, 65, 3.5);

    /** Lighter cloth hangs badly as a cloak and keeps little: project choice, g/m2. */
    private static final double LEAST_CLOAK_GSM = 280;

    private static final int GARMENTS = 5;
    private static final int CLOAKS = 8;

    /** Where comfort ends, over the comfortable wettedness. */
    private static final double HOT = 1;

    private static final double NEARLY = 1.1;

    private final Question question;
    private final Comfort comfort;
    private final OutfitAdvice fire;

    PairSearch(Question question, Comfort comfort, OutfitAdvice fire) {
        this.question = question;
        this.comfort = comfort;
        this.fire = fire;
    }

    private record Choice(Weighed garment, Candidate cloak, double heat, ColdGap gap) {

        static final Comparator<Choice> BEST = Comparator.comparing((Choice c) -> c.gap.closes())
                .reversed()
                .thenComparingDouble(c -> c.gap.closes() == Closes.NEUTRAL ? 0 : c.gap.clo())
                .thenComparingDouble(Choice::heat)
                .thenComparing(c -> c.garment.judged().candidate().id())
                .thenComparing(c -> c.cloak.id());
    }

    /**
     * @param open cloths that may be chosen for the garment, best first
     * @param all the cloths of the question: of what is ruled out for a garment a cloak may be made
     */
    Optional<LayerPair> best(List<Weighed> open, List<Weighed> all) {
        Weighed first = open.get(0);
        List<Integer> hot = hot(first.facts().bounds().heavy());
        List<SpellNeeds> cold = cold(first, hot);
        boolean hasCloak = question.outfit().has(Kind.CLOAK)
                && comfort.wearing(question.outfit()).dressings(question.wear()).stream()
                        .anyMatch(dressing -> dressing.wardrobe().isTold(Kind.CLOAK));
        if (hot.isEmpty() || cold.isEmpty() || hasCloak) {
            return Optional.empty();
        }
        List<Weighed> garments = coolest(open, hot);
        List<Choice> choices = new ArrayList<>();
        for (Candidate cloak : cloaks(all)) {
            for (Weighed garment : garments) {
                gap(garment, cloak, cold::contains)
                        .ifPresent(gap -> choices.add(
                                new Choice(garment, cloak, heat(garment.facts().spells(), hot), gap)));
            }
        }
        return choices.stream().min(Choice.BEST).map(PairSearch::told);
    }

    /** As cool as comfort asks, or nearly as cool as the coolest of all where none is; of these the best ranked. */
    private static List<Weighed> coolest(List<Weighed> open, List<Integer> hot) {
        double least = open.stream()
                .mapToDouble(w -> heat(w.facts().spells(), hot))
                .min()
                .orElseThrow();
        double most = Math.max(HOT, NEARLY * least);
        return open.stream()
                .filter(w -> heat(w.facts().spells(), hot) <= most)
                .limit(GARMENTS)
                .toList();
    }

    private Optional<ColdGap> gap(Weighed garment, Candidate cloak, Predicate<SpellNeeds> cold) {
        OutfitPart part = new OutfitPart(Kind.CLOAK, Optional.of(cloak.cloth()), Optional.empty());
        return new LayeredWear(comfort, garment.facts().cloth(), question.wear(), question.outfit())
                .with(part)
                .flatMap(worn -> worn.gap(cold));
    }

    private static List<Integer> hot(List<SpellComfort> heavy) {
        return IntStream.range(0, heavy.size())
                .filter(i -> ratio(heavy.get(i)).filter(r -> r > HOT).isPresent())
                .boxed()
                .toList();
    }

    private static List<SpellNeeds> cold(Weighed best, List<Integer> hot) {
        List<SpellComfort> spells = best.facts().spells();
        return IntStream.range(0, spells.size())
                .filter(i -> !hot.contains(i))
                .mapToObj(spells::get)
                .filter(s -> s.warmth()
                        .marginClo()
                        .inRange()
                        .filter(m -> m.value() < 0)
                        .isPresent())
                .map(SpellComfort::needs)
                .toList();
    }

    private static double heat(List<SpellComfort> spells, List<Integer> hot) {
        double hours = 0;
        double sum = 0;
        for (int i : hot) {
            double h = spells.get(i).needs().spell().hours();
            hours += h;
            sum += h * ratio(spells.get(i)).orElse(0.0);
        }
        return sum / hours;
    }

    private static Optional<Double> ratio(SpellComfort spell) {
        return spell.heat()
                .wettednessAsked()
                .inRange()
                .map(Value::value)
                .map(asked -> asked / spell.heat().wettednessCeiling());
    }

    private record Cloaking(Candidate cloak, Gate gate, double thicknessMm, double permeabilityMmS) {

        static final Comparator<Cloaking> BEST = Comparator.comparing(Cloaking::gate)
                .thenComparing(Comparator.comparingDouble(Cloaking::thicknessMm).reversed())
                .thenComparingDouble(Cloaking::permeabilityMmS)
                .thenComparing(c -> c.cloak.id());
    }

    private List<Candidate> cloaks(List<Weighed> all) {
        return all.stream()
                .map(this::cloaking)
                .flatMap(Optional::stream)
                .sorted(Cloaking.BEST)
                .limit(CLOAKS)
                .map(Cloaking::cloak)
                .toList();
    }

    /** As a cloak; empty where the cloth is no cloth for one or fire or a rule forbids it. */
    private Optional<Cloaking> cloaking(Weighed weighed) {
        Cloth cloth = weighed.facts().cloth();
        if (cloth.required(Property.WEIGHT_GSM).value() < LEAST_CLOAK_GSM) {
            return Optional.empty();
        }
        Gate gate = fire.gate(WornCloth.of(cloth, CLOAK), Outfit.UNTOLD, question.event());
        return gate == Gate.RULED_OUT
                ? Optional.empty()
                : Optional.of(new Cloaking(
                        weighed.judged().candidate(),
                        gate,
                        cloth.required(Property.THICKNESS_MM).value(),
                        cloth.required(Property.AIR_PERMEABILITY_MM_S).value()));
    }

    private static LayerPair told(Choice choice) {
        String garment = choice.garment.judged().candidate().cloth().name();
        String heat = choice.heat <= HOT
                ? "comfortable in the heat"
                : "wetter than comfortable in the heat, as in the coolest of these cloths";
        String because = "By day " + garment + " alone: " + heat + " (" + fixed(choice.heat, 2)
                + " of the comfortable wettedness). In the cold a cloak of "
                + choice.cloak.cloth().name() + " over it: "
                + choice.gap.closes().words()
                + (choice.gap.clo() > 0
                        ? ", " + fixed(choice.gap.clo(), 2) + " clo stay missing in \""
                                + choice.gap.spell().spell().name() + "\""
                        : "")
                + ". Fire and the rules on file do not rule out either.";
        return new LayerPair(
                choice.garment.judged().candidate().id(),
                choice.cloak.id(),
                choice.heat,
                choice.gap.clo(),
                choice.gap.closes(),
                because);
    }
}
