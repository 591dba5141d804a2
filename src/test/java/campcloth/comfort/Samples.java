package campcloth.comfort;

import campcloth.cloth.Cloth;
import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.Wear;
import campcloth.cloth.Weave;
import campcloth.event.Activity;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.fibre.FibreFamily;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.Map;
import java.util.Optional;

/** Cloths and spells of the Wendlow river camp. */
final class Samples {

    static final Wear OUTER_TUNIC = new Wear(false, Layer.OUTER, Fit.LOOSE, false, 65, 2.6);
    static final Wear SHIRT = new Wear(true, Layer.SKIN, Fit.LOOSE, false, 65, 2.4);

    private Samples() {}

    /** Cloth as comfort sees it: of the fibre nothing but its name matters here. */
    static Cloth cloth(String name, Figure thicknessMm, Figure permeabilityMmS, Figure vapourM2PaW) {
        Figure one = Figure.exact(1, Basis.TYPICAL, "sample");
        Fibre fibre = new Fibre(
                "wool",
                "wool",
                FibreFamily.values()[0],
                Optional.empty(),
                one,
                one,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "chars");
        return new Cloth(
                name,
                Blend.pure(fibre),
                Weave.PLAIN,
                Surface.PLAIN,
                Finish.NONE,
                false,
                false,
                Map.of(
                        Property.THICKNESS_MM, thicknessMm,
                        Property.AIR_PERMEABILITY_MM_S, permeabilityMmS,
                        Property.VAPOUR_RESISTANCE_M2PA_W, vapourM2PaW),
                "");
    }

    static Cloth cloth(String name, double thicknessMm, double permeabilityMmS, double vapourM2PaW) {
        return cloth(name, exact(thicknessMm), exact(permeabilityMmS), exact(vapourM2PaW));
    }

    static Figure exact(double value) {
        return Figure.exact(value, Basis.TYPICAL, "sample");
    }

    static Figure between(double low, double value, double high) {
        return new Figure(value, low, high, Basis.ESTIMATED, "sample");
    }

    static Spell spell(double airC, double humidity, double windMs, Sun sun, Activity activity) {
        return new Spell("Wendlow", 3, airC, humidity, windMs, sun, activity, Optional.empty());
    }
}
