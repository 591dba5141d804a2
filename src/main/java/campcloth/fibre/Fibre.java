package campcloth.fibre;

import campcloth.figure.Figure;
import java.util.Optional;

/**
 * A textile fibre under its generic name.
 *
 * @param key generic English name of Regulation (EU) No 1007/2011, lower case, or {@code other}, {@code unknown}
 * @param name name as shown to people
 * @param family what it does in heat
 * @param agreedAllowancePercent agreed allowance of Annex IX, percent of dry mass; empty where the annex has none
 * @param densityGCm3 density of the fibre substance, g/cm3
 * @param regainPercent moisture at 20 degrees and 65 % relative humidity, percent of dry mass
 * @param softensC where it softens or sticks, degrees Celsius; empty where it does not
 * @param meltsC where it melts, degrees Celsius; empty where it does not
 * @param decomposesC where it starts to decompose, degrees Celsius
 * @param oxygenIndexPercent limiting oxygen index (ISO 4589-2), volume percent; for explanation, never for grading
 * @param diameterUm usual diameter of the single fibre, micrometre
 * @param modulusGPa bending modulus, gigapascal
 * @param inTheFlame what it does in a flame, in words
 */
public record Fibre(
        String key,
        String name,
        FibreFamily family,
        Optional<Figure> agreedAllowancePercent,
        Figure densityGCm3,
        Figure regainPercent,
        Optional<Figure> softensC,
        Optional<Figure> meltsC,
        Optional<Figure> decomposesC,
        Optional<Figure> oxygenIndexPercent,
        Optional<Figure> diameterUm,
        Optional<Figure> modulusGPa,
        String inTheFlame) {

    /** Key of the share that a label leaves unnamed. */
    public static final String OTHER = "other";

    /** Key of cloth without a label. */
    public static final String UNKNOWN = "unknown";
}
