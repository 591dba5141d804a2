package campcloth.cloth;

import campcloth.fibre.Blend;

/**
 * What a cloth is made of and how, without any figure: with its mass all that fire and rules ask of it. Many cloths share one.
 *
 * @param blend what it is made of
 * @param weave how it is bound
 * @param surface plain or raised
 * @param finish what was done to it
 * @param stretch whether it stretches
 * @param flameTreatment what was said of a treatment against flame
 */
public record ClothMake(
        Blend blend, Weave weave, Surface surface, Finish finish, boolean stretch, FlameTreatment flameTreatment) {

    public static ClothMake of(Cloth cloth) {
        return new ClothMake(
                cloth.blend(), cloth.weave(), cloth.surface(), cloth.finish(), cloth.stretch(), cloth.flameTreatment());
    }
}
