package campcloth.fire;

import campcloth.cloth.OutfitPart.Kind;
import campcloth.fibre.FibreFamily;
import campcloth.figure.Words;
import campcloth.fire.FireWarning.Code;
import campcloth.fire.FireWarning.Severity;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What to tell of a part of an outfit: the warnings of its cloth with the part named, thread and trim in a sentence of their own. */
final class PartWarnings {

    private PartWarnings() {}

    /** @param ofItsCloth what is to be told of the cloth that it was graded as, without rules */
    static List<FireWarning> of(WornPart part, MeltWarning melt, List<FireWarning> ofItsCloth) {
        if (part.part().isEmpty()) {
            return ofItsCloth;
        }
        if (!part.isTold()) {
            return untold(part, ofItsCloth).stream().toList();
        }
        if (part.isSmallShare()) {
            return smallShare(part, melt).stream().toList();
        }
        return ofItsCloth.stream()
                .filter(w -> w.code() != Code.ASSUMED && w.code() != Code.HEAT)
                .map(w -> new FireWarning(w.code(), w.severity(), part.heading() + ": " + w.text()))
                .toList();
    }

    /** One warning, as urgent as the most urgent about the worst cloth that it could be. */
    private static Optional<FireWarning> untold(WornPart part, List<FireWarning> ofItsCloth) {
        Optional<Severity> most = ofItsCloth.stream().map(FireWarning::severity).max(Comparator.naturalOrder());
        return most.map(severity -> new FireWarning(
                Code.ASSUMED,
                severity,
                part.heading()
                        + ": nobody said what it is made of, so it was judged as the worst it could be: light cloth that"
                        + " melts. Read its label and say so."));
    }

    private static Optional<FireWarning> smallShare(WornPart part, MeltWarning melt) {
        Optional<String> melting = part.byItself()
                .filter(cloth -> cloth.meltablePercent() > 0)
                .map(cloth -> FibreWords.named(cloth.blend(), FibreFamily::countsAsMeltable));
        if (melt == MeltWarning.NONE || melting.isEmpty()) {
            return Optional.empty();
        }
        Severity severity = melt == MeltWarning.NOTE ? Severity.NOTE : Severity.CAUTION;
        String of = melting.get().isEmpty() ? "film" : melting.get();
        Kind kind = part.part().orElseThrow().kind();
        String share = " (" + of + "), counted as " + Words.number(SmallShare.percent(kind))
                + " % of the garment's mass, melts";
        return Optional.of(new FireWarning(
                Code.THREAD,
                severity,
                kind == Kind.THREAD
                        ? "The sewing thread" + share
                                + ": seams part, and what melts sticks to skin. Sew with cotton, linen or silk thread."
                        : part.heading() + ": this trim" + share
                                + ". Choose a trim of wool, linen, cotton or silk, sewn down flat, or take it off at the"
                                + " fire."));
    }
}
