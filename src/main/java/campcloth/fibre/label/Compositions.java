package campcloth.fibre.label;

import campcloth.fibre.Blend;
import campcloth.fibre.LabelReading;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Spots of one meaning each to parts: sections, items, shares, compositions, in that order. A part that is named again, as in
 * another language, must have the same composition again.
 */
final class Compositions {

    private Compositions() {}

    /** @param before notes made so far */
    static Reading read(String text, List<Spot> spots, Set<String> before) {
        Set<String> notes = new LinkedHashSet<>(before);
        Map<String, Blend> blendOf = new LinkedHashMap<>();
        for (Section section : Sections.of(Pieces.of(text, spots), text.length())) {
            Blend blend = Repeats.blend(section, notes);
            for (Section.Name part : section.parts()) {
                Blend first = blendOf.putIfAbsent(part.part(), blend);
                if (first != null && Reading.same(first, blend)) {
                    notes.add(Repeats.NOTE);
                } else if (first != null) {
                    throw new Unreadable(
                            part.from(),
                            part.to(),
                            "the part '" + part.part() + "' stands twice, with different compositions",
                            "give each part one composition",
                            List.of(first.words(), blend.words()));
                }
            }
        }
        List<LabelReading.Part> parts = new ArrayList<>();
        blendOf.forEach((part, blend) -> parts.add(new LabelReading.Part(part, blend)));
        return new Reading(parts, notes);
    }
}
