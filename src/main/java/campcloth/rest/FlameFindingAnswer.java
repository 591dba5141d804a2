package campcloth.rest;

import campcloth.fibre.Fibre;
import campcloth.fibre.FlameAnswer;
import campcloth.fibre.FlameFinding;
import campcloth.fibre.FlameKey;
import campcloth.fibre.FlameSafety;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What burning single threads tells of a cloth. */
@Schema(name = "FlameFinding")
record FlameFindingAnswer(
        @Schema(description = "what comes before any flame") List<String> safety,

        @Schema(description = "what the threads tell together; the least known of them decides")
        FlameFinding.Verdict verdict,

        String sentence,

        @Schema(
                description =
                        "SHOWN where a bead, melting or drops were seen; nothing shows that a cloth does not melt")
        FlameFinding.Melting meltable,

        List<OfThread> threads,
        SuggestedCloth suggestedCloth,
        List<String> cautions,

        @Schema(description = "ids of the sources, see /api/sources")
        List<String> sources) {

    private static final int DECIMALS = 4;

    /** What one thread tells. */
    @Schema(name = "ThreadFinding")
    record OfThread(
            String thread,

            @Schema(description = "how many questions were answered")
            int answered,

            FlameFinding.Verdict verdict,
            FlameFinding.Melting meltable,

            @Schema(description = "the answers that show that it melts")
            List<String> meltingSeen,

            @Schema(
                    description =
                            "probability of the classes that melt, together, 0 to 1; where melting was seen, that decides")
            double meltingProbability,

            @Schema(description = "all classes, most probable first")
            List<Ranked> ranking,

            @Schema(description = "probability kept for blends, finishes and fibres that the key does not know, 0 to 1")
            double notInTheKey,

            @Schema(description = "the question that would tell most, where one is left") @Nullable
            Next nextQuestion) {

        static OfThread of(FlameFinding.OfThread thread) {
            return new OfThread(
                    thread.thread(),
                    thread.answered(),
                    thread.verdict(),
                    thread.melting(),
                    thread.meltingSeen().stream().map(FlameAnswer::title).toList(),
                    Rounded.to(thread.melts(), DECIMALS),
                    thread.ranking().stream().map(Ranked::of).toList(),
                    Rounded.to(thread.notInTheKey(), DECIMALS),
                    thread.next().map(Next::of).orElse(null));
        }
    }

    /** A class and how probable it is. */
    @Schema(name = "RankedFlameClass")
    record Ranked(
            String fibreClass,
            String name,

            @Schema(description = "0 to 0.95") double probability,

            @Schema(description = "keys of the fibres, see /api/fibres")
            List<String> fibres,

            boolean melts,
            List<Because> because) {

        static Ranked of(FlameFinding.Ranked ranked) {
            return new Ranked(
                    ranked.fibreClass().key(),
                    ranked.fibreClass().name(),
                    Rounded.to(ranked.probability(), DECIMALS),
                    FlameKeyAnswer.fibreKeys(ranked.fibreClass()),
                    ranked.fibreClass().melts(),
                    ranked.because().stream().map(Because::of).toList());
        }
    }

    /** An answer that spoke for or against a class. */
    @Schema(name = "FlameReason")
    record Because(
            String feature,
            String answer,
            FlameFinding.Speaks speaks,

            @Schema(description = "how likely this is seen with the class, 0 to 1; chosen, not measured")
            double likelihood) {

        static Because of(FlameFinding.Because because) {
            return new Because(
                    because.answer().feature().key(), because.answer().key(), because.speaks(), because.likelihood());
        }
    }

    /** The question that would tell most. */
    @Schema(name = "NextFlameQuestion")
    record Next(
            String feature,
            String question,
            String look,

            @Schema(description = "by how much its answer is expected to lessen the doubt between the classes, bit")
            double expectedBits) {

        static Next of(FlameFinding.Next next) {
            return new Next(
                    next.feature().key(),
                    next.feature().question(),
                    next.feature().look(),
                    Rounded.to(next.expectedBits(), DECIMALS));
        }
    }

    /** How to enter the cloth, unless its owner knows better. */
    @Schema(name = "SuggestedCloth")
    record SuggestedCloth(List<ShareBody> blend, List<String> warnings) {}

    static FlameFindingAnswer of(FlameFinding finding) {
        return new FlameFindingAnswer(
                FlameSafety.SAFETY,
                finding.verdict(),
                finding.sentence(),
                finding.melting(),
                finding.threads().stream().map(OfThread::of).toList(),
                new SuggestedCloth(List.of(new ShareBody(Fibre.UNKNOWN, 100.0)), FlameKey.warnings(finding)),
                FlameKey.CAUTIONS,
                FlameKey.SOURCES);
    }
}
