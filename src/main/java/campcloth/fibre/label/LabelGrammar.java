package campcloth.fibre.label;

import campcloth.fibre.Blend;
import campcloth.fibre.LabelReading;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A label text read whole: pieces, sections, items, shares, compositions, in that order. */
public final class LabelGrammar {

    private LabelGrammar() {}

    /**
     * The parts that the label names, in its order.
     *
     * @param notes receives what else a reader should know
     * @throws Unreadable where any of it cannot be read safely
     */
    public static List<LabelReading.Part> parts(String text, Lexicon lexicon, Set<String> notes) {
        List<LabelReading.Part> parts = new ArrayList<>();
        for (Section section : Sections.of(Pieces.of(text, lexicon), text.length())) {
            Items items = Items.of(section, notes);
            Blend blend = Composition.of(section, items.inOrder(), Shares.of(items), notes);
            section.parts().forEach(part -> parts.add(new LabelReading.Part(part, blend)));
        }
        return parts;
    }
}
