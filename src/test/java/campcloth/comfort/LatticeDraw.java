package campcloth.comfort;

import campcloth.cloth.Cloth;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.cloth.Property;
import campcloth.cloth.Wear;
import campcloth.event.Activity;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.Sky;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.event.Wetness;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Range;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Draws spells, outfits and cloths over all that may be entered, and as often as at a camp, so that the models hold often enough;
 * the same seed draws the same.
 */
final class LatticeDraw {

    private final SplittableRandom random;

    LatticeDraw(long seed) {
        this.random = new SplittableRandom(seed);
    }

    Spell spell() {
        boolean camp = random.nextInt(4) > 0;
        return new Spell(
                "Wendlow",
                from(0.5, 9),
                camp ? from(-8, 42) : from(-50, 55),
                camp ? from(15, 100) : from(0, 100),
                camp ? from(0, 9) : from(0, 40),
                any(Sun.values()),
                any(Activity.values()),
                coin()
                        ? Optional.empty()
                        : Optional.of(new OpenFire(
                                any(FireRole.values()), Optional.of(from(0.8, 6)), Optional.of(from(5, 200)))),
                coin() ? Optional.empty() : Optional.of(Sky.UNTOLD),
                coin() ? Optional.empty() : Optional.of(any(Wetness.values())));
    }

    Wear wear() {
        return new Wear(
                coin(), any(Layer.values()), any(Fit.values()), coin(), coin() ? 65 : from(5, 95), from(0.5, 5));
    }

    Outfit outfit() {
        return coin()
                ? Outfit.UNTOLD
                : new Outfit(List.of(new OutfitPart(
                        any(new Kind[] {Kind.CLOAK, Kind.OVERGARMENT, Kind.SHIRT, Kind.LINING}),
                        coin() ? Optional.empty() : Optional.of(cloth()),
                        Optional.empty())));
    }

    /** With intervals of its figures, or exact. */
    Cloth cloth() {
        boolean camp = random.nextInt(4) > 0;
        double spread = coin() ? 0 : from(0.05, 0.4);
        double thickness = camp ? between(0.15, 4) : between(0.03, 60);
        double vapour = camp ? thickness * from(3, 9) + from(0, 4) : between(0.1, 1000);
        return Samples.cloth(
                "drawn",
                figure(Property.THICKNESS_MM, thickness, spread),
                figure(Property.AIR_PERMEABILITY_MM_S, camp ? between(5, 2500) : from(0, 10_000), spread),
                figure(Property.VAPOUR_RESISTANCE_M2PA_W, vapour, spread));
    }

    private static Figure figure(Property property, double value, double spread) {
        Range range = property.range();
        return new Figure(
                value,
                Math.max(range.least(), value * (1 - spread)),
                Math.min(range.most(), value * (1 + spread)),
                Basis.ESTIMATED,
                "sample");
    }

    boolean coin() {
        return random.nextBoolean();
    }

    double from(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    /** Even in the logarithm. */
    double between(double least, double most) {
        return Math.exp(from(Math.log(least), Math.log(most)));
    }

    private <T> T any(T[] of) {
        return of[random.nextInt(of.length)];
    }
}
