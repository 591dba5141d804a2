package campcloth.fire;

import static campcloth.fire.Draw.always;
import static campcloth.fire.Draw.claim;

import campcloth.event.FireRole;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** How the numbers of a hazard belong together, for every cloth and exposure. */
class FireHazardShapeTest {

    @Test
    void hazardIsNeverBelowEitherAxisAloneAndLiesInTheQuarterOfItsGrade() {
        always(1212, draw -> {
            FireHazard hazard = FireGrading.grade(draw.cloth(), draw.exposure());
            claim(hazard.hazard() >= hazard.spreadHazard() && hazard.hazard() >= hazard.meltHazard(), hazard);
            claim((int) (hazard.hazard() / 25) == hazard.grade().ordinal(), hazard);
            claim(hazard.spread() >= 0 && hazard.spread() <= 100 && hazard.melt() >= 0 && hazard.melt() <= 100, hazard);
        });
    }

    @Test
    void polyCottonAtTheFireIsAlwaysWarnedOfAndWorseThanWool() {
        always(1313, draw -> {
            double share = draw.between(10, 90);
            WornCloth blend = draw.cloth(Draw.blend(Map.of("polyester", share, "cotton", 100 - share)));
            Exposure exposure = new Exposure(draw.roleAtFire(), draw.perhapsDistanceM(), draw.perhapsFireKw());
            FireHazard hazard = FireGrading.grade(blend, exposure);
            boolean far = exposure.distanceM().filter(m -> m >= 3).isPresent();
            boolean passes = exposure.role() == FireRole.PASSING || (exposure.role() == FireRole.SEATED && far);
            MeltWarning least = passes ? MeltWarning.NOTE : MeltWarning.WARN;
            claim(hazard.meltWarning().compareTo(least) >= 0, blend, exposure);
            FireHazard wool = FireGrading.grade(Grades.of(blend, Draw.blend(Map.of("wool", 100.0))), exposure);
            claim(hazard.hazard() > wool.hazard(), blend, exposure, wool);
        });
    }
}
