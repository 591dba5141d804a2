package campcloth.pages.cloths;

import campcloth.cloth.ClothSearch;
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

    public @Nullable String text;
    public List<String> fibre = new ArrayList<>();
    public List<WeightClass> weightClass = new ArrayList<>();
    public List<Season> season = new ArrayList<>();
    public List<FireGrade> fireGrade = new ArrayList<>();

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
        return page == null || page < 1 ? 0 : page - 1;
    }

    /** Whether anything but words narrows the search. */
    public boolean isNarrowed() {
        return !fibre.isEmpty()
                || !weightClass.isEmpty()
                || !season.isEmpty()
                || !fireGrade.isEmpty()
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
                Optional.ofNullable(maxPricePerMetre));
    }

    /** The same search as an address, on another page. */
    String address(int onPage) {
        Address address = narrowed().add("text", text);
        return (onPage > 1 ? address.add("page", onPage) : address).toString();
    }

    /** The same without its words. */
    String withoutWords() {
        return narrowed().toString();
    }

    /** The words alone. */
    String wordsAlone() {
        return new Address("/cloths").add("text", text).addAll("cloth", cloth).toString();
    }

    private Address narrowed() {
        return new Address("/cloths")
                .addAll("fibre", fibre)
                .addAll("weightClass", weightClass)
                .addAll("season", season)
                .addAll("fireGrade", fireGrade)
                .add("minPricePerMetre", minPricePerMetre)
                .add("maxPricePerMetre", maxPricePerMetre)
                .addAll("cloth", cloth);
    }

    /** Drops what was sent empty. */
    void tidy() {
        List.of(fibre, weightClass, season, fireGrade, cloth).forEach(values -> values.removeIf(Objects::isNull));
    }

    private static Set<String> names(Collection<? extends Enum<?>> values) {
        return values.stream().map(Enum::name).collect(Collectors.toSet());
    }
}
