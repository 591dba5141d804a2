package campcloth.pages.plan;

import campcloth.cloth.Cloth;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.event.Event;
import campcloth.event.Spell;
import campcloth.figure.Refusal;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Turns the rows of the form into the outfit that the core judges, with cloths of the catalogue. What is refused is told at its row. */
@Component
public class WornLayers {

    /** Air in which people put on what they do not wear all the time, at most: project choice, said on the form. */
    static final double COOL_C = 15;

    private static final int LONGEST_NAME = ClothSearch.LONGEST_TEXT;
    private static final int LOOKED_AT = 50;
    private static final int SUGGESTED = 3;

    private final Cloths cloths;

    WornLayers(Cloths cloths) {
        this.cloths = cloths;
    }

    /** What the form tells to be worn besides the garment, through the spells of the event; refuses all rows that cannot be used. */
    public Outfit of(AskedForm form, Event event) {
        List<OutfitPart> parts = new ArrayList<>();
        List<Refusal> refusals = new ArrayList<>();
        take("under", form.under, row -> part(row, WornForm.UNDER, event), parts, refusals);
        take("over", form.over, row -> part(row, WornForm.OVER, event), parts, refusals);
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        return new Outfit(parts);
    }

    private static void take(
            String side,
            List<WornForm> rows,
            Function<WornForm, OutfitPart> part,
            List<OutfitPart> parts,
            List<Refusal> refusals) {
        int told = 0;
        for (int i = 0; i < rows.size(); i++) {
            WornForm row = rows.get(i);
            if (!row.isEmpty()) {
                told++;
                String path = side + "[" + i + "]";
                boolean tooMany = told > WornForm.MOST;
                try {
                    parts.add(Refused.within(path, () -> tooMany ? tooMany() : part.apply(row)));
                } catch (Refused refused) {
                    refusals.addAll(refused.refusals());
                }
            }
        }
    }

    private static OutfitPart tooMany() {
        throw Refused.of("kind", "it is one too many", "tell of " + WornForm.MOST + " at most, the thickest");
    }

    private OutfitPart part(WornForm row, List<Kind> kinds, Event event) {
        Kind kind = row.kind;
        if (kind == null) {
            throw Refused.of("kind", "it is not said what is worn", "choose it, or empty the row");
        }
        if (!kinds.contains(kind)) {
            throw Refused.of("kind", Words.quoted(kind.words()) + " is not worn there", "choose one of the list");
        }
        Optional<Cloth> cloth = cloth(row);
        if (row.when == null) {
            return new OutfitPart(kind, cloth, Optional.empty());
        }
        Set<String> cool = event.spells().stream()
                .filter(spell -> spell.airC() <= COOL_C)
                .map(Spell::name)
                .collect(Collectors.toSet());
        // no spells are all spells: what is never put on is told to keep nothing warm, and still judged for fire
        return new OutfitPart(kind, cloth, cool.isEmpty() ? Optional.of(0.0) : Optional.empty(), cool);
    }

    private Optional<Cloth> cloth(WornForm row) {
        if (row.named != null && row.cloth != null) {
            throw Refused.of(
                    "named",
                    Words.quoted(row.named) + " stands beside what it is made of",
                    "keep one of the two: empty this, or choose \"not said\"");
        }
        if (row.cloth != null) {
            return Optional.of(plain(row.cloth));
        }
        return Optional.ofNullable(row.named).map(this::named);
    }

    private Cloth plain(PlainCloth plain) {
        return cloths.byId(plain.clothId())
                .map(KeptCloth::cloth)
                .orElseThrow(() -> Refused.of(
                        "cloth",
                        "its cloth was taken out of the catalogue",
                        "name another cloth of the catalogue in its place"));
    }

    private Cloth named(String name) {
        if (name.length() > LONGEST_NAME) {
            throw Refused.of(
                    "named",
                    "the name has " + name.length() + " characters",
                    "write " + LONGEST_NAME + " of its name at most");
        }
        Cloths.Page found = cloths.page(
                new ClothSearch(Optional.of(name), Set.of(), Optional.empty(), Optional.empty()), 0, LOOKED_AT);
        List<Cloth> all = found.cloths().stream().map(KeptCloth::cloth).toList();
        List<Cloth> exact = all.stream()
                .filter(cloth -> cloth.name().equalsIgnoreCase(name))
                .toList();
        if (exact.size() == 1) {
            return exact.get(0);
        }
        if (exact.size() > 1) {
            throw Refused.of(
                    "named",
                    Words.quoted(name) + " is the name of " + exact.size() + " cloths of the catalogue",
                    "empty this and choose what it is made of");
        }
        if (found.total() == 1 && !found.nearMatches()) {
            return all.get(0);
        }
        throw unclear(name, all, found);
    }

    private static Refused unclear(String name, List<Cloth> all, Cloths.Page found) {
        String such = all.stream()
                .map(cloth -> Words.quoted(cloth.name()))
                .distinct()
                .limit(SUGGESTED)
                .collect(Collectors.joining(", "));
        boolean none = all.isEmpty() || found.nearMatches();
        return Refused.of(
                "named",
                Words.quoted(name)
                        + (none
                                ? " is the name of no cloth in the catalogue"
                                : " fits " + found.total() + " cloths of the catalogue"),
                (such.isEmpty() ? "" : "write the whole name of one, such as " + such + "; or ")
                        + "empty this and choose what it is made of");
    }
}
