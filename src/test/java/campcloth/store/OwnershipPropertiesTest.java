package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Asker;
import campcloth.access.Holding;
import campcloth.access.NotAllowed;
import campcloth.access.Role;
import campcloth.access.ShareKey;
import campcloth.access.ThingKind;
import campcloth.journey.SeveralAskers;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/**
 * Drawn askers make, share, hand over, read and list drawn things: nobody ever reads what {@link Holding} denies, nothing is listed or
 * counted that is not theirs or common, and what is allowed is there. The rules are kept beside, in memory.
 */
@SeveralAskers
class OwnershipPropertiesTest extends KeptThings {

    private static final long SEED = 20_271_105;
    private static final int STEPS = 700;

    private record Thing(ThingKind kind, String id) {}

    private final SplittableRandom random = new SplittableRandom(SEED);
    private final Map<Thing, Holding> held = new HashMap<>();
    private final List<Thing> made = new ArrayList<>();
    private final List<ShareKey> deadKeys = new ArrayList<>();

    @Test
    void nobodyReadsOrListsWhatIsNotTheirs() {
        List<Asker> people = DrawnAskers.of(SEED);
        int[] refused = {0};
        int[] read = {0};
        for (int step = 0; step < STEPS; step++) {
            Asker asker = showingKeys(one(people));
            String what = "seed " + SEED + ", step " + step + ", " + asker.roles();
            switch (random.nextInt(made.isEmpty() ? 1 : 8)) {
                case 0, 1 -> make(asker);
                case 2 -> share(asker, one(made), what);
                case 3 -> unshare(asker, one(made), what);
                case 4 -> handOver(asker, one(made), what);
                case 5 -> listed(asker, one(List.of(ThingKind.values())), what);
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

    private void make(Asker asker) {
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

    private void listed(Asker asker, ThingKind kind, String what) {
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

    /** The asker with some keys that open something, some that no longer do, some that never did. */
    private Asker showingKeys(Asker asker) {
        Set<ShareKey> keys = new HashSet<>();
        held.values()
                .forEach(holding ->
                        holding.key().filter(key -> random.nextInt(4) == 0).ifPresent(keys::add));
        deadKeys.stream().filter(key -> random.nextBoolean()).forEach(keys::add);
        return asker.with(keys);
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private Holding holdingOf(Thing thing) {
        return Objects.requireNonNull(held.get(thing));
    }
}
