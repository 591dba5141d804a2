package campcloth.pages.cloths;

import campcloth.cloth.ClothSearch;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.WeightClass;
import campcloth.event.Season;
import campcloth.fibre.Fibres;
import campcloth.fire.FireGrade;
import campcloth.pages.TypedIn;
import campcloth.pages.Units;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What is looked for, as it stands in the address. */
public final class SearchForm {

    private static final int LAST_PAGE = 1_000_000;

    public @Nullable String text;
    public List<String> fibre = new ArrayList<>();
    public List<WeightClass> weightClass = new ArrayList<>();
    public List<Season> season = new ArrayList<>();
    public List<FireGrade> fireGrade = new ArrayList<>();
    public List<KeptCloth.Origin> origin = new ArrayList<>();

    @TypedIn(Units.Measure.PRICE_PER_METRE)
    public @Nullable Double minPricePerMetre;

    @TypedIn(Units.Measure.PRICE_PER_METRE)
    public @Nullable Double maxPricePerMetre;

    /** Counted from 1. */
    public @Nullable Integer page;

    /** Ids of cloths that are chosen for a comparison already. */
    public List<String> cloth = new ArrayList<>();

    /** Pages before the one asked for. */
    int before() {
        return page == null || page < 1 ? 0 : Math.min(page, LAST_PAGE) - 1;
    }

    /** Whether anything but words narrows the search. */
    public boolean isNarrowed() {
        return !fibre.isEmpty()
                || !weightClass.isEmpty()
                || !season.isEmpty()
                || !fireGrade.isEmpty()
                || !origin.isEmpty()
                || minPricePerMetre != null
                || maxPricePerMetre != null;
    }

    ClothSearch search(Fibres fibres) {
        return new ClothSearch(
                Optional.ofNullable(text),
                fibre.stream().map(key -> fibres.require(key).key()).collect(Collectors.toSet()),
                Optional.empty(),
                Optional.empty(),
                Set.copyOf(weightClass),
                names(season),
                names(fireGrade),
                Optional.ofNullable(minPricePerMetre),
                Optional.ofNullable(maxPricePerMetre),
                Set.copyOf(origin));
    }

    /** A field and what it holds. */
    public record Part(String name, String value) {}

    /** What is looked for, apart from the page and the cloths that are chosen. */
    public List<Part> parts() {
        List<Part> parts = narrowing();
        add(parts, "text", text);
        return parts;
    }

    /** The address of the same without its words. */
    String withoutWords() {
        return address(narrowing());
    }

    /** The address of the words alone. */
    String wordsAlone() {
        List<Part> words = new ArrayList<>();
        add(words, "text", text);
        return address(words);
    }

    private List<Part> narrowing() {
        List<Part> parts = new ArrayList<>();
        fibre.forEach(key -> add(parts, "fibre", key));
        weightClass.forEach(value -> add(parts, "weightClass", value));
        season.forEach(value -> add(parts, "season", value));
        fireGrade.forEach(value -> add(parts, "fireGrade", value));
        origin.forEach(value -> add(parts, "origin", value));
        add(parts, "minPricePerMetre", minPricePerMetre);
        add(parts, "maxPricePerMetre", maxPricePerMetre);
        return parts;
    }

    private static void add(List<Part> parts, String name, @Nullable Object value) {
        if (value != null) {
            parts.add(new Part(name, value.toString()));
        }
    }

    private String address(List<Part> parts) {
        Address address = new Address("/cloths");
        parts.forEach(part -> address.add(part.name(), part.value()));
        return address.addAll("cloth", cloth).toString();
    }

    /** Drops what was sent empty. */
    void tidy() {
        List.of(fibre, weightClass, season, fireGrade, origin, cloth).forEach(values -> values.removeIf(Objects::isNull));
    }

    private static Set<String> names(Collection<? extends Enum<?>> values) {
        return values.stream().map(Enum::name).collect(Collectors.toSet());
    }
}
