package campcloth.fibre;

import campcloth.fibre.label.LabelGrammar;
import campcloth.fibre.label.Shown;
import campcloth.fibre.label.Unreadable;
import campcloth.figure.Refused;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Reads fibre-content labels as Regulation (EU) No 1007/2011 has them, and as shops shorten them: {@code 70 % linen, 30 %
 * polyester}, {@code 65/35 polyester/cotton}, {@code CO60/PES40}, {@code Shell: 100% wool Lining: 100% viscose}.
 *
 * <p>Every character counts: a word that is not known, a share that is missing, an abbreviation with two meanings refuses the
 * label and points at the place, since a synthetic fibre overlooked near a fire does harm and a question asked does not. A
 * number may stand before or after its name; where the order changes within a composition, punctuation must keep the pairs
 * apart. Shares are percent of mass. Valid for
 * texts of 1 to {@value #MOST_CHARACTERS} characters. It is not a judgement of the label: whether it is lawful is noted only
 * where that touches its reading. Safe for use by several threads.
 */
public final class LabelReader {

    /** Longest text that is read. */
    public static final int MOST_CHARACTERS = 2000;

    private final LabelVocabulary vocabulary;

    public LabelReader(LabelVocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** The composition that the label states, or why and where it cannot be read safely. */
    public LabelReading read(String text) {
        return read(text, Set.of());
    }

    /**
     * The same where the language is told: it settles words that languages understand differently and that the label by itself
     * leaves open, nothing else. A label that reads without it reads alike with it, in whatever language.
     *
     * @param language ISO 639-1 key, one of {@link LabelVocabulary#languages()}
     * @throws Refused where it is none of them
     */
    public LabelReading read(String text, String language) {
        if (!vocabulary.languages().contains(language)) {
            throw Refused.of(
                    "language",
                    "'" + Shown.excerpt(language, 0, language.length()) + "' is not a language that labels are read in",
                    "give one of " + String.join(", ", vocabulary.languages()) + ", or leave it out");
        }
        LabelReading alone = read(text);
        return alone instanceof LabelReading.NotRead notRead
                        && notRead.readings().size() > 1
                        && read(text, Set.of(language)) instanceof LabelReading.Read settled
                ? settled
                : alone;
    }

    private LabelReading read(String text, Set<String> spoken) {
        if (text.length() > MOST_CHARACTERS) {
            return tooLong(text);
        }
        Set<String> notes = new LinkedHashSet<>();
        try {
            List<LabelReading.Part> parts = LabelGrammar.parts(text, vocabulary.lexicon(), spoken, notes);
            notes.addAll(Tolerances.notes(parts));
            return new LabelReading.Read(parts, List.copyOf(notes));
        } catch (Unreadable place) {
            return notRead(text, place);
        }
    }

    private static LabelReading notRead(String text, Unreadable place) {
        return new LabelReading.NotRead(
                place.because(),
                place.from(),
                place.to(),
                Shown.excerpt(text, place.from(), place.to()),
                place.remedy(),
                place.readings());
    }

    private static LabelReading tooLong(String text) {
        return new LabelReading.NotRead(
                "the text has " + text.length() + " characters",
                MOST_CHARACTERS,
                text.length(),
                Shown.excerpt(text, MOST_CHARACTERS, text.length()),
                "give only what the label says about fibre content, at most " + MOST_CHARACTERS + " characters",
                List.of());
    }
}
