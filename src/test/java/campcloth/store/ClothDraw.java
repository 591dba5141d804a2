package campcloth.store;

import campcloth.cloth.Cloth;
import campcloth.cloth.Finish;
import campcloth.cloth.Property;
import campcloth.cloth.ShippedCatalogue;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.fibre.Fibres;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** Draws invented cloths named by trade words and a made-up place; the same seed draws the same. */
final class ClothDraw {

    private static final List<String> KINDS = List.of(
            "shirting",
            "broadcloth",
            "twill",
            "herringbone",
            "canvas",
            "flannel",
            "blanket",
            "melton",
            "serge",
            "gauze");
    private static final List<String> MANNERS = List.of(
            "plain", "washed", "unbleached", "heavy", "fine", "striped", "checked", "brushed", "fulled", "dyed");
    private static final List<String> SYLLABLES =
            List.of("wen", "dlo", "mar", "tas", "bel", "ko", "rin", "os", "tra", "vel", "hum", "sil");

    private final Fibres fibres = ShippedCatalogue.get().fibres();
    private final SplittableRandom random;

    ClothDraw(long seed) {
        this.random = new SplittableRandom(seed);
    }

    Cloth cloth() {
        Map<Property, Figure> figures = new EnumMap<>(Property.class);
        perhaps(figures, Property.WEIGHT_GSM, 40 + random.nextInt(600));
        perhaps(figures, Property.PRICE_PER_METRE, 4 + random.nextInt(90));
        return new Cloth(
                name(),
                blend(),
                one(List.of(Weave.values())),
                one(List.of(Surface.values())),
                one(List.of(Finish.values())),
                random.nextBoolean(),
                random.nextInt(10) == 0,
                figures,
                random.nextInt(3) == 0 ? "Woven in " + place() + " of old." : "");
    }

    String name() {
        return one(MANNERS) + " " + one(KINDS) + " of " + place();
    }

    private String place() {
        return one(SYLLABLES) + one(SYLLABLES) + one(SYLLABLES);
    }

    private Blend blend() {
        Fibre first = one(fibres.all());
        Fibre second = one(fibres.all());
        if (first.equals(second) || random.nextBoolean()) {
            return Blend.pure(first);
        }
        double percent = 1 + random.nextInt(99);
        return new Blend(List.of(new Blend.Share(first, percent), new Blend.Share(second, 100 - percent)));
    }

    private void perhaps(Map<Property, Figure> figures, Property property, double value) {
        if (random.nextInt(10) > 0) {
            figures.put(property, Figure.exact(value, Basis.ESTIMATED, "invented"));
        }
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }
}
