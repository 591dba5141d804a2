package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.Property;
import campcloth.cloth.Wear;
import campcloth.comfort.Comfort;
import campcloth.comfort.SpellComfort;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.List;
import java.util.function.Function;

/**
 * The most that the choice of a cloth can do at an event, in the same garment with the same things worn besides: an airy cloth
 * at one end, a close or a heavy one at the other. Where a cloth lies between them is half of its score for warmth and for heat, since the
 * rest of what is worn decides much of how warm or hot the wearer is, whatever the cloth. Project choice.
 *
 * @param airy how 0.25 mm, 1500 mm/s and 1.2 m2 Pa/W do in each spell: gauze
 * @param close how 3 mm, 20 mm/s and 15 m2 Pa/W do: the heaviest milled wool
 * @param heavy how 2 mm, 120 mm/s and 10 m2 Pa/W do: an ordinary winter cloth, which nobody would choose for the heat
 */
record Bounds(List<SpellComfort> airy, List<SpellComfort> close, List<SpellComfort> heavy) {

    private static final String SOURCE = "project-bounds";

    /**
     * @param any any cloth: only its thickness, permeability and vapour resistance matter, and those are replaced
     */
    static Bounds of(Comfort comfort, Cloth any, Wear wear) {
        return of(any, sheet -> comfort.of(sheet, wear));
    }

    /** As far as {@link Comfort#atBestFigures} tells. */
    static Bounds atBestFigures(Comfort comfort, Cloth any, Wear wear) {
        return of(any, sheet -> comfort.atBestFigures(sheet, wear));
    }

    private static Bounds of(Cloth any, Function<Cloth, List<SpellComfort>> comfort) {
        return new Bounds(
                comfort.apply(sheet(any, 0.25, 1500, 1.2)),
                comfort.apply(sheet(any, 3, 20, 15)),
                comfort.apply(sheet(any, 2, 120, 10)));
    }

    /** A cloth of these figures, known exactly; all else is that of the other. */
    static Cloth sheet(Cloth any, double thicknessMm, double permeabilityMmS, double vapourResistanceM2PaW) {
        return any.with(Property.THICKNESS_MM, exact(thicknessMm))
                .with(Property.AIR_PERMEABILITY_MM_S, exact(permeabilityMmS))
                .with(Property.VAPOUR_RESISTANCE_M2PA_W, exact(vapourResistanceM2PaW));
    }

    private static Figure exact(double value) {
        return Figure.exact(value, Basis.ESTIMATED, SOURCE);
    }

    /** Where a value lies from the worse end (0) to the better (1); 1 where both ends are as good as the same. */
    static double position(double value, double worse, double better, double same) {
        if (Math.abs(better - worse) <= same) {
            return 1;
        }
        return Math.max(0, Math.min(1, (value - worse) / (better - worse)));
    }
}
