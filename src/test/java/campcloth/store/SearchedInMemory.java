package campcloth.store;

import campcloth.cloth.Cloth;
import campcloth.cloth.ClothFacets;
import campcloth.cloth.ClothFacets.Count;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.ClothTraiter;
import campcloth.cloth.ClothTraits;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Property;
import campcloth.cloth.SearchWords;
import campcloth.cloth.WeightClass;
import campcloth.fibre.LabelVocabulary;
import campcloth.figure.Figure;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A search over all cloths, one by one: what the index has to find. */
final class SearchedInMemory {

    private record Known(KeptCloth kept, ClothTraits traits, Set<String> words) {

        Set<String> fibres() {
            return kept.cloth().blend().shares().stream()
                    .map(share -> share.fibre().key())
                    .collect(Collectors.toSet());
        }

        Optional<Double> figure(Property property) {
            return kept.cloth().figure(property).map(Figure::value);
        }

        Set<String> weightClass() {
            return WeightClass.of(kept.cloth()).stream().map(Enum::name).collect(Collectors.toSet());
        }
    }

    private final List<Known> cloths;
    private final Stems stems;
    private final Map<String, Map<String, String>> stemmed;

    SearchedInMemory(Collection<KeptCloth> cloths, ClothTraiter traiter, LabelVocabulary labels, Stems stems) {
        this.stems = stems;
        this.stemmed = new HashMap<>();
        this.cloths = cloths.stream()
                .map(kept -> new Known(kept, traiter.of(kept.cloth()), words(kept.cloth(), labels)))
                .toList();
    }

    private SearchedInMemory(List<Known> cloths, SearchedInMemory of) {
        this.cloths = cloths;
        this.stems = of.stems;
        this.stemmed = of.stemmed;
    }

    /** The same over some of the cloths alone. */
    SearchedInMemory among(Set<String> ids) {
        return new SearchedInMemory(
                cloths.stream().filter(known -> ids.contains(known.kept().id())).toList(), this);
    }

    Set<String> ids(ClothSearch search) {
        return matching(search, Set.of()).map(known -> known.kept().id()).collect(Collectors.toSet());
    }

    ClothFacets facets(ClothSearch search) {
        List<Double> prices = matching(search, Set.of("price"))
                .flatMap(known -> known.figure(Property.PRICE_PER_METRE).stream())
                .toList();
        return new ClothFacets(
                facet(search, "fibre", Known::fibres),
                facet(search, "weightClass", Known::weightClass),
                facet(search, "season", known -> known.traits().seasons()),
                facet(search, "fireGrade", known -> Set.of(known.traits().fireGrade())),
                new ClothFacets.Prices(
                        prices.stream().min(Comparator.naturalOrder()),
                        prices.stream().max(Comparator.naturalOrder()),
                        matching(search, Set.of("price")).count() - prices.size()));
    }

    private ClothFacets.Facet facet(ClothSearch search, String own, Function<Known, Set<String>> values) {
        Map<String, Long> counts = new TreeMap<>();
        long without = 0;
        for (Known known : matching(search, Set.of(own)).toList()) {
            values.apply(known).forEach(value -> counts.merge(value, 1L, Long::sum));
            without += values.apply(known).isEmpty() ? 1 : 0;
        }
        return new ClothFacets.Facet(
                counts.entrySet().stream()
                        .map(e -> new Count(e.getKey(), e.getValue()))
                        .sorted(Comparator.comparing(Count::count).reversed().thenComparing(Count::value))
                        .toList(),
                without);
    }

    private Stream<Known> matching(ClothSearch search, Set<String> but) {
        Map<String, Predicate<Known>> all = Map.of(
                "text",
                known -> search.text().map(text -> hasAll(known.words(), text)).orElse(true),
                "weight",
                known -> within(known.figure(Property.WEIGHT_GSM), search.minWeightGsm(), search.maxWeightGsm()),
                "fibre",
                known -> meets(search.fibres(), known.fibres()),
                "weightClass",
                known -> meets(
                        search.weightClasses().stream().map(Enum::name).collect(Collectors.toSet()),
                        known.weightClass()),
                "season",
                known -> meets(search.seasons(), known.traits().seasons()),
                "fireGrade",
                known -> meets(search.fireGrades(), Set.of(known.traits().fireGrade())),
                "origin",
                known -> search.origins().isEmpty()
                        || search.origins().contains(known.kept().origin()),
                "price",
                known -> within(
                        known.figure(Property.PRICE_PER_METRE), search.minPricePerMetre(), search.maxPricePerMetre()));
        return cloths.stream()
                .filter(known -> all.entrySet().stream()
                        .filter(condition -> !but.contains(condition.getKey()))
                        .allMatch(condition -> condition.getValue().test(known)));
    }

    private static boolean meets(Set<String> wanted, Set<String> has) {
        return wanted.isEmpty() || wanted.stream().anyMatch(has::contains);
    }

    private static boolean within(Optional<Double> value, Optional<Double> least, Optional<Double> most) {
        double known = value.orElse(Double.NaN);
        return least.map(bound -> known >= bound).orElse(true)
                && most.map(bound -> known <= bound).orElse(true);
    }

    private boolean hasAll(Set<String> has, String text) {
        List<String> words = SearchWords.of(text);
        if (words.isEmpty()) {
            return false;
        }
        Map<String, String> stem = stemmed.computeIfAbsent(text, any -> stems.of(words));
        String last = words.get(words.size() - 1);
        return words.stream()
                .allMatch(word -> has.contains(word)
                        || has.contains(stem.get(word))
                        || (word.equals(last) && has.stream().anyMatch(w -> w.startsWith(last))));
    }

    private Set<String> words(Cloth cloth, LabelVocabulary labels) {
        Set<String> words = new HashSet<>(SearchWords.of(
                cloth.name() + " " + cloth.note() + " " + cloth.blend().words()));
        cloth.blend()
                .shares()
                .forEach(share -> labels.names(share.fibre()).forEach(name -> words.addAll(SearchWords.of(name))));
        words.addAll(stems.of(words).values());
        return words;
    }
}
