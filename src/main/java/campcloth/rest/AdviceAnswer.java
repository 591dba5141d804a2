package campcloth.rest;

import campcloth.advice.Judged;
import campcloth.advice.Ranking;
import campcloth.advice.Robustness;
import campcloth.advice.Shortlist;
import campcloth.advice.Verdict;
import campcloth.advice.Warning;
import campcloth.comfort.Course;
import campcloth.comfort.Reading;
import campcloth.comfort.SpellNeeds;
import campcloth.event.Provenance;
import campcloth.event.SafetyRule.Authority;
import campcloth.fire.RuleOutcome;
import campcloth.fire.WhatIf;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The cloths ranked, with what the ranking rests on. */
@Schema(description = "Best first; every cloth that is ruled out comes after all that are not")
record AdviceAnswer(
        List<Ranked> ranking,
        Considered considered,

        @Schema(description = "what was presumed because nobody said otherwise")
        List<String> presumed,

        @Schema(description = "what each spell asks of the clothing")
        List<SpellBody> spells,

        List<String> cautions,

        @Schema(description = "where the rules of the event differ, and what stands")
        List<RulesBody.ConflictBody> ruleConflicts,

        @Schema(
                description =
                        "version of the event on file that was judged; null where the event came with the question")
        @Nullable
        Long eventVersion,

        WornOutfitBody outfit,

        @Schema(description = "what to wear besides; null where a cloth is warm enough alone, or none may be chosen")
        @Nullable
        LayersBody layers,

        @Schema(description = "how far the order hangs on figures and on a wearer that nobody knows exactly")
        RobustnessBody robustness) {

    /** A cloth with its verdict, score and reasons. */
    @Schema(name = "RankedCloth")
    record Ranked(
            ClothName cloth,
            Verdict verdict,
            double score,
            double scoreLow,
            double scoreHigh,
            List<CriterionBody> criteria,
            List<Warning> warnings,
            List<RuleBody> rulesApplied,

            @Schema(description = "what wet clothes cost, for each spell that says they are wet")
            List<WetBody> wet,

            @Schema(
                    description =
                            "what would better the verdict of fire and rules; empty where they have nothing against it, null where the"
                                    + " answer has too many cloths for so many rules and fires")
            @Nullable
            List<WhatIfBody> whatIf,

            @Schema(
                    description =
                            "all spells in their order, body and sweat carried on; null where the answer has too many cloths for so long an event")
            @Nullable
            CourseSummaryBody course,

            @Schema(
                    description =
                            "how often it is among the first three while figures and wearers are drawn from their intervals, percent of"
                                    + " the samples; who ties shares the place. Of the order only, no probability of comfort."
                                    + " Null where it was not sampled: ruled out, or too far behind")
            @Nullable
            Double topThreePercent) {

        static Ranked of(
                Judged judged,
                Map<String, Double> weights,
                WhatIf.@Nullable Answer whatIf,
                Course.@Nullable Summary course,
                Optional<Double> topThreePercent) {
            return new Ranked(
                    new ClothName(
                            judged.candidate().id(),
                            judged.candidate().cloth().name(),
                            ShareBody.of(judged.candidate().cloth().blend())),
                    judged.verdict(),
                    Rounded.to(judged.score(), 1),
                    Rounded.to(judged.scoreLow(), 1),
                    Rounded.to(judged.scoreHigh(), 1),
                    judged.criteria().stream()
                            .map(a -> CriterionBody.of(a, weights.getOrDefault(a.criterion(), 0.0)))
                            .toList(),
                    judged.warnings(),
                    judged.rules().stream().map(RuleBody::of).toList(),
                    judged.wet().stream().map(WetBody::of).toList(),
                    whatIf == null ? null : WhatIfBody.of(whatIf),
                    course == null ? null : CourseSummaryBody.of(course),
                    topThreePercent.map(percent -> Rounded.to(percent, 1)).orElse(null));
        }
    }

    /** Which cloth. */
    @Schema(name = "NamedCloth")
    record ClothName(String id, String name, List<ShareBody> blend) {}

    /** What a rule says of a cloth. */
    @Schema(name = "AppliedRule")
    record RuleBody(
            Authority authority,
            RuleOutcome.Outcome outcome,
            String statement,
            String because,
            @Nullable String source,
            @Nullable String issuedOn,
            @Nullable String edition) {

        static RuleBody of(RuleOutcome outcome) {
            Provenance from = outcome.provenance();
            return new RuleBody(
                    outcome.authority(),
                    outcome.outcome(),
                    outcome.statement(),
                    outcome.because(),
                    from.source().orElse(null),
                    from.issuedOn().map(LocalDate::toString).orElse(null),
                    from.edition().orElse(null));
        }
    }

    /** How many cloths were judged and what became of them. */
    record Considered(
            @Schema(description = "how many are ranked; the three beside it tell what became of them")
            int cloths,

            long suitable,
            long caution,
            long ruledOut,

            @Schema(description = "how many were judged with every model and rule")
            int judgedInFull,

            @Schema(
                    description =
                            "how many more were asked about and come after all that are ranked: most of them as a quick pass over"
                                    + " their figures tells, without reasons; 0 where every cloth is ranked")
            int rankedLower) {}

    /** A spell as it was computed with. */
    @Schema(name = "SpellNeeds")
    record SpellBody(
            String name,
            double hours,
            double airC,
            double radiantC,
            double windAtBodyMs,
            double lowMet,
            double highMet,

            @Schema(description = "resultant insulation that would feel neutral; null where no model holds") @Nullable
            Double neededClo,

            String model) {

        static SpellBody of(SpellNeeds needs) {
            return new SpellBody(
                    needs.spell().name(),
                    needs.spell().hours(),
                    needs.spell().airC(),
                    Rounded.to(needs.surroundings().radiantC(), 1),
                    Rounded.to(needs.surroundings().windMs(), 2),
                    needs.surroundings().lowMet(),
                    needs.surroundings().highMet(),
                    needs.neededClo()
                            .inRange()
                            .map(Reading.Value::value)
                            .map(clo -> Rounded.to(clo, 2))
                            .orElse(null),
                    needs.neededClo()
                            .outOfRange()
                            .map(o -> o.model() + ": " + o.because())
                            .orElse(needs.model()));
        }
    }

    static AdviceAnswer of(
            Shortlist.Ranked ranked,
            List<String> presumed,
            int limit,
            List<RulesBody.ConflictBody> ruleConflicts,
            Optional<Long> eventVersion,
            WornOutfitBody outfit,
            Map<String, WhatIf.Answer> whatIfs,
            Map<String, Course.Summary> courses,
            Robustness robustness) {
        Ranking ranking = ranked.ranking();
        return new AdviceAnswer(
                ranking.judged().stream()
                        .limit(limit)
                        .map(judged -> Ranked.of(
                                judged,
                                ranking.weights(),
                                whatIfs.get(judged.candidate().id()),
                                courses.get(judged.candidate().id()),
                                robustness.topThreePercent(judged.candidate().id())))
                        .toList(),
                new Considered(
                        ranking.judged().size(),
                        ranking.count(Verdict.SUITABLE),
                        ranking.count(Verdict.CAUTION),
                        ranking.count(Verdict.RULED_OUT),
                        ranked.judged(),
                        ranked.lower()),
                presumed,
                ranking.needs().stream().map(SpellBody::of).toList(),
                ranking.cautions(),
                ruleConflicts,
                eventVersion.orElse(null),
                outfit,
                ranking.layers().map(LayersBody::of).orElse(null),
                RobustnessBody.of(robustness));
    }
}
