package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Asker;
import campcloth.access.ThingKind;
import campcloth.cloth.Alike;
import campcloth.cloth.Cloth;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.ClothTraiter;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Neighbour;
import campcloth.fibre.LabelVocabulary;
import campcloth.journey.SeveralAskers;
import campcloth.supply.SupplierLists;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Drawn askers search, count, compare and export drawn cloths: what they get holds nothing that is not theirs or common. */
@SeveralAskers
class SearchOwnershipPropertiesTest extends KeptThings {

    private static final long SEED = 20_271_105;
    private static final int LOOKS_AT_CLOTHS = 60;

    @Autowired
    private SupplierLists lists;

    @Autowired
    private ClothTraiter traiter;

    @Autowired
    private LabelVocabulary labels;

    @Autowired
    private Stems stems;

    private final SplittableRandom random = new SplittableRandom(SEED);

    @Test
    void searchesCountsRankingLikenessAndExportHoldNothingOfOthers() {
        List<Asker> people = DrawnAskers.of(SEED);
        ClothDraw draw = new ClothDraw(SEED);
        List<Cloth> drawn = IntStream.range(0, 120).mapToObj(i -> draw.cloth()).toList();
        for (Cloth cloth : drawn) {
            Asker asker = DrawnAskers.makers(people)
                    .get(random.nextInt(DrawnAskers.makers(people).size()));
            String id = ask(asker, () -> cloths.add(cloth)).id();
            if (random.nextBoolean()) {
                ask(asker, () -> shares.share(ThingKind.CLOTH, id));
            }
        }
        Map<String, KeptCloth> all = everything();
        SearchedInMemory whole = new SearchedInMemory(all.values(), traiter, labels, stems);
        Set<String> words = drawn.stream()
                .flatMap(cloth -> List.of(cloth.name().split(" ")).stream())
                .collect(Collectors.toSet());
        List<String> texts = words.stream().sorted().toList();
        int found = 0;
        for (int look = 0; look < LOOKS_AT_CLOTHS; look++) {
            Asker asker = showing(one(people), all);
            Map<String, KeptCloth> visible = all.values().stream()
                    .filter(kept -> kept.holding().isListedFor(asker))
                    .collect(Collectors.toMap(KeptCloth::id, kept -> kept));
            ClothSearch search = new ClothSearch(
                    random.nextInt(4) == 0 ? Optional.empty() : Optional.of(one(texts)),
                    Set.of(),
                    random.nextInt(3) == 0 ? Optional.of(100.0) : Optional.empty(),
                    Optional.empty());
            String what = "seed " + SEED + ", look " + look + ", " + search.text();
            SearchedInMemory expected = whole.among(visible.keySet());
            Set<String> matching = ask(asker, () -> cloths.matching(search)).stream()
                    .map(KeptCloth::id)
                    .collect(Collectors.toSet());
            assertThat(matching).as(what).isEqualTo(expected.ids(search));
            Cloths.Page page = ask(asker, () -> cloths.page(search, 0, all.size()));
            assertThat(visible.keySet())
                    .as(what)
                    .containsAll(page.cloths().stream().map(KeptCloth::id).toList());
            assertThat(page.cloths()).as(what).hasSize((int) page.total());
            if (!page.nearMatches()) {
                assertThat(page.facets()).as(what).isEqualTo(expected.facets(search));
            }
            assertThat(visible.keySet()).as(what + " exported").containsAll(exported(asker));
            found += matching.size();
            likenessHoldsTheVisibleAlone(asker, visible, what);
        }
        assertThat(found).isGreaterThan(LOOKS_AT_CLOTHS);
    }

    private void likenessHoldsTheVisibleAlone(Asker asker, Map<String, KeptCloth> visible, String what) {
        if (visible.isEmpty()) {
            return;
        }
        KeptCloth any = one(visible.values().stream()
                .sorted((one, other) -> one.id().compareTo(other.id()))
                .toList());
        List<Neighbour> alike = ask(asker, () -> Alike.to(any, cloths, 5).neighbours());
        assertThat(visible.keySet())
                .as(what + " alike")
                .containsAll(alike.stream().map(near -> near.kept().id()).toList());
    }

    private Set<String> exported(Asker asker) {
        Set<String> ids = new HashSet<>();
        ask(asker, () -> {
            lists.each(
                    EnumSet.allOf(KeptCloth.Origin.class),
                    line -> ids.add(line.kept().id()));
            return true;
        });
        return ids;
    }

    /** Every cloth there is, each as its owner sees it. */
    private Map<String, KeptCloth> everything() {
        Map<String, KeptCloth> all = new HashMap<>();
        for (Asker asker : DrawnAskers.of(SEED)) {
            ask(asker, () -> cloths.matching(ClothSearch.EVERYTHING)).forEach(kept -> all.put(kept.id(), kept));
        }
        return all;
    }

    private Asker showing(Asker asker, Map<String, KeptCloth> all) {
        return asker.with(all.values().stream()
                .flatMap(kept -> kept.holding().key().stream())
                .collect(Collectors.toSet()));
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }
}
