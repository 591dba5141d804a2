package campcloth.comfort;

import campcloth.comfort.Reading.OutOfRange;
import campcloth.comfort.Reading.Value;
import campcloth.comfort.model.Air;
import campcloth.comfort.model.Body;
import campcloth.comfort.model.ColdCriterion;
import campcloth.comfort.model.DurationLimit;
import campcloth.comfort.model.HeatIndex;
import campcloth.comfort.model.Motion;
import campcloth.comfort.model.Pmv;
import campcloth.comfort.model.RequiredInsulation;
import campcloth.comfort.model.ResultantInsulation;
import campcloth.comfort.model.TwoNode;
import campcloth.comfort.model.WindChill;
import campcloth.comfort.model.Worn;
import campcloth.figure.Words;
import java.util.Optional;
import java.util.function.Function;

/**
 * The models by themselves, each with its own standard's reading of the case and nothing of ours in between: no sun, no fire, no
 * wardrobe. The two-node body stands for an hour in ordinary permeable clothing. Where a model does not hold there is no number.
 */
public final class BareModels {

    private static final int MINUTES = 60;
    private static final String WIND_AND_WALKING = "wind and walking, ISO 11079:2007";

    private BareModels() {}

    public static BareReadings of(BareCase given) {
        Air air = new Air(given.airC(), given.radiantC(), given.windMs(), given.humidityPercent());
        Air still = new Air(given.airC(), given.radiantC(), given.pmvAirSpeedMs(), given.humidityPercent());
        Reading vote = Pmv.vote(still, given.met(), given.clo());
        Function<Function<Hour, Double>, Reading> hour = hour(given, air);
        Cold cold = Cold.of(given, air);
        Reading resultant = resultantClo(given, cold.motion);
        return new BareReadings(
                vote,
                onwards(vote, Pmv::dissatisfiedPercent),
                hour.apply(after -> after.model.standardEffectiveC(after.body)),
                hour.apply(after -> after.body.skinC()),
                hour.apply(after -> after.body.coreC()),
                hour.apply(after -> after.body.wettedness()),
                cold.requiredClo(ColdCriterion.NEUTRAL),
                cold.requiredClo(ColdCriterion.MINIMAL),
                resultant,
                cold.hours(resultant, ColdCriterion.MINIMAL),
                cold.hours(resultant, ColdCriterion.NEUTRAL),
                WindChill.temperatureC(given.airC(), given.windMs()),
                HeatIndex.temperatureC(given.airC(), given.humidityPercent()));
    }

    /** The two-node body after an hour. */
    private record Hour(TwoNode model, Body body) {}

    private static Function<Function<Hour, Double>, Reading> hour(BareCase given, Air air) {
        Worn worn = Worn.ordinary(given.clo());
        Optional<OutOfRange> outside = TwoNode.outside(air, given.met(), worn);
        if (outside.isPresent()) {
            return reading -> outside.get();
        }
        TwoNode model = new TwoNode(air, given.met(), worn, false);
        Hour after = new Hour(model, model.after(MINUTES));
        return reading -> Reading.exact(reading.apply(after));
    }

    /** What ISO 11079 makes of a case. */
    private record Cold(Air air, double metabolicWm2, Motion motion) {

        static Cold of(BareCase given, Air air) {
            double metabolic = given.met() * SpellNeeds.WM2_PER_MET;
            double walking = given.walkingMs().orElse(0.0);
            return new Cold(air, metabolic, Motion.conditioned(air.speedMs(), walking, metabolic));
        }

        Reading requiredClo(ColdCriterion criterion) {
            return RequiredInsulation.clo(air, metabolicWm2, motion, criterion);
        }

        Reading hours(Reading resultantClo, ColdCriterion criterion) {
            return resultantClo instanceof Value clo
                    ? DurationLimit.hours(air, metabolicWm2, motion, criterion, clo.value() * Worn.M2KW_PER_CLO)
                    : resultantClo;
        }
    }

    private static Reading resultantClo(BareCase given, Motion motion) {
        double permeability = given.airPermeability();
        if (ResultantInsulation.limited(permeability) != permeability) {
            return new OutOfRange(
                    WIND_AND_WALKING,
                    "air permeability is " + Words.number(permeability) + " l/(m2 s), the model holds from 1 to 1000");
        }
        return Motion.outside(given.windMs())
                .<Reading>map(outside -> outside)
                .orElseGet(() ->
                        Reading.exact(ResultantInsulation.m2KW(given.clo() * Worn.M2KW_PER_CLO, motion, permeability)
                                / Worn.M2KW_PER_CLO));
    }

    private static Reading onwards(Reading reading, Function<Double, Double> next) {
        return reading instanceof Value value ? Reading.exact(next.apply(value.value())) : reading;
    }
}
