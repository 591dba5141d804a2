package campcloth.fibre.label;

import campcloth.fibre.Blend;
import campcloth.fibre.LabelReading;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
                add(blendOf, part, blend, notes);
            }
        }
        List<LabelReading.Part> parts = new ArrayList<>();
        blendOf.forEach((part, blend) -> parts.add(new LabelReading.Part(part, blend)));
        return new Reading(parts, notes);
    }

    private static void add(Map<String, Blend> blendOf, Section.Name part, Blend blend, Set<String> notes) {
        Optional<Map.Entry<String, Blend>> first = blendOf.entrySet().stream()
                .filter(e -> Reading.sameName(e.getKey(), part.part()))
                .filter(e -> e.getKey().equals(part.part()) || Reading.same(e.getValue(), blend))
                .findFirst();
        if (first.isEmpty()) {
            blendOf.put(part.part(), blend);
            return;
        }
        if (!Reading.same(first.get().getValue(), blend)) {
            throw new Unreadable(
                    part.from(),
                    part.to(),
                    "the part '" + part.part() + "' stands twice, with different compositions",
                    "give each part one composition",
                    List.of(first.get().getValue().words(), blend.words()));
        }
        notes.add(Repeats.NOTE);
    }
}
