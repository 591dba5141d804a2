package campcloth.comfort;

import campcloth.comfort.Reading.OutOfRange;
import java.util.List;
import java.util.stream.Stream;

/**
 * What each model says of one case.
 *
 * @param pmv predicted mean vote, ISO 7730
 * @param ppdPercent predicted percentage dissatisfied
 * @param setC standard effective temperature of the two-node body after an hour, standing
 * @param skinC its skin temperature
 * @param coreC its core temperature
 * @param wettedness share of its skin that is wet
 * @param ireqNeutralClo required insulation to feel neutral, ISO 11079
 * @param ireqMinimalClo required insulation to keep the balance
 * @param resultantClo what wind, walking and permeability leave of the clothing
 * @param exposureLimitHours hours until 40 Wh/m2 are lost in that clothing, minimal criterion; 8 where it is 8 or more
 * @param exposureLimitNeutralHours the same by the neutral criterion
 * @param windChillC wind chill temperature
 * @param heatIndexC heat index
 * @param wbgtC wet bulb globe temperature, the radiant temperature taken as that of surroundings without sun
 * @param wbgtReferenceC highest WBGT for that work, for people who are not used to heat
 */
public record BareReadings(
        Reading pmv,
        Reading ppdPercent,
        Reading setC,
        Reading skinC,
        Reading coreC,
        Reading wettedness,
        Reading ireqNeutralClo,
        Reading ireqMinimalClo,
        Reading resultantClo,
        Reading exposureLimitHours,
        Reading exposureLimitNeutralHours,
        Reading windChillC,
        Reading heatIndexC,
        Reading wbgtC,
        Reading wbgtReferenceC) {

    /** Every model that does not hold there, once, and why. */
    public List<OutOfRange> outOfRange() {
        return Stream.of(
                        pmv,
                        ppdPercent,
                        setC,
                        skinC,
                        coreC,
                        wettedness,
                        ireqNeutralClo,
                        ireqMinimalClo,
                        resultantClo,
                        exposureLimitHours,
                        exposureLimitNeutralHours,
                        windChillC,
                        heatIndexC,
                        wbgtC,
                        wbgtReferenceC)
                .flatMap(reading -> reading.outOfRange().stream())
                .distinct()
                .toList();
    }
}
