package campcloth.pages.plan;

import campcloth.comfort.Course;
import campcloth.comfort.CourseWords;
import campcloth.event.SafetyRule;
import campcloth.fire.FireJudgement;
import campcloth.fire.FirePlan;
import campcloth.fire.SpellHazard;
import campcloth.fire.StandBackDrawing;
import java.util.List;

/**
 * A cloth among others: its judgement, the fires, the event's course in it.
 *
 * @param card its judgement
 * @param percentThatMelts share that melts or must be presumed to
 * @param bestAt what it is clearly best at
 * @param fires how it stands at each fire
 * @param plans the distances around each different fire, in sentences
 * @param course the course of the event in it, in sentences
 */
public record ComparedCloth(
        ClothCard card,
        double percentThatMelts,
        List<String> bestAt,
        List<FireCell> fires,
        List<List<String>> plans,
        List<String> course) {

    /**
     * A cloth at one fire.
     *
     * @param keepAwayM distance to keep from the fire's centre, m: an estimate for a steady fire
     */
    public record FireCell(
            String spell, String grade, String words, String meltWarning, double keepAwayM, List<String> reasons) {

        private static FireCell of(SpellHazard at) {
            return new FireCell(
                    at.spell(),
                    at.hazard().grade().name(),
                    at.hazard().grade().words(),
                    at.hazard().meltWarning().name(),
                    at.hazard().standBack().roundedUpM(),
                    at.hazard().reasons().stream()
                            .map(reason -> reason.sentence())
                            .toList());
        }
    }

    static ComparedCloth of(
            ClothCard card,
            double percentThatMelts,
            List<String> bestAt,
            FireJudgement fire,
            List<SafetyRule> rules,
            Course course) {
        return new ComparedCloth(
                card,
                percentThatMelts,
                bestAt,
                fire.spells().stream().map(FireCell::of).toList(),
                FirePlan.all(fire, rules).stream().map(StandBackDrawing::text).toList(),
                CourseWords.summary(course));
    }
}
