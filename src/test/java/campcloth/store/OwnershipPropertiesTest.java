package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.Holding;
import campcloth.access.NotAllowed;
import campcloth.access.Role;
import campcloth.access.ShareKey;
import campcloth.access.Shares;
import campcloth.access.ThingKind;
import campcloth.cloth.Alike;
import campcloth.cloth.Cloth;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.ClothTraiter;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Neighbour;
import campcloth.errand.Errands;
import campcloth.event.Events;
import campcloth.fibre.LabelVocabulary;
import campcloth.journey.SeveralAskers;
import campcloth.plan.Plans;
import campcloth.supply.SupplierLists;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * Drawn askers make, share, hand over, read and list drawn things: nobody ever reads what {@link Holding} denies, nothing is listed or
 * counted that is not theirs or common, and what is allowed is there. The rules are kept beside, in memory.
 */
@SeveralAskers
class OwnershipPropertiesTest {

    private static final long SEED = 20_271_105;
    private static final int STEPS = 700;
    private static final int LOOKS_AT_CLOTHS = 60;

    private record Thing(ThingKind kind, String id) {}

    @Autowired
    private Askers askers;

    @Autowired
    private Shares shares;

    @Autowired
    private Cloths cloths;

    @Autowired
    private Events events;

    @Autowired
    private Plans plans;

    @Autowired
    private Errands errands;

    @Autowired
    private SupplierLists lists;

    @Autowired
    private ClothTraiter traiter;

    @Autowired
    private LabelVocabulary labels;

    @Autowired
    private Stems stems;

    private final SplittableRandom random = new SplittableRandom(SEED);
    private final Map<Thing, Holding> held = new HashMap<>();
    private final List<Thing> made = new ArrayList<>();
    private final List<ShareKey> deadKeys = new ArrayList<>();

    @Test
    void nobodyReadsOrListsWhatIsNotTheirs() {
        OwnedThings things = new OwnedThings(cloths, events, plans, errands);
        List<Asker> people = people();
        int[] refused = {0};
        int[] read = {0};
        for (int step = 0; step < STEPS; step++) {
            Asker asker = showingKeys(one(people));
            String what = "seed " + SEED + ", step " + step + ", " + asker.roles();
            switch (random.nextInt(made.isEmpty() ? 1 : 8)) {
                case 0, 1 -> make(things, asker);
                case 2 -> share(asker, one(made), what);
                case 3 -> unshare(asker, one(made), what);
                case 4 -> handOver(asker, one(made), what);
                case 5 -> listed(things, asker, one(List.of(ThingKind.values())), what);
                default -> {
                    Thing thing = one(made);
                    boolean may = holdingOf(thing).mayRead(asker);
                    assertThat(ask(asker, () -> things.isRead(thing.kind(), thing.id())))
                            .as(what + " reads " + thing)
                            .isEqualTo(may);
                    (may ? read : refused)[0]++;
                }
            }
        }
        assertThat(read[0]).as("looks that were allowed").isGreaterThan(50);
        assertThat(refused[0]).as("looks that were not").isGreaterThan(50);
    }

    @Test
    void searchesCountsRankingLikenessAndExportHoldNothingOfOthers() {
        List<Asker> people = people();
        ClothDraw draw = new ClothDraw(SEED);
        List<Cloth> drawn = IntStream.range(0, 120).mapToObj(i -> draw.cloth()).toList();
        for (Cloth cloth : drawn) {
            Asker asker = makers(people).get(random.nextInt(makers(people).size()));
            String id = ask(asker, () -> cloths.add(cloth)).id();
            if (random.nextBoolean()) {
                ask(asker, () -> shares.share(ThingKind.CLOTH, id));
            }
        }
        Map<String, KeptCloth> all = everything();
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
            SearchedInMemory expected = new SearchedInMemory(visible.values(), traiter, labels, stems);
            Set<String> matching = ask(asker, () -> cloths.matching(search)).stream()
                    .map(KeptCloth::id)
                    .collect(Collectors.toSet());
            assertThat(matching).as(what).isEqualTo(expected.ids(search));
            Cloths.Page page = ask(asker, () -> cloths.page(search, 0, 1000));
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
        for (Asker asker : people()) {
            ask(asker, () -> cloths.matching(ClothSearch.EVERYTHING)).forEach(kept -> all.put(kept.id(), kept));
        }
        return all;
    }

    private void make(OwnedThings things, Asker asker) {
        ThingKind kind = one(List.of(ThingKind.values()));
        if (asker.is(Role.MAKER)) {
            Thing thing = new Thing(kind, ask(asker, () -> things.add(kind)));
            made.add(thing);
            held.put(thing, Holding.madeBy(asker));
        }
    }

    private void share(Asker asker, Thing thing, String what) {
        Holding holding = holdingOf(thing);
        boolean may =
                holding.mayRead(asker) && holding.mayChange(asker, thing.kind().keeper());
        Optional<ShareKey> key = ask(asker, () -> tried(() -> shares.share(thing.kind(), thing.id())));
        assertThat(key.isPresent()).as(what + " shares " + thing).isEqualTo(may);
        key.ifPresent(shared -> {
            holding.key().ifPresent(before -> assertThat(shared).as(what).isEqualTo(before));
            held.put(thing, new Holding(holding.owner(), key));
        });
    }

    private void unshare(Asker asker, Thing thing, String what) {
        Holding holding = holdingOf(thing);
        boolean may =
                holding.mayRead(asker) && holding.mayChange(asker, thing.kind().keeper());
        Optional<Boolean> done = ask(
                asker,
                () -> tried(() ->
                        Optional.of(shares.unshare(thing.kind(), thing.id())).filter(yes -> yes)));
        assertThat(done.isPresent()).as(what + " stops sharing " + thing).isEqualTo(may);
        if (may) {
            holding.key().ifPresent(deadKeys::add);
            held.put(thing, new Holding(holding.owner(), Optional.empty()));
        }
    }

    private void handOver(Asker asker, Thing thing, String what) {
        Holding holding = holdingOf(thing);
        boolean can = thing.kind() == ThingKind.CLOTH || thing.kind() == ThingKind.EVENT;
        boolean may = holding.mayRead(asker)
                && (holding.owner().isEmpty()
                        || (can && holding.isOwn(asker) && asker.is(thing.kind().keeper())));
        Optional<Boolean> done = ask(
                asker,
                () -> tried(() ->
                        Optional.of(shares.handOver(thing.kind(), thing.id())).filter(yes -> yes)));
        assertThat(done.isPresent()).as(what + " hands over " + thing).isEqualTo(may);
        if (may) {
            held.put(thing, new Holding(Optional.empty(), holding.key()));
        }
    }

    private void listed(OwnedThings things, Asker asker, ThingKind kind, String what) {
        Set<String> ids = ask(asker, () -> things.listed(kind));
        made.stream()
                .filter(thing -> thing.kind() == kind)
                .forEach(thing -> assertThat(ids.contains(thing.id()))
                        .as(what + " lists " + thing)
                        .isEqualTo(holdingOf(thing).isListedFor(asker)));
    }

    private static <T> Optional<T> tried(Supplier<Optional<T>> work) {
        try {
            return work.get();
        } catch (NotAllowed refused) {
            return Optional.empty();
        }
    }

    /** Five accounts with drawn roles, the owner of a service without accounts, a stranger. */
    private List<Asker> people() {
        SplittableRandom roles = new SplittableRandom(SEED);
        List<Asker> people = new ArrayList<>(List.of(Asker.LOCAL, Asker.STRANGER));
        for (int i = 0; i < 5; i++) {
            Set<Role> some = EnumSet.of(Role.MAKER);
            for (Role role : Role.values()) {
                if (roles.nextInt(3) == 0) {
                    some.add(role);
                }
            }
            people.add(Asker.of(new UUID(SEED, i), some));
        }
        return people;
    }

    private static List<Asker> makers(List<Asker> people) {
        return people.stream().filter(asker -> asker.is(Role.MAKER)).toList();
    }

    /** The asker with some keys that open something, some that no longer do, some that never did. */
    private Asker showingKeys(Asker asker) {
        Set<ShareKey> keys = new HashSet<>();
        held.values()
                .forEach(holding ->
                        holding.key().filter(key -> random.nextInt(4) == 0).ifPresent(keys::add));
        deadKeys.stream().filter(key -> random.nextBoolean()).forEach(keys::add);
        return asker.with(keys);
    }

    private Asker showing(Asker asker, Map<String, KeptCloth> all) {
        return asker.with(all.values().stream()
                .flatMap(kept -> kept.holding().key().stream())
                .collect(Collectors.toSet()));
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private <T> T ask(Asker asker, Supplier<T> work) {
        return askers.as(asker, work);
    }

    private Holding holdingOf(Thing thing) {
        return Objects.requireNonNull(held.get(thing));
    }
}
