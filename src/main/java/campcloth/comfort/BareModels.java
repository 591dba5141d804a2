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
import campcloth.comfort.model.Sunlight;
import campcloth.comfort.model.TwoNode;
import campcloth.comfort.model.Wbgt;
import campcloth.comfort.model.WindChill;
import campcloth.comfort.model.Worn;
import campcloth.figure.Range;
import campcloth.figure.Words;
import java.util.Optional;
import java.util.function.Function;

/**
 * The models by themselves, each with its own standard's reading of the case and nothing of ours in between: no sun, no fire, no
 * wardrobe. The two-node body stands for an hour in ordinary permeable clothing. Where a model does not hold there is no number.
 *
 * <p>The two-node model is used for relative air speeds up to 3 m/s, where its published rows end, for radiant temperatures of
 * 0..60 degrees Celsius (its published rows have 10..45) and as long as
 * skin and core stay at 20..40 and 35..40 degrees: what a body does that has grown colder or hotter, it does not tell (project
 * choice).
 */
public final class BareModels {

    private static final int MINUTES = 60;
    private static final String WIND_AND_WALKING = "wind and walking, ISO 11079:2007";
    private static final Range PERMEABILITY = new Range("air permeability", 1, 1000, "l/(m2 s)");
    private static final Range SPEED = new Range("relative air speed", 0, 3, "m/s");
    private static final Range RADIANT = new Range("mean radiant temperature", 0, 60, "degrees Celsius");
    private static final Range SKIN = new Range("skin temperature after an hour", 20, 40, "degrees Celsius");
    private static final Range CORE = new Range("core temperature after an hour", 35, 40, "degrees Celsius");

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
                HeatIndex.temperatureC(given.airC(), given.humidityPercent()),
                Wbgt.temperatureC(air, Sunlight.NONE),
                Wbgt.referenceC(given.met(), false));
    }

    /** The two-node body after an hour. */
    private record Hour(TwoNode model, Body body) {

        /** Where skin or core came to what the model does not tell of. */
        Optional<OutOfRange> outside() {
            return passed(TwoNode.MODEL, CORE, body.coreC()).or(() -> passed(TwoNode.MODEL, SKIN, body.skinC()));
        }
    }

    private static Function<Function<Hour, Double>, Reading> hour(BareCase given, Air air) {
        Worn worn = Worn.ordinary(given.clo());
        Optional<OutOfRange> unfit = passed(TwoNode.MODEL, SPEED, given.windMs())
                .or(() -> TwoNode.outside(air, given.met(), worn))
                .or(() -> passed(TwoNode.MODEL, RADIANT, given.radiantC()));
        if (unfit.isPresent()) {
            return reading -> unfit.get();
        }
        TwoNode model = new TwoNode(air, given.met(), worn, false);
        Hour after = new Hour(model, model.after(MINUTES));
        Optional<OutOfRange> unlike = after.outside();
        return reading -> unlike.isPresent() ? unlike.get() : Reading.exact(reading.apply(after));
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
        return passed(WIND_AND_WALKING, PERMEABILITY, permeability)
                .or(() -> Motion.outside(given.windMs()))
                .<Reading>map(outside -> outside)
                .orElseGet(() ->
                        Reading.exact(ResultantInsulation.m2KW(given.clo() * Worn.M2KW_PER_CLO, motion, permeability)
                                / Worn.M2KW_PER_CLO));
    }

    private static Optional<OutOfRange> passed(String model, Range range, double actual) {
        return range.contains(actual)
                ? Optional.empty()
                : Optional.of(new OutOfRange(
                        model,
                        range.field() + " is " + Words.number(actual) + " " + range.unit() + ", the model holds from "
                                + Words.number(range.least()) + " to " + Words.number(range.most())));
    }

    private static Reading onwards(Reading reading, Function<Double, Double> next) {
        return reading instanceof Value value ? Reading.exact(next.apply(value.value())) : reading;
    }
}
