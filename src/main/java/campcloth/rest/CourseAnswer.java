package campcloth.rest;

import campcloth.comfort.Course;
import campcloth.comfort.Course.InSpell;
import campcloth.comfort.CourseWords;
import campcloth.comfort.Feeling;
import campcloth.comfort.Moment;
import campcloth.comfort.Moment.Felt;
import campcloth.comfort.Reading;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** The course of an event in one cloth. */
@Schema(description = "All spells in their order, minute by minute, body and sweat carried on from one to the next")
record CourseAnswer(
        String cloth,
        CourseSummaryBody summary,

        @Schema(description = "on the mean of the time in which it is known") @Nullable
        Double meanCloToSpare,

        @Nullable Double meanSkinC,
        @Nullable Double meanWetSkinPercent,

        @Schema(description = "the course in plain sentences")
        List<String> inWords,

        List<SpellBody> spells,

        @Schema(description = "minutes from one point of the series to the next")
        int everyMinutes,

        List<PointBody> series,

        @Schema(description = "what was presumed because nobody said otherwise, and what the models leave out")
        List<String> presumed,

        List<String> cautions) {

    private static final int MOST_POINTS = 200;

    /** One spell of the course. */
    @Schema(name = "SpellCourse")
    record SpellBody(
            String name,
            double hours,
            double hoursTooCold,
            double hoursTooWarm,
            @Nullable Double coldestSkinC,
            @Nullable Double wettestSkinPercent,

            @Schema(description = "sweat in the clothing at its end, g per m2 of the body") @Nullable
            Double sweatLeftGM2,

            @Schema(description = "why the body is not followed there; null where it is") @Nullable
            String notComputed) {

        static SpellBody of(InSpell in) {
            return new SpellBody(
                    in.needs().spell().name(),
                    in.needs().spell().hours(),
                    Rounded.to(in.hoursTooCold(), 2),
                    Rounded.to(in.hoursTooWarm(), 2),
                    rounded(in.coldestSkinC(), 1),
                    percent(in.wettest()),
                    rounded(in.waterAtEndGM2(), 0),
                    in.notComputed().orElse(null));
        }
    }

    /** A moment of the course; null where no model holds. */
    @Schema(name = "CoursePoint")
    record PointBody(
            int minute,
            double airC,
            double radiantC,
            @Nullable Double neededClo,
            @Nullable Double givenClo,

            @Schema(description = "of one who works little") @Nullable
            Double skinC,

            @Schema(description = "too cold below") @Nullable
            Double coldSkinC,

            @Schema(description = "with sweating, of one who works much") @Nullable
            Double wetSkinPercent,

            @Schema(description = "the same with the wet clothing in it") @Nullable
            Double wetWithClothingPercent,

            @Schema(description = "too warm above") @Nullable
            Double comfortableWetSkinPercent,

            @Nullable Double sweatInClothingGM2,
            Feeling feeling) {

        static PointBody of(Moment moment) {
            Moment.Dressed dressed = moment.dressed();
            return new PointBody(
                    moment.minute(),
                    dressed.stretch().needs().spell().airC(),
                    Rounded.to(dressed.stretch().needs().surroundings().radiantC(), 1),
                    clo(dressed.stretch().needs().neededClo()),
                    clo(dressed.givenClo()),
                    felt(moment, Felt::skinC, 1, 2),
                    felt(moment, Felt::coldSkinC, 1, 2),
                    felt(moment, Felt::wettedness, 100, 0),
                    felt(moment, Felt::wetness, 100, 0),
                    felt(moment, Felt::comfortableWettedness, 100, 0),
                    felt(moment, Felt::waterGM2, 1, 0),
                    moment.feeling());
        }

        private static @Nullable Double clo(Reading reading) {
            return reading.inRange().map(value -> Rounded.to(value.value(), 2)).orElse(null);
        }

        private static @Nullable Double felt(
                Moment moment, ToDoubleFunction<Felt> reading, double times, int decimals) {
            Optional<Felt> felt = moment.felt();
            return felt.isEmpty() ? null : Rounded.to(times * reading.applyAsDouble(felt.get()), decimals);
        }
    }

    static CourseAnswer of(String cloth, Course course, List<String> presumed, List<String> cautions) {
        int every = Math.max(1, (course.moments().size() + MOST_POINTS - 1) / MOST_POINTS);
        List<PointBody> series = new ArrayList<>();
        for (int i = every - 1; i < course.moments().size(); i += every) {
            series.add(PointBody.of(course.moments().get(i)));
        }
        return new CourseAnswer(
                cloth,
                CourseSummaryBody.of(course.summary()),
                rounded(course.meanMarginClo(), 2),
                rounded(course.meanSkinC(), 1),
                percent(course.meanWettedness()),
                CourseWords.summary(course),
                course.spells().stream().map(SpellBody::of).toList(),
                every,
                series,
                presumed,
                cautions);
    }

    private static @Nullable Double rounded(OptionalDouble value, int decimals) {
        return value.isEmpty() ? null : Rounded.to(value.getAsDouble(), decimals);
    }

    private static @Nullable Double percent(OptionalDouble share) {
        return share.isEmpty() ? null : Rounded.to(100 * share.getAsDouble(), 0);
    }
}
