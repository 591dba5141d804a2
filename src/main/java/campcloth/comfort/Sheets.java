package campcloth.comfort;

import campcloth.cloth.Cloth;
import campcloth.cloth.Property;
import campcloth.figure.Figure;

/**
 * A cloth at its best figures and at both ends of their intervals.
 *
 * @param open thin, open, breathing
 * @param middle at the best figures
 * @param close thick, tight, close
 */
record Sheets(Sheet open, Sheet middle, Sheet close) {

    /** Of a cloth whose thickness, air permeability and vapour resistance are known or estimated. */
    static Sheets of(Cloth completed) {
        Figure thickness = completed.required(Property.THICKNESS_MM);
        Figure permeability = completed.required(Property.AIR_PERMEABILITY_MM_S);
        Figure vapour = completed.required(Property.VAPOUR_RESISTANCE_M2PA_W);
        return new Sheets(
                new Sheet(thickness.low(), permeability.high(), vapour.low()),
                new Sheet(thickness.value(), permeability.value(), vapour.value()),
                new Sheet(thickness.high(), permeability.low(), vapour.high()));
    }

    Sheets with(Sheets other) {
        return new Sheets(open.with(other.open), middle.with(other.middle), close.with(other.close));
    }
}
