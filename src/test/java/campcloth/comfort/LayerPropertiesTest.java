package campcloth.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Cloth;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.cloth.Wear;
import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort.Warmth;
import campcloth.comfort.SpellComfort.WetLoss;
import campcloth.event.Activity;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.event.Wetness;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What must hold of layers and of wet clothes in any weather; cases are generated, a failure tells its seed and its case. */
class LayerPropertiesTest {

    private static final long SEED = 1_386L;
    private static final int CASES = 1_500;

    private final SplittableRandom random = new SplittableRandom(SEED);

    @Test
    void aLayerMoreIsNeverColder() {
        for (int i = 0; i < CASES; i++) {
            Comfort comfort = Comfort.in(List.of(spell(Optional.empty())));
            List<OutfitPart> parts = parts();
            Kind added = Kind.values()[random.nextInt(Kind.values().length)];
            // Saying that something is worn takes the place of what is presumed of its kind, so both sides say so of
            // it.
            parts.add(new OutfitPart(added, Optional.empty(), Optional.of(0.0)));
            List<OutfitPart> more = new ArrayList<>(parts);
            more.add(part(added));
            Wear wear = random.nextBoolean() ? Samples.OUTER_TUNIC : Samples.SHIRT;
            Cloth cloth = cloth();
            assertThat(clo(comfort, more, cloth, wear))
                    .as(told(i, comfort.needs().get(0).spell(), cloth.figures(), parts, more))
                    .isGreaterThanOrEqualTo(clo(comfort, parts, cloth, wear) - 1e-9);
        }
    }

    @Test
    void aTighterOrThickerCloakIsNeverColder() {
        for (int i = 0; i < CASES; i++) {
            Comfort comfort = Comfort.in(List.of(spell(Optional.empty())));
            Cloth cloth = cloth();
            double thickness = from(0.1, 4);
            double open = from(1, 2000);
            double thicker = thickness + from(0, 2);
            double tighter = open * from(0.01, 1);
            double least = clo(comfort, List.of(cloak(thickness, open)), cloth, Samples.OUTER_TUNIC);
            String which = told(i, comfort.needs().get(0).spell(), cloth.figures(), thickness, open, thicker, tighter);
            assertThat(clo(comfort, List.of(cloak(thicker, open)), cloth, Samples.OUTER_TUNIC))
                    .as(which)
                    .isGreaterThanOrEqualTo(least - 1e-9);
            assertThat(clo(comfort, List.of(cloak(thickness, tighter)), cloth, Samples.OUTER_TUNIC))
                    .as(which)
                    .isGreaterThanOrEqualTo(least - 1e-9);
        }
    }

    @Test
    void wetterIsNeverWarmerAndTellsWhatItCosts() {
        for (int i = 0; i < CASES; i++) {
            Spell dry = spell(Optional.of(Wetness.DRY));
            Cloth cloth = cloth();
            Warmth untold = warmth(with(dry, Optional.empty()), cloth);
            Warmth none = warmth(dry, cloth);
            Warmth damp = warmth(with(dry, Optional.of(Wetness.DAMP)), cloth);
            Warmth wet = warmth(with(dry, Optional.of(Wetness.WET)), cloth);
            String which = told(i, dry, cloth.figures());
            assertThat(none).as(which).isEqualTo(untold);
            assertThat(none.wet()).as(which).isEmpty();
            ordered(which, value(none), value(damp), value(wet));
            WetLoss loss = wet.wet().orElseThrow();
            assertThat(loss.lostClo().value())
                    .as(which)
                    .isCloseTo(value(none).value() - value(wet).value(), within(1e-9));
            assertThat(loss.dryingWm2().low()).as(which).isGreaterThanOrEqualTo(-1e-6);
            assertThat(wet.hoursUntilCooling().inRange().map(Value::value).orElse(0.0))
                    .as(which)
                    .isLessThanOrEqualTo(
                            none.hoursUntilCooling().inRange().map(Value::value).orElse(0.0) + 1e-9);
        }
    }

    private static void ordered(String which, Value dry, Value damp, Value wet) {
        for (End end : End.values()) {
            assertThat(end.of(damp)).as(which).isLessThanOrEqualTo(end.of(dry) + 1e-9);
            assertThat(end.of(wet)).as(which).isLessThanOrEqualTo(end.of(damp) + 1e-6);
            assertThat(end.of(wet)).as(which).isGreaterThanOrEqualTo(0);
        }
    }

    private static Warmth warmth(Spell spell, Cloth cloth) {
        return Comfort.in(List.of(spell)).warmth(cloth, Samples.OUTER_TUNIC).get(0);
    }

    private static double clo(Comfort comfort, List<OutfitPart> parts, Cloth cloth, Wear wear) {
        return value(comfort.wearing(new Outfit(parts)).warmth(cloth, wear).get(0))
                .value();
    }

    private static Value value(Warmth warmth) {
        return warmth.resultantClo().inRange().orElseThrow();
    }

    private List<OutfitPart> parts() {
        List<OutfitPart> parts = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            if (random.nextInt(3) == 0) {
                parts.add(part(kind));
            }
        }
        return parts;
    }

    private OutfitPart part(Kind kind) {
        return switch (random.nextInt(3)) {
            case 0 -> new OutfitPart(kind, Optional.empty(), Optional.empty());
            case 1 -> new OutfitPart(kind, Optional.empty(), Optional.of(from(0, 1)));
            default -> new OutfitPart(kind, Optional.of(cloth()), Optional.empty());
        };
    }

    private static OutfitPart cloak(double thicknessMm, double permeabilityMmS) {
        return new OutfitPart(
                Kind.CLOAK, Optional.of(Samples.cloth("cloak", thicknessMm, permeabilityMmS, 9)), Optional.empty());
    }

    private Cloth cloth() {
        double thickness = from(0.1, 3);
        double open = from(1, 2000);
        return Samples.cloth(
                "case",
                Samples.between(thickness, thickness * 1.2, thickness * 1.5),
                Samples.between(open / 2, open, open * 2),
                Samples.between(2, 5, 12));
    }

    private Spell spell(Optional<Wetness> wet) {
        Activity[] activities = Activity.values();
        return with(
                Samples.spell(
                        from(-20, 40),
                        from(10, 100),
                        from(0, 15),
                        Sun.values()[random.nextInt(3)],
                        activities[random.nextInt(activities.length)]),
                wet);
    }

    private static Spell with(Spell spell, Optional<Wetness> wet) {
        return wet.map(spell::withWet).orElse(spell);
    }

    private double from(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    private static String told(int number, Object... parts) {
        return "seed " + SEED + ", case " + number + ": " + Arrays.toString(parts);
    }
}
