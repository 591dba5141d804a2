package campcloth.rest;

import campcloth.comfort.Course;
import campcloth.comfort.CourseWords;
import campcloth.comfort.QuarterHour;
import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** The course of an event in one cloth in short. */
@Schema(
        name = "CourseSummary",
        description =
                "Hours too cold are those of one who works little, hours too warm those of one who works much: they may overlap")
record CourseSummaryBody(
        double hoursTooCold,
        double hoursTooWarm,
        double hoursComfortable,

        @Schema(description = "asleep, or outside of every model")
        double hoursNotComputed,

        @Nullable QuarterBody coldestQuarterHour,

        @Schema(description = "wettest with sweat, measured by what is comfortable at that work") @Nullable
        QuarterBody warmestQuarterHour) {

    /** When it is worst, and by how much. */
    @Schema(name = "QuarterHour")
    record QuarterBody(
            String spell,

            @Schema(description = "its begin, in hours after that of the event")
            double startsAfterH,

            @Schema(description = "beyond comfort; negative where there is something to spare")
            double beyond,

            String unit,
            String text) {

        static QuarterBody of(QuarterHour quarter) {
            return new QuarterBody(
                    quarter.spell(),
                    Rounded.to(quarter.fromMinute() / 60.0, 2),
                    Rounded.to(quarter.beyond(), 2),
                    quarter.measure().unit(),
                    CourseWords.words(quarter));
        }
    }

    static CourseSummaryBody of(Course.Summary summary) {
        return new CourseSummaryBody(
                Rounded.to(summary.hoursTooCold(), 1),
                Rounded.to(summary.hoursTooWarm(), 1),
                Rounded.to(summary.hoursComfortable(), 1),
                Rounded.to(summary.hoursNotComputed(), 1),
                summary.coldest().map(QuarterBody::of).orElse(null),
                summary.warmest().map(QuarterBody::of).orElse(null));
    }
}
