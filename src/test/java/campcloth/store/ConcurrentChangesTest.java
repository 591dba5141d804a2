package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.ShareKey;
import campcloth.access.Shares;
import campcloth.access.ThingKind;
import campcloth.cloth.Cloth;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Property;
import campcloth.cloth.ShippedCatalogue;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.event.Season;
import campcloth.event.Seasons;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.journey.WholeService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Of changes made on the same version one goes through; and the snapshot sees every change. */
@WholeService
class ConcurrentChangesTest {

    private static final int AT_ONCE = 8;
    private static final Cloth LINEN = ShippedCatalogue.get().cloth("linen-plain-185");

    @Autowired
    private Cloths cloths;

    @Autowired
    private Events events;

    @Autowired
    private Shares shares;

    @Autowired
    private Seasons seasons;

    @Test
    void ofManyChangesToOneClothOnTheSameVersionExactlyOneGoesThrough() throws Exception {
        KeptCloth kept = cloths.add(LINEN);
        List<Cloths.Change> outcomes = together(() -> cloths.replace(
                kept.id(),
                kept.version(),
                kept.cloth().with(Property.WEIGHT_GSM, Figure.exact(300, Basis.MEASURED, "own scales"))));
        assertThat(outcomes).filteredOn(Cloths.Change.Done.class::isInstance).hasSize(1);
        assertThat(outcomes).filteredOn(Cloths.Change.Stale.class::isInstance).hasSize(AT_ONCE - 1);
    }

    @Test
    void ofManyChangesToOneEventOnTheSameVersionExactlyOneGoesThrough() throws Exception {
        Event event = new Event("Wendlow river camp", Season.SPRING, seasons.spells(Season.SPRING), List.of());
        KeptEvent kept = events.add(event);
        List<Events.Change> outcomes = together(() -> events.replace(kept.id(), kept.version(), event));
        assertThat(outcomes).filteredOn(Events.Change.Done.class::isInstance).hasSize(1);
        assertThat(outcomes).filteredOn(Events.Change.Stale.class::isInstance).hasSize(AT_ONCE - 1);
    }

    @Test
    void whoeverSharesAtTheSameTimeGetsTheSameLinkAndNoChangeOfTheClothLosesIt() throws Exception {
        KeptCloth kept = cloths.add(LINEN);
        KeptEvent event = events.add(new Event("Wendlow", Season.SPRING, seasons.spells(Season.SPRING), List.of()));
        List<Optional<ShareKey>> keys = together(() -> {
            cloths.byId(kept.id())
                    .ifPresent(now -> cloths.replace(
                            kept.id(),
                            now.version(),
                            now.cloth()
                                    .with(
                                            Property.WEIGHT_GSM,
                                            Figure.exact(200 + now.version(), Basis.MEASURED, "scales"))));
            return shares.share(ThingKind.CLOTH, kept.id());
        });
        assertThat(keys).doesNotContain(Optional.empty());
        assertThat(keys.stream().distinct()).hasSize(1);
        assertThat(cloths.byId(kept.id()).orElseThrow().holding().key()).isEqualTo(keys.get(0));
        List<Optional<ShareKey>> ofEvent = together(() -> {
            events.byId(event.id())
                    .ifPresent(now -> events.replace(
                            event.id(), now.version(), now.event().at(50 + now.version())));
            return shares.share(ThingKind.EVENT, event.id());
        });
        assertThat(ofEvent).doesNotContain(Optional.empty());
        assertThat(ofEvent.stream().distinct()).hasSize(1);
        assertThat(shares.of(ThingKind.EVENT, event.id()).orElseThrow().key()).isEqualTo(ofEvent.get(0));
    }

    @Test
    void clothsAddedAtTheSameTimeAreAllSeen() throws Exception {
        List<KeptCloth> added = together(() -> cloths.add(LINEN));
        assertThat(cloths.byIds(added.stream().map(KeptCloth::id).toList())).containsExactlyInAnyOrderElementsOf(added);
    }

    @Test
    void aChangedFigureIsServedAtOnce() {
        KeptCloth kept = cloths.add(LINEN);
        Figure heavier = Figure.exact(777, Basis.MEASURED, "own scales");
        cloths.replace(kept.id(), kept.version(), kept.cloth().with(Property.WEIGHT_GSM, heavier));
        KeptCloth seen = cloths.byId(kept.id()).orElseThrow();
        assertThat(seen.cloth().figure(Property.WEIGHT_GSM)).contains(heavier);
        assertThat(seen.version()).isGreaterThan(kept.version());
    }

    private static <T> List<T> together(Callable<T> change) throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(AT_ONCE);
        try {
            List<Callable<T>> all = new ArrayList<>();
            for (int i = 0; i < AT_ONCE; i++) {
                all.add(change);
            }
            List<T> outcomes = new ArrayList<>();
            for (Future<T> future : pool.invokeAll(all)) {
                outcomes.add(future.get());
            }
            return outcomes;
        } finally {
            pool.shutdown();
        }
    }
}
