package campcloth.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.cloth.Wear;
import campcloth.cloth.Weave;
import campcloth.comfort.Comfort;
import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort;
import campcloth.event.Activity;
import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.event.Wetness;
import campcloth.figure.Words;
import campcloth.fire.FireAdvice;
import campcloth.fire.FireJudgement.Gate;
import campcloth.fire.FireRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Layers are proposed where no cloth is warm enough, and following the advice really closes the gap. */
class LayerAdviceTest {

    private static final long SEED = 1_415L;
    private static final Spell COOL_EVENING = spell("evening", 8, 1, Activity.WALKING);
    private static final Spell COLD_WATCH = spell("watch", 4, 3, Activity.STANDING);
    private static final String LINEN = "linen-plain-185-washed";
    private static final String MELTON = "wool-melton-700";

    @Test
    void whereAClothIsWarmEnoughNoLayersAreTold() {
        assertThat(layers(Camp.event(List.of(), Camp.SUMMER_NOON), Outfit.UNTOLD, LINEN, MELTON))
                .isEmpty();
    }

    @Test
    void followingTheAdviceGivesTheFiguresItPromised() {
        SplittableRandom random = new SplittableRandom(SEED);
        int closed = 0;
        for (int i = 0; i < 60; i++) {
            Spell spell = spell("cold", 2 + 16 * random.nextDouble(), 4 * random.nextDouble(), anyOf(random));
            Event event = Camp.event(List.of(), spell);
            Optional<Layers> told = layers(event, Outfit.UNTOLD, LINEN);
            if (told.isEmpty()) {
                continue;
            }
            Layers layers = told.get();
            String which = "seed " + SEED + ", case " + i + ": " + spell + " " + layers;
            for (List<AddedLayer> list : List.of(layers.base(), layers.outer())) {
                List<OutfitPart> worn = new ArrayList<>();
                double before = layers.gapClo();
                for (AddedLayer layer : list) {
                    worn.add(new OutfitPart(layer.kind(), Optional.empty(), Optional.of(layer.insulationClo())));
                    double missing = missingClo(event, new Outfit(worn), LINEN);
                    assertThat(missing)
                            .as(which)
                            .isCloseTo(layer.gapClo(), within(1e-9))
                            .isLessThan(before);
                    assertThat(layer.closes() == Closes.NEUTRAL).as(which).isEqualTo(missing <= 0);
                    before = missing;
                }
                if (before <= 0) {
                    closed++;
                    assertThat(layers(event, new Outfit(worn), LINEN)).as(which).isEmpty();
                }
            }
        }
        assertThat(closed).isGreaterThan(5);
    }

    @Test
    void soMuchMustBeAddedAndNoMore() {
        Event event = Camp.event(List.of(), COOL_EVENING);
        double must =
                layers(event, Outfit.UNTOLD, LINEN).orElseThrow().mustAddClo().orElseThrow();
        assertThat(missingClo(event, undertunic(must), LINEN)).isLessThanOrEqualTo(0);
        assertThat(missingClo(event, undertunic(must - 0.02), LINEN)).isPositive();
    }

    @Test
    void theReasonTellsHowMuchMustBeAddedOrWhatElseToDo() {
        Layers evening = layers(Camp.event(List.of(), COOL_EVENING), Outfit.UNTOLD, LINEN)
                .orElseThrow();
        assertThat(evening.because())
                .contains("Garments of " + Words.fixed(evening.mustAddClo().orElseThrow(), 2) + " clo more");
        Spell vigil = new Spell("vigil", 6, -25, 80, 6, Sun.NONE, Activity.STANDING, Optional.empty());
        Layers bitter =
                layers(Camp.event(List.of(), vigil), Outfit.UNTOLD, LINEN).orElseThrow();
        assertThat(bitter.mustAddClo()).isEmpty();
        assertThat(bitter.because())
                .contains("Even garments of 3 clo more would be too little.")
                .endsWith(" Move, warm up in between, stay shorter.");
    }

    @Test
    void whatIsToldToBeWornIsNotProposedAgain() {
        Event event = Camp.event(List.of(), COLD_WATCH);
        Outfit told = new Outfit(List.of(
                new OutfitPart(Kind.UNDER_TUNIC, Optional.empty(), Optional.of(0.3)),
                new OutfitPart(Kind.FOOTWEAR, Optional.empty(), Optional.of(0.0))));
        Layers layers = layers(event, told, LINEN).orElseThrow();
        assertThat(layers.base()).extracting(AddedLayer::kind).doesNotContain(Kind.UNDER_TUNIC);
        assertThat(layers.base()).extracting(AddedLayer::kind).contains(Kind.FOOTWEAR);
    }

    @Test
    void moreIsWornThanNothingToldAndAsksForLess() {
        Event event = Camp.event(List.of(), COLD_WATCH);
        double bare = layers(event, Outfit.UNTOLD, LINEN).orElseThrow().gapClo();
        double dressed = layers(event, undertunic(0.5), LINEN).orElseThrow().gapClo();
        assertThat(dressed).isLessThan(bare - 0.2);
    }

    /** By day the garment is as cool as told; by night the cloak closes what it says, and fire lets both pass. */
    @Test
    void thePairServesTheHotDayAndTheColdNight() {
        Event event = Camp.event(
                List.of(Camp.NO_SYNTHETICS_WITHIN_3_M),
                Camp.SUMMER_NOON,
                Camp.fireside(FireRole.SEATED, 2),
                COOL_EVENING);
        Ranking ranking =
                ranked(event, Outfit.UNTOLD, Camp.CATALOGUE.cloths().keySet().toArray(new String[0]));
        LayerPair pair = ranking.layers().flatMap(Layers::pair).orElseThrow();
        Comfort comfort = Comfort.in(event.spells());
        Cloth garment = Estimates.complete(cloth(pair.garmentId()));
        SpellComfort noon = comfort.of(garment, Camp.TUNIC).get(0);
        assertThat(value(noon) / noon.heat().wettednessCeiling()).isCloseTo(pair.heat(), within(1e-9));
        Outfit cloaked =
                new Outfit(List.of(new OutfitPart(Kind.CLOAK, Optional.of(cloth(pair.cloakId())), Optional.empty())));
        double[] alone = missing(comfort, garment);
        double[] over = missing(comfort.wearing(cloaked), garment);
        assertThat(Math.max(over[1], over[2])).isCloseTo(pair.gapClo(), within(1e-9));
        assertThat(over[1]).isLessThan(alone[1] - 0.2);
        assertThat(over[2]).isLessThan(alone[2] - 0.2);
        assertThat(pair.closes() == Closes.NEUTRAL).isEqualTo(Math.max(over[1], over[2]) <= 0);
        FireAdvice fire = new FireAdvice(new FireRules(Camp.CATALOGUE.fibres()));
        Wear cloak = new Wear(false, Layer.OUTER, Fit.LOOSE, false, 65, 3.5);
        for (String id : List.of(pair.garmentId(), pair.cloakId())) {
            assertThat(fire.judge(Estimates.complete(cloth(id)), cloak, event).gate())
                    .isNotEqualTo(Gate.RULED_OUT);
        }
    }

    /** A fleece of polyester is the warmer cloak, but a fire within reach rules it out. */
    @Test
    void aClothRuledOutAtTheFireIsNoCloak() {
        Spell away = spell("night", 12, 1, Activity.SEATED);
        Spell near = Camp.fireside(FireRole.COOKING, 0.8);
        String fleece = Camp.CATALOGUE.cloths().entrySet().stream()
                .filter(e -> e.getValue().blend().percentOf("polyester") == 100
                        && e.getValue().weave() == Weave.FLEECE)
                .map(Map.Entry::getKey)
                .sorted()
                .reduce((a, b) -> b)
                .orElseThrow();
        assertThat(pair(Camp.event(List.of(), Camp.SUMMER_NOON, away), LINEN, fleece)
                        .map(LayerPair::cloakId))
                .hasValue(fleece);
        assertThat(pair(Camp.event(List.of(), Camp.SUMMER_NOON, near), LINEN, fleece))
                .isEmpty();
    }

    @Test
    void withoutAHotDayThereIsNoPair() {
        assertThat(pair(Camp.event(List.of(), COLD_WATCH), LINEN, MELTON)).isEmpty();
        assertThat(layers(Camp.event(List.of(), COLD_WATCH), Outfit.UNTOLD, LINEN, MELTON))
                .isPresent();
    }

    @Test
    void wetClothesAreToldOnlyWhereSomebodySaysSo() {
        assertThat(Camp.judged(cloth(LINEN), Camp.event(List.of(), COLD_WATCH)).wet())
                .isEmpty();
        Spell soaked =
                new Spell("watch", 4, 4, 85, 3, Sun.NONE, Activity.STANDING, Optional.empty()).withWet(Wetness.WET);
        Judged judged = Camp.judged(cloth(LINEN), Camp.event(List.of(), soaked));
        assertThat(judged.wet()).singleElement().satisfies(wet -> {
            assertThat(wet.spell()).isEqualTo("watch");
            assertThat(wet.loss().lostClo().low()).isPositive();
        });
        assertThat(Camp.assessment(judged, "warmth").because()).contains("Being wet costs");
    }

    private static Activity anyOf(SplittableRandom random) {
        return List.of(Activity.STANDING, Activity.WALKING, Activity.WORKING).get(random.nextInt(3));
    }

    private static Spell spell(String name, double airC, double windMs, Activity activity) {
        return new Spell(name, 3, airC, 80, windMs, Sun.NONE, activity, Optional.empty());
    }

    private static Outfit undertunic(double clo) {
        return new Outfit(List.of(new OutfitPart(Kind.UNDER_TUNIC, Optional.empty(), Optional.of(clo))));
    }

    private static Optional<LayerPair> pair(Event event, String... ids) {
        return layers(event, Outfit.UNTOLD, ids).flatMap(Layers::pair);
    }

    private static Optional<Layers> layers(Event event, Outfit outfit, String... ids) {
        return ranked(event, outfit, ids).layers();
    }

    private static Ranking ranked(Event event, Outfit outfit, String... ids) {
        List<Candidate> candidates =
                List.of(ids).stream().map(id -> new Candidate(id, cloth(id))).toList();
        return Camp.ADVISER.rank(new Question(event, Camp.TUNIC, Camp.TUNIC, outfit, candidates));
    }

    private static Cloth cloth(String id) {
        return Optional.ofNullable(Camp.CATALOGUE.cloths().get(id)).orElseThrow();
    }

    private static double missingClo(Event event, Outfit outfit, String id) {
        return missing(Comfort.in(event.spells()).wearing(outfit), Estimates.complete(cloth(id)))[0];
    }

    private static double[] missing(Comfort comfort, Cloth cloth) {
        return comfort.of(cloth, Camp.TUNIC).stream()
                .mapToDouble(
                        s -> -s.warmth().marginClo().inRange().orElseThrow().value())
                .toArray();
    }

    private static double value(SpellComfort spell) {
        return spell.heat().wettednessAsked().inRange().map(Value::value).orElseThrow();
    }
}
