package campcloth.cloth;

import campcloth.figure.Figure;
import campcloth.figure.Refused;

/**
 * The cloth beside which another is tested for wind.
 *
 * @param name what it is called
 * @param airPermeabilityMmS its air permeability, mm/s at 100 Pa
 */
public record WindReference(String name, Figure airPermeabilityMmS) {

    /** What a cloth is called that nobody named. */
    private static final String NAMELESS = "the other cloth";

    /**
     * A cloth that is kept; what is not known of it is estimated.
     *
     * @param measured id of the cloth that is tested
     * @param id id of the cloth beside it
     */
    public static WindReference kept(Cloths cloths, String measured, String id) {
        if (id.equals(measured)) {
            throw Refused.of("referenceClothId", "is the cloth itself", "compare with another cloth, which is known");
        }
        Cloth known = Estimates.complete(cloths.byId(id)
                .orElseThrow(() -> Refused.of(
                        "referenceClothId", "is not in the catalogue", "give the id of a cloth of the catalogue"))
                .cloth());
        return new WindReference(known.name(), known.required(Property.AIR_PERMEABILITY_MM_S));
    }

    /**
     * A cloth whose air permeability is told.
     *
     * @param name what it is called, may be blank
     */
    public static WindReference told(String name, Figure airPermeabilityMmS) {
        Property.AIR_PERMEABILITY_MM_S.range().check(airPermeabilityMmS.value());
        Property.AIR_PERMEABILITY_MM_S.range().check(airPermeabilityMmS.low());
        Property.AIR_PERMEABILITY_MM_S.range().check(airPermeabilityMmS.high());
        return new WindReference(name.isBlank() ? NAMELESS : name, airPermeabilityMmS);
    }
}
