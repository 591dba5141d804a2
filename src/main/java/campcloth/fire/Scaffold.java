package campcloth.fire;

import campcloth.fibre.FibreFamily;
import campcloth.fire.FireWarning.Code;
import campcloth.fire.FireWarning.Severity;
import campcloth.fire.model.Spread;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tells which part of an outfit holds the melt of another in the flame. A cloth that melts and holds no plant fibre may shrink from a
 * flame; a cotton thread, lining or layer beside it chars and keeps the melt where it burns. Rests on: seams of cotton thread in
 * the burning tests of the 1970s, and a retailers' code that tests such cloth again with a square of cotton on it (2016). The
 * grade counts it for any cloth that melts, told or not.
 */
final class Scaffold {

    private Scaffold() {}

    /** One note for each part that melts and has a part to hold its melt. */
    static List<FireWarning> among(List<WornPart> parts) {
        List<FireWarning> notes = new ArrayList<>();
        for (WornPart part : parts) {
            if (part.byItself().filter(Scaffold::meltsByItself).isPresent()) {
                holder(part, parts).ifPresent(holder -> notes.add(note(part, holder)));
            }
        }
        return notes;
    }

    private static FireWarning note(WornPart part, WornPart holder) {
        String fibre = holder.byItself()
                .map(cloth -> FibreWords.named(cloth.blend(), f -> f == FibreFamily.CELLULOSIC))
                .orElse("plant fibre");
        String melting = part.byItself()
                .map(cloth -> FibreWords.named(cloth.blend(), f -> f == FibreFamily.MELTABLE))
                .orElse("fibre");
        return new FireWarning(
                Code.SCAFFOLD,
                Severity.NOTE,
                part.heading() + ": it may shrink from a flame by itself, but charred " + fibre + " in "
                        + (holder.part().isEmpty() ? "" : "the ") + holder.name() + " holds the molten " + melting
                        + " in it. No credit is given for shrinking away.");
    }

    private static Optional<WornPart> holder(WornPart melting, List<WornPart> parts) {
        return parts.stream()
                .filter(part -> part != melting)
                .filter(part -> part.byItself()
                        .filter(cloth -> cloth.blend().percentOf(FibreFamily.CELLULOSIC) >= Spread.SCAFFOLD_PERCENT)
                        .isPresent())
                .findFirst();
    }

    private static boolean meltsByItself(WornCloth cloth) {
        return cloth.blend().percentOf(FibreFamily.MELTABLE) >= 100 - Spread.SCAFFOLD_PERCENT
                && cloth.blend().percentOf(FibreFamily.CELLULOSIC) < Spread.SCAFFOLD_PERCENT;
    }
}
