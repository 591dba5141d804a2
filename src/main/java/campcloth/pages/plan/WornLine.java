package campcloth.pages.plan;

import campcloth.advice.Adviser;
import campcloth.advice.Question;
import campcloth.advice.Verdict;
import campcloth.advice.Warning;
import campcloth.cloth.OutfitPart;
import campcloth.errand.WornWith;
import campcloth.fire.FireJudgement;
import campcloth.fire.FireWarning;
import campcloth.fire.PartJudgement;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Something worn over or under the garment, with what fire and rules say of it: the same whatever the garment's cloth.
 *
 * @param over whether it lies over the garment
 * @param words what it is
 * @param verdict the verdict, where something speaks against it
 * @param warnings what to heed of it, but for mere notes
 */
public record WornLine(boolean over, String words, @Nullable Verdict verdict, List<Warning> warnings) {

    /** All that was told, from the skin outwards. */
    public static List<WornLine> of(Adviser adviser, Question question) {
        List<PartJudgement> judged = adviser.wornBesides(question);
        return question.outfit().parts().stream()
                .filter(part -> !part.kind().isSewnIn())
                .map(part -> of(part, judged))
                .toList();
    }

    private static WornLine of(OutfitPart part, List<PartJudgement> all) {
        Optional<FireJudgement> judged = all.stream()
                .filter(one -> one.part().part().filter(part::equals).isPresent())
                .map(PartJudgement::judgement)
                .findFirst();
        return new WornLine(
                WornWith.isOver(part),
                WornWith.words(part),
                judged.map(one -> against(one.gate())).orElse(null),
                judged.map(FireJudgement::warnings).orElse(List.of()).stream()
                        .filter(warning -> warning.severity() != FireWarning.Severity.NOTE)
                        .map(Warning::of)
                        .toList());
    }

    private static @Nullable Verdict against(FireJudgement.Gate gate) {
        return switch (gate) {
            case CLEAR -> null;
            case CAUTION -> Verdict.CAUTION;
            case RULED_OUT -> Verdict.RULED_OUT;
        };
    }
}
