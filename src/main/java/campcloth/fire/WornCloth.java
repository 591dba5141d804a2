package campcloth.fire;

import campcloth.cloth.Cloth;
import campcloth.cloth.ClothMake;
import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.FlameTreatment;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.cloth.Wear;
import campcloth.cloth.Weave;
import campcloth.fibre.Blend;
import campcloth.fibre.FibreFamily;
import campcloth.fire.model.Spread;

/**
 * All that fire asks of a cloth and of how it is worn. A film or wax on the cloth counts as {@value #FILM_PERCENT} % of its mass
 * that burns and melts (films are 10 to 40 % of the mass, from memory; project choice), whatever the fibres are. What a
 * treatment against flame counts for, see {@link Treated}.
 *
 * @param blend what it is made of, without film or wax
 * @param weight mass, as given and as little as it may be
 * @param surface plain or raised
 * @param finish what was done to it
 * @param weave how it is bound
 * @param fit how it hangs
 * @param layer where it lies; what touches the skin counts as {@link Layer#SKIN}
 * @param treatment what was said of a treatment against flame
 */
public record WornCloth(
        Blend blend,
        ClothWeight weight,
        Surface surface,
        Finish finish,
        Weave weave,
        Fit fit,
        Layer layer,
        FlameTreatment treatment) {

    /** Share of the mass that a film or wax is counted as. */
    public static final double FILM_PERCENT = 20;

    /** Share of the mass that a film or wax may be. */
    static final double MOST_FILM_PERCENT = 40;

    /** Cloth that nobody treated against flame. */
    public WornCloth(
            Blend blend, ClothWeight weight, Surface surface, Finish finish, Weave weave, Fit fit, Layer layer) {
        this(blend, weight, surface, finish, weave, fit, layer, FlameTreatment.NONE);
    }

    /** Cloth whose mass is known exactly. */
    WornCloth(Blend blend, double weightGsm, Surface surface, Finish finish, Weave weave, Fit fit, Layer layer) {
        this(blend, ClothWeight.exactly(weightGsm), surface, finish, weave, fit, layer);
    }

    /** A completed cloth as a garment wears it. */
    public static WornCloth of(Cloth cloth, Wear wear) {
        return of(cloth, wear.fit(), layer(wear));
    }

    /** A completed cloth in a layer. */
    public static WornCloth of(Cloth cloth, Fit fit, Layer layer) {
        return new WornCloth(
                cloth.blend(),
                ClothWeight.of(cloth),
                cloth.surface(),
                cloth.finish(),
                cloth.weave(),
                fit,
                layer,
                cloth.flameTreatment());
    }

    /** A cloth of that make and mass as a garment wears it. */
    public static WornCloth of(ClothMake make, ClothWeight weight, Wear wear) {
        return new WornCloth(
                make.blend(),
                weight,
                make.surface(),
                make.finish(),
                make.weave(),
                wear.fit(),
                layer(wear),
                make.flameTreatment());
    }

    private static Layer layer(Wear wear) {
        return wear.nextToSkin() ? Layer.SKIN : wear.layer();
    }

    /** Plainly woven, untreated cloth. */
    public static WornCloth woven(Blend blend, double weightGsm, Surface surface, Fit fit, Layer layer) {
        return new WornCloth(blend, weightGsm, surface, Finish.NONE, Weave.PLAIN, fit, layer);
    }

    /** The same cloth with another treatment against flame. */
    public WornCloth treated(FlameTreatment other) {
        return new WornCloth(blend, weight, surface, finish, weave, fit, layer, other);
    }

    /** The same cloth in another layer. */
    WornCloth lying(Layer other) {
        return new WornCloth(blend, weight, surface, finish, weave, fit, other, treatment);
    }

    /** Mass to grade by, g/m2. */
    public double weightGsm() {
        return weight.gradedGsm();
    }

    /** Share of the mass that melts or must be presumed to, film or wax included, percent. */
    public double meltablePercent() {
        return withFilm(FILM_PERCENT, blend.meltablePercent());
    }

    /** The same where the film or wax is as heavy as it may be. */
    double mostMeltablePercent() {
        return withFilm(MOST_FILM_PERCENT, blend.meltablePercent());
    }

    /** Share of the mass that burns readily: plant fibre, what melts, what is not named, film and wax; percent. */
    public double fuelPercent() {
        return withFilm(FILM_PERCENT, blend.percentOf(FibreFamily.CELLULOSIC) + blend.meltablePercent());
    }

    public boolean hasFilm() {
        return finish.closesPores();
    }

    /** Whether fibre ends stand out of the face. */
    public boolean isRaised() {
        return surface == Surface.RAISED
                || finish == Finish.BRUSHED
                || weave == Weave.PILE
                || weave == Weave.FLEECE
                || weave == Weave.FUR;
    }

    /**
     * Whether flame can flash over its fibre ends: a raised face, but not that of milled wool. Fulling closes the weave and mats
     * the fibre ends, and wool chars; where fuel makes up 20 % or the cloth is light, a raised face counts all the same (common
     * practice, no source; the limits are project choices).
     */
    public boolean canFlash() {
        return isRaised() && !isDenselyMilled();
    }

    /** Whether air passes freely between the threads, which feeds a flame as raised fibre does. */
    public boolean isOpen() {
        return weave == Weave.OPEN_PLAIN;
    }

    private boolean isDenselyMilled() {
        boolean hasPile = weave == Weave.PILE || weave == Weave.FLEECE || weave == Weave.FUR;
        return finish == Finish.FULLED
                && !hasPile
                && Spread.isLittleFuel(fuelPercent())
                && weightGsm() >= Spread.LIGHT_GSM;
    }

    private double withFilm(double filmPercent, double fibrePercent) {
        return hasFilm() ? filmPercent + (100 - filmPercent) / 100 * fibrePercent : fibrePercent;
    }
}
