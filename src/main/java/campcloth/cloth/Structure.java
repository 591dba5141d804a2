package campcloth.cloth;

import java.util.Optional;
import java.util.function.DoubleBinaryOperator;

/**
 * How much fibre stands in how much air: weight, thickness and porosity of a cloth from two numbers that are independent of
 * each other, so that intervals carried through a formula are not counted twice.
 *
 * <p>{@code bulk g/cm3 = weight g/m2 / (1000 thickness mm)}; {@code porosity = 1 - bulk / density of the fibre}. Of weight,
 * thickness and bulk density the third follows: what is known goes in, the bulk density is estimated where it must be, and
 * where nothing is known the weight is taken from the weave.
 *
 * @param first weight in g/m2, or thickness in mm where only that is known
 * @param second thickness in mm where both are known, otherwise bulk density in g/cm3
 * @param weightFrom weight in g/m2 from the two
 * @param thicknessFrom thickness in mm from the two
 */
record Structure(Span first, Span second, DoubleBinaryOperator weightFrom, DoubleBinaryOperator thicknessFrom) {

    /** A layer of 1 mm and 1 g/cm3 weighs 1000 g/m2. */
    private static final double GSM_PER_MM_G_CM3 = 1000;
    /** Porosities outside this come from figures that do not belong together. */
    private static final double LEAST_POROSITY = 0.3;

    private static final double MOST_POROSITY = 0.99;

    static Structure of(Cloth cloth) {
        Optional<Span> weight = cloth.figure(Property.WEIGHT_GSM).map(Span::of);
        Optional<Span> thickness = cloth.figure(Property.THICKNESS_MM).map(Span::of);
        if (weight.isPresent() && thickness.isPresent()) {
            return new Structure(weight.get(), thickness.get(), (w, t) -> w, (w, t) -> t);
        }
        Span bulk = BulkDensity.gCm3(cloth);
        if (thickness.isPresent()) {
            return new Structure(thickness.get(), bulk, (t, b) -> GSM_PER_MM_G_CM3 * t * b, (t, b) -> t);
        }
        return packed(weight.orElseGet(() -> UsualWeight.gsm(cloth)), bulk);
    }

    /** A layer of the given weight, packed to the given bulk density. */
    static Structure packed(Span weightGsm, Span bulkGCm3) {
        return new Structure(weightGsm, bulkGCm3, (w, b) -> w, (w, b) -> w / (GSM_PER_MM_G_CM3 * b));
    }

    Span weightGsm() {
        return carried(weightFrom).within(Property.WEIGHT_GSM.range());
    }

    Span thicknessMm() {
        return carried(thicknessFrom).within(Property.THICKNESS_MM.range());
    }

    double weightGsm(double one, double other) {
        return weightFrom.applyAsDouble(one, other);
    }

    double thicknessMm(double one, double other) {
        return thicknessFrom.applyAsDouble(one, other);
    }

    private Span carried(DoubleBinaryOperator quantity) {
        return Span.propagated(in -> quantity.applyAsDouble(in[0], in[1]), first, second);
    }

    /** Share of air in the cloth's volume, 0.3 to 0.99. */
    static double porosity(double weightGsm, double thicknessMm, double densityGCm3) {
        double bulk = weightGsm / (GSM_PER_MM_G_CM3 * thicknessMm);
        return Math.max(LEAST_POROSITY, Math.min(MOST_POROSITY, 1 - bulk / densityGCm3));
    }
}
