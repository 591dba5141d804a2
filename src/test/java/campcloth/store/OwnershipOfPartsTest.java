package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.access.Asker;
import campcloth.access.NotAllowed;
import campcloth.access.Role;
import campcloth.access.ShareKey;
import campcloth.access.ThingKind;
import campcloth.cloth.MarkPair;
import campcloth.cloth.SwatchSamples;
import campcloth.cloth.Swatches;
import campcloth.errand.ErrandSamples;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.Season;
import campcloth.journey.SeveralAskers;
import campcloth.store.OwnedThings.Outcome;
import campcloth.supply.SupplierLists;
import campcloth.supply.SupplierLists.OnBadRow;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** What follows from whom something else belongs to: rules of an event, swatches of a cloth, the plan of a sheet, lists of the catalogue. */
@SeveralAskers
class OwnershipOfPartsTest extends KeptThings {

    private static final UUID OWNER = new UUID(7, 1);
    private static final UUID OTHER = new UUID(7, 2);
    private static final Asker MAKER = Asker.of(OWNER, Set.of(Role.MAKER));

    @Autowired
    private Swatches swatches;

    @Autowired
    private SupplierLists lists;

    @Test
    void aMarshalWithTheLinkChangesTheRulesAndNothingElse() {
        String id = ask(Asker.of(OTHER, Set.of(Role.MAKER)), () -> things.add(ThingKind.EVENT));
        ShareKey key = ask(Asker.of(OTHER, Set.of(Role.MAKER)), () -> shares.share(ThingKind.EVENT, id))
                .orElseThrow();
        Asker marshal = Asker.of(OWNER, Set.of(Role.MARSHAL)).with(Set.of(key));
        Event camp = ErrandSamples.camp();
        assertThatThrownBy(() -> ask(marshal, () -> events.replace(id, 0, camp.at(52))))
                .isInstanceOf(NotAllowed.class)
                .hasMessageContaining("latitudeDeg")
                .hasMessageNotContaining("season");
        Event ruled = camp.withRules(List.of());
        assertThat(ask(marshal, () -> events.replace(id, 0, ruled))).isInstanceOf(Events.Change.Done.class);
        assertThat(ask(marshal, () -> OwnedThings.outcome(() -> events.remove(id, 1) instanceof Events.Change.Done)))
                .isEqualTo(Outcome.NOT_ALLOWED);
        assertThat(ask(
                        Asker.of(OTHER, Set.of(Role.MAKER)),
                        () -> events.byId(id).orElseThrow().event()))
                .isEqualTo(ruled);
    }

    @Test
    void everyPartOfAnEventButItsRulesIsHeldToWhatItWas() {
        Event camp = ErrandSamples.camp();
        assertThat(Event.class.getRecordComponents())
                .as("what differencesBesidesRules looks at, and the rules; the spells tell whether they are presumed")
                .hasSize(7);
        assertThat(camp.differencesBesidesRules(camp.withRules(List.of()))).isEmpty();
        assertThat(camp.differencesBesidesRules(new Event("other", Season.WINTER, camp.spells(), camp.rules(), true)))
                .containsExactly("name", "season", "spells");
    }

    @Test
    void swatchesFollowTheirCloth() {
        String id = ask(MAKER, () -> things.add(ThingKind.CLOTH));
        ShareKey key = ask(MAKER, () -> shares.share(ThingKind.CLOTH, id)).orElseThrow();
        Asker other = Asker.of(OTHER, Set.of(Role.MAKER, Role.KEEPER));
        assertThat(ask(other, () -> swatches.of(id))).isEmpty();
        assertThat(tell(other, id)).isInstanceOf(Swatches.Outcome.NoCloth.class);
        assertThatThrownBy(() -> tell(other.with(Set.of(key)), id)).isInstanceOf(NotAllowed.class);
        Swatches.Outcome told = tell(MAKER, id);
        assertThat(told).isInstanceOf(Swatches.Outcome.Done.class);
        String swatch = ((Swatches.Outcome.Done) told).swatch().id();
        assertThat(ask(other.with(Set.of(key)), () -> swatches.of(id))).isPresent();
        assertThatThrownBy(() -> ask(other.with(Set.of(key)), () -> swatches.remove(id, swatch)))
                .isInstanceOf(NotAllowed.class);
        assertThat(ask(MAKER, this::swatchIds)).contains(swatch);
        assertThat(ask(other.with(Set.of(key)), this::swatchIds)).doesNotContain(swatch);
        assertThat(ask(MAKER, () -> swatches.remove(id, swatch))).isInstanceOf(Swatches.Outcome.Done.class);
        assertThat(ask(MAKER, () -> swatches.remove(id, swatch))).isInstanceOf(Swatches.Outcome.NoSwatch.class);
    }

    @Test
    void whoMayReadASheetMayReadItsPlanAndNoOther() {
        String planId = ask(MAKER, () -> things.add(ThingKind.CUTTING_PLAN));
        String sheet = ask(MAKER, () -> errands.add(OwnedThings.sheet(planId)).id());
        String another = ask(MAKER, () -> things.add(ThingKind.CUTTING_PLAN));
        ShareKey key = ask(MAKER, () -> shares.share(ThingKind.SHEET, sheet)).orElseThrow();
        Asker reader = Asker.STRANGER.with(Set.of(key));
        assertThat(ask(reader, () -> plans.byId(planId))).isPresent();
        assertThat(ask(reader, () -> plans.byId(another))).isEmpty();
        assertThat(ask(Asker.STRANGER, () -> plans.byId(planId))).isEmpty();
        ask(MAKER, () -> shares.unshare(ThingKind.SHEET, sheet));
        assertThat(ask(reader, () -> plans.byId(planId))).isEmpty();
    }

    @Test
    void onlyKeepersTakeListsOver() {
        SupplierLists.Order order = new SupplierLists.Order("Wendlow Mill", OnBadRow.SKIP, true);
        assertThatThrownBy(() -> askers.as(MAKER, () -> {
                    try {
                        return lists.take(
                                order,
                                rows -> {
                                    throw new AssertionError("the list is read");
                                },
                                SupplierLists.Watcher.NONE);
                    } catch (IOException broken) {
                        throw new AssertionError(broken);
                    }
                }))
                .isInstanceOf(NotAllowed.class);
    }

    private Swatches.Outcome tell(Asker asker, String clothId) {
        return ask(
                asker,
                () -> swatches.add(clothId, SwatchSamples.warp(SwatchSamples.DAY, new MarkPair(50, List.of(47.3)))));
    }

    private Set<String> swatchIds() {
        Set<String> ids = new HashSet<>();
        swatches.each(kept -> ids.add(kept.id()));
        return ids;
    }
}
