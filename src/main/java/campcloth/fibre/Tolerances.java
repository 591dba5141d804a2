package campcloth.fibre;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * What a label may leave out or have wrong and still be lawful under Regulation (EU) No 1007/2011, as notes on what was read: at
 * most three, whatever the number of parts. Shares are percent of mass. Nothing is said of a part that is a single melting fibre,
 * since nothing turns on it there, nor of a part of unknown composition. Not a judgement of the label.
 */
final class Tolerances {

    private static final double MOST_OTHER_PERCENT = 15;

    private static final String CLEAN =
            "no fibre that melts is named, which does not prove that there is none: foreign fibres up to 2 %, in carded cloth 5 %,"
                    + " count as none, decorative fibres up to 7 % and antistatic ones up to 2 % may go unnamed (Regulation (EU)"
                    + " No 1007/2011, Articles 7, 10 and 20)";
    private static final String SHARES =
            "each share may be off by 3 % of the whole mass (Regulation (EU) No 1007/2011, Article 20): keep that distance from"
                    + " a limit on a share";
    private static final String OTHER =
            "other fibres may be of any kind, each at most 5 % or all together at most 15 % (Regulation (EU) No 1007/2011,"
                    + " Article 9); beside a fire they are taken for the worst plausible fibre";
    private static final String TOO_MUCH_OTHER =
            "more than 15 % stands as other fibres, which Article 9 of Regulation (EU) No 1007/2011 does not allow;"
                    + " they are taken for the worst plausible fibre";

    private final List<LabelReading.Part> parts;
    private final List<String> notes = new ArrayList<>();

    private Tolerances(List<LabelReading.Part> parts) {
        this.parts = parts;
    }

    static List<String> notes(List<LabelReading.Part> parts) {
        Tolerances tolerances = new Tolerances(parts);
        if (parts.stream().anyMatch(part -> otherPercent(part) > MOST_OTHER_PERCENT)) {
            tolerances.note(part -> otherPercent(part) > MOST_OTHER_PERCENT, TOO_MUCH_OTHER);
        } else {
            tolerances.note(part -> otherPercent(part) > 0, OTHER);
        }
        tolerances.note(part -> part.blend().meltablePercent() == 0, CLEAN);
        tolerances.note(part -> part.blend().shares().size() > 1, SHARES);
        return List.copyOf(tolerances.notes);
    }

    private static double otherPercent(LabelReading.Part part) {
        return part.blend().percentOf(Fibre.OTHER);
    }

    /** The note, with the names of the parts that it is about where it is not about all. */
    private void note(Predicate<LabelReading.Part> about, String note) {
        List<String> names =
                parts.stream().filter(about).map(LabelReading.Part::part).toList();
        if (!names.isEmpty()) {
            notes.add((names.size() == parts.size() ? "" : String.join(", ", names) + ": ") + note);
        }
    }
}
