package campcloth.pages.cloths;

import campcloth.cloth.Cloth;
import campcloth.cloth.Property;
import campcloth.pages.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Where what is kept by now and what somebody typed in the meantime differ.
 *
 * @param field what it is about: a figure, or another field of the form
 * @param kept what is kept now
 * @param typed what was typed
 */
public record Conflict(String field, String kept, String typed) {

    private static final String NOTHING = "–";
    private static final String SURFACE = "cloths.surface.";
    private static final String TREATMENT = "cloths.treatment.";

    static List<Conflict> between(Cloth kept, Cloth typed, Units units, Wording words) {
        List<Conflict> all = new ArrayList<>();
        add(all, "name", kept.name(), typed.name());
        add(all, "blend", kept.blend().words(), typed.blend().words());
        add(all, "weave", kept.weave().words(), typed.weave().words());
        add(all, "surface", words.of(SURFACE + kept.surface()), words.of(SURFACE + typed.surface()));
        add(all, "finish", kept.finish().words(), typed.finish().words());
        add(all, "nap", yes(kept.nap(), words), yes(typed.nap(), words));
        add(all, "stretch", yes(kept.stretch(), words), yes(typed.stretch(), words));
        add(
                all,
                "flameTreatment",
                words.of(TREATMENT + kept.flameTreatment()),
                words.of(TREATMENT + typed.flameTreatment()));
        for (Property property : Property.values()) {
            add(all, property.field(), amount(kept, property, units), amount(typed, property, units));
        }
        add(all, "note", kept.note(), typed.note());
        return all;
    }

    public boolean isFigure() {
        return Arrays.stream(Property.values()).map(Property::field).anyMatch(field::equals);
    }

    private static void add(List<Conflict> all, String field, @Nullable String kept, @Nullable String typed) {
        if (!Objects.equals(kept, typed)) {
            all.add(new Conflict(field, orNothing(kept), orNothing(typed)));
        }
    }

    private static String orNothing(@Nullable String text) {
        return text == null || text.isEmpty() ? NOTHING : text;
    }

    private static String yes(boolean said, Wording words) {
        return words.of(said ? "cloths.form.yes" : "cloths.form.no");
    }

    private static String amount(Cloth cloth, Property property, Units units) {
        return cloth.figure(property)
                .map(figure -> Amounts.of(property, figure.value(), units))
                .orElse("");
    }
}
