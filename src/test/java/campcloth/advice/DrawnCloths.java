package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.Finish;
import campcloth.cloth.FlameTreatment;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** Draws invented cloths: many makes, figures known and not known, with wide and narrow intervals; the same seed draws the same. */
final class DrawnCloths {

    private final List<Fibre> fibres = Camp.CATALOGUE.fibres().all();
    private final List<Cloth> shipped = List.copyOf(Camp.CATALOGUE.cloths().values());
    private final SplittableRandom random;

    DrawnCloths(long seed) {
        this.random = new SplittableRandom(seed);
    }

    Map<String, Cloth> some(int count) {
        Map<String, Cloth> cloths = new LinkedHashMap<>();
        for (int i = 0; i < count; i++) {
            cloths.put("drawn-" + i, random.nextInt(3) == 0 ? varied() : made());
        }
        return cloths;
    }

    /** A cloth of the catalogue with other figures. */
    private Cloth varied() {
        Cloth cloth = shipped.get(random.nextInt(shipped.size()));
        for (Property property : cloth.figures().keySet()) {
            Figure figure = cloth.required(property);
            if (property != Property.PRICE_PER_METRE && figure.low() > 0) {
                cloth = cloth.with(property, around(property, figure.value() * random.nextDouble(0.8, 1.25)));
            }
        }
        return cloth;
    }

    private Cloth made() {
        Map<Property, Figure> figures = new EnumMap<>(Property.class);
        perhaps(figures, Property.WEIGHT_GSM, 9, between(40, 900));
        perhaps(figures, Property.THICKNESS_MM, 4, between(0.1, 6));
        perhaps(figures, Property.AIR_PERMEABILITY_MM_S, 3, between(1, 3000));
        perhaps(figures, Property.VAPOUR_RESISTANCE_M2PA_W, 2, between(1, 200));
        return new Cloth(
                "drawn",
                blend(),
                one(Weave.values()),
                one(Surface.values()),
                one(Finish.values()),
                false,
                random.nextInt(8) == 0,
                figures,
                "",
                random.nextInt(6) == 0 ? one(FlameTreatment.values()) : FlameTreatment.NONE);
    }

    private double between(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    private void perhaps(Map<Property, Figure> figures, Property property, int ofTen, double value) {
        if (random.nextInt(10) < ofTen) {
            figures.put(property, around(property, value));
        }
    }

    private Figure around(Property property, double value) {
        double inRange =
                Math.max(property.range().least(), Math.min(property.range().most(), value));
        double width = random.nextBoolean() ? 1 : random.nextDouble(1, 1.5);
        Basis basis = one(Basis.values());
        return new Figure(
                inRange,
                Math.max(property.range().least(), inRange / width),
                Math.min(property.range().most(), inRange * width),
                basis,
                "drawn");
    }

    private Blend blend() {
        Fibre first = fibres.get(random.nextInt(fibres.size()));
        Fibre second = fibres.get(random.nextInt(fibres.size()));
        if (first.equals(second) || random.nextBoolean()) {
            return Blend.pure(first);
        }
        double percent = 1 + random.nextInt(99);
        return new Blend(List.of(new Blend.Share(first, percent), new Blend.Share(second, 100 - percent)));
    }

    private <T> T one(T[] of) {
        return of[random.nextInt(of.length)];
    }
}
