package campcloth.pages.cloths;

import campcloth.advice.UsualTraits;
import campcloth.cloth.Cloth;
import campcloth.figure.Words;
import campcloth.fire.FireCautions;
import campcloth.fire.FireHazard;
import campcloth.fire.FireReason;
import campcloth.fire.FireWarning;
import campcloth.fire.FireWarnings;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * How a cloth stands at a usual fire: seated as the facets of the search have it, and with the hands at the fire. It knows no rules.
 *
 * @param seated two metres from the middle of a fire of unknown size
 * @param hands where somebody cooks
 */
public record AtTheFire(FireHazard seated, FireHazard hands) {

    static AtTheFire of(Cloth completed) {
        return new AtTheFire(UsualTraits.seatedAtAFire(completed), UsualTraits.handsAtAFire(completed));
    }

    /** Share that melts or must be presumed to, film or wax included. */
    public String meltable() {
        return Words.number(seated.meltablePercent()) + " %";
    }

    public boolean melts() {
        return seated.meltablePercent() > 0;
    }

    public String standBackM() {
        return Words.fixed(seated.standBack().roundedUpM(), 1);
    }

    public List<String> reasons() {
        return seated.reasons().stream().map(FireReason::sentence).toList();
    }

    /** What nobody may miss. */
    public List<FireWarning> stops() {
        return warnings().stream().filter(AtTheFire::isStop).toList();
    }

    /** All other warnings, each once. */
    public List<FireWarning> others() {
        return warnings().stream().filter(warning -> !isStop(warning)).toList();
    }

    public List<String> cautions() {
        return FireCautions.forReach(hands.reach(), List.of());
    }

    private List<FireWarning> warnings() {
        List<FireWarning> warnings = new ArrayList<>();
        Stream.of(hands, seated)
                .flatMap(hazard -> FireWarnings.of(hazard.cloth(), hazard.exposure()).stream())
                .filter(warning ->
                        warnings.stream().noneMatch(told -> told.text().equals(warning.text())))
                .forEach(warnings::add);
        return warnings;
    }

    private static boolean isStop(FireWarning warning) {
        return warning.severity() == FireWarning.Severity.STOP;
    }
}
