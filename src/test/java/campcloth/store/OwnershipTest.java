package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.NotAllowed;
import campcloth.access.Role;
import campcloth.access.ShareKey;
import campcloth.access.Shares;
import campcloth.access.ThingKind;
import campcloth.cloth.Cloths;
import campcloth.cloth.MarkPair;
import campcloth.cloth.SwatchSamples;
import campcloth.cloth.Swatches;
import campcloth.errand.ErrandSamples;
import campcloth.errand.Errands;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.Season;
import campcloth.journey.SeveralAskers;
import campcloth.plan.Plans;
import campcloth.store.OwnedThings.Outcome;
import campcloth.supply.SupplierLists;
import campcloth.supply.SupplierLists.OnBadRow;
import java.io.IOException;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;

/** Who reads, lists, changes, removes and shares what belongs to whom, for every kind of thing. */
@SeveralAskers
class OwnershipTest {

    private static final UUID OWNER = new UUID(7, 1);
    private static final UUID OTHER = new UUID(7, 2);
    private static final Asker MAKER = Asker.of(OWNER, Set.of(Role.MAKER));

    /** Who asks, whose the thing is, whether its link is shown; whether it is read, listed; how changing and sharing go. */
    private static final List<String> TABLE = List.of(
            "owner    own    no   true  true  DONE",
            "maker    other  no   false false MISSING",
            "maker    other  yes  true  false NOT_ALLOWED",
            "maker    common no   true  true  NOT_ALLOWED",
            "guardian other  no   false false MISSING",
            "guardian other  yes  true  false NOT_ALLOWED",
            "guardian common no   true  true  DONE",
            "stranger other  no   false false MISSING",
            "stranger other  yes  true  false NOT_ALLOWED",
            "stranger common no   false false MISSING",
            "stranger common yes  true  false NOT_ALLOWED",
            "local    common no   true  true  DONE",
            "local    other  no   false false MISSING");

    @Autowired
    private Shares shares;

    @Autowired
    private Askers askers;

    @Autowired
    private Cloths cloths;

    @Autowired
    private Swatches swatches;

    @Autowired
    private Events events;

    @Autowired
    private Plans plans;

    @Autowired
    private Errands errands;

    @Autowired
    private SupplierLists lists;

    private OwnedThings things;

    @BeforeEach
    void ofEveryKind() {
        things = new OwnedThings(cloths, events, plans, errands);
    }

    static Stream<Arguments> cases() {
        return Arrays.stream(ThingKind.values())
                .flatMap(kind -> TABLE.stream().map(line -> Arguments.of(kind, line.split(" +"))));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void whoMayDoWhat(ThingKind kind, String[] row) {
        String id = made(kind, row[1]);
        ShareKey key = keyOf(kind, row[1], id);
        Asker asker = asker(row[0], kind).with(row[2].equals("yes") ? Set.of(key) : Set.of());
        Outcome expected = Outcome.valueOf(row[5]);
        assertThat(ask(asker, () -> things.isRead(kind, id))).isEqualTo(Boolean.valueOf(row[3]));
        assertThat(ask(asker, () -> shares.of(kind, id)).isPresent()).isEqualTo(Boolean.valueOf(row[3]));
        assertThat(ask(asker, () -> things.listed(kind).contains(id))).isEqualTo(Boolean.valueOf(row[4]));
        assertThat(ask(
                        asker,
                        () -> OwnedThings.outcome(() -> shares.share(kind, id).isPresent())))
                .isEqualTo(expected);
        assertThat(ask(asker, () -> OwnedThings.outcome(() -> shares.unshare(kind, id))))
                .isEqualTo(expected);
        if (kind == ThingKind.CUTTING_PLAN) {
            return;
        }
        if (expected == Outcome.DONE) {
            Asker again = asker.with(Set.of());
            if (kind != ThingKind.SHEET) {
                assertThat(ask(again, () -> things.change(kind, id))).isEqualTo(expected);
            }
            assertThat(ask(again, () -> things.remove(kind, id))).isEqualTo(expected);
            assertThat(ask(again, () -> things.isRead(kind, id))).isFalse();
        } else {
            assertThat(ask(asker, () -> things.change(kind, id))).isEqualTo(expected);
            assertThat(ask(asker, () -> things.remove(kind, id))).isEqualTo(expected);
        }
    }

    @ParameterizedTest
    @EnumSource
    void aLinkIsTheSameUntilItIsTakenBackAndOpensNothingFromThenOn(ThingKind kind) {
        String id = made(kind, "own");
        ShareKey key = ask(MAKER, () -> shares.share(kind, id)).orElseThrow();
        assertThat(ask(MAKER, () -> shares.share(kind, id))).contains(key);
        Asker reader = Asker.STRANGER.with(Set.of(key));
        assertThat(ask(reader, () -> things.isRead(kind, id))).isTrue();
        assertThat(ask(reader, () -> shares.of(kind, id)).orElseThrow().key()).isEmpty();
        assertThat(ask(MAKER, () -> shares.of(kind, id)).orElseThrow().key()).contains(key);
        assertThat(ask(MAKER, () -> shares.unshare(kind, id))).isTrue();
        assertThat(ask(MAKER, () -> shares.unshare(kind, id))).isTrue();
        assertThat(ask(reader, () -> things.isRead(kind, id))).isFalse();
        assertThat(ask(MAKER, () -> shares.share(kind, id)).orElseThrow()).isNotEqualTo(key);
        assertThat(ask(reader, () -> things.isRead(kind, id))).isFalse();
    }

    @ParameterizedTest
    @EnumSource
    void whoIsNoMakerKeepsNothing(ThingKind kind) {
        assertThatThrownBy(() -> ask(Asker.STRANGER, () -> things.add(kind))).isInstanceOf(NotAllowed.class);
        assertThatThrownBy(() -> ask(Asker.of(OTHER, Set.of(Role.KEEPER)), () -> things.add(kind)))
                .isInstanceOf(NotAllowed.class);
    }

    @ParameterizedTest
    @EnumSource
    void handingOverNeedsTheRoleAndOwnership(ThingKind kind) {
        boolean can = kind == ThingKind.CLOTH || kind == ThingKind.EVENT;
        String id = made(kind, "own");
        Asker guardian = Asker.of(OWNER, Set.of(Role.MAKER, kind.keeper()));
        Asker otherGuardian = asker("guardian", kind);
        assertThat(ask(MAKER, () -> OwnedThings.outcome(() -> shares.handOver(kind, id))))
                .isEqualTo(Outcome.NOT_ALLOWED);
        assertThat(ask(otherGuardian, () -> OwnedThings.outcome(() -> shares.handOver(kind, id))))
                .isEqualTo(Outcome.MISSING);
        assertThat(ask(guardian, () -> OwnedThings.outcome(() -> shares.handOver(kind, id))))
                .isEqualTo(can ? Outcome.DONE : Outcome.NOT_ALLOWED);
        assertThat(ask(otherGuardian, () -> things.listed(kind).contains(id))).isEqualTo(can);
        if (can) {
            assertThat(ask(MAKER, () -> shares.handOver(kind, id))).isTrue();
            assertThat(ask(otherGuardian, () -> things.change(kind, id))).isEqualTo(Outcome.DONE);
        }
    }

    @Test
    void aMarshalWithTheLinkChangesTheRulesAndNothingElse() {
        String id = made(ThingKind.EVENT, "other");
        ShareKey key = keyOf(ThingKind.EVENT, "other", id);
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
        String id = made(ThingKind.CLOTH, "own");
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

    private String made(ThingKind kind, String whose) {
        return switch (whose) {
            case "own" -> ask(MAKER, () -> things.add(kind));
            case "other" -> ask(Asker.of(OTHER, Set.of(Role.MAKER)), () -> things.add(kind));
            default -> ask(Asker.LOCAL, () -> things.add(kind));
        };
    }

    private ShareKey keyOf(ThingKind kind, String whose, String id) {
        Asker sharing = switch (whose) {
            case "own" -> MAKER;
            case "other" -> Asker.of(OTHER, Set.of(Role.MAKER));
            default -> Asker.LOCAL;
        };
        return ask(sharing, () -> shares.share(kind, id)).orElseThrow();
    }

    private static Asker asker(String who, ThingKind kind) {
        return switch (who) {
            case "owner" -> MAKER;
            case "maker" -> Asker.of(new UUID(7, 3), Set.of(Role.MAKER));
            case "guardian" -> Asker.of(new UUID(7, 4), Set.of(kind.keeper()));
            case "local" -> Asker.LOCAL;
            default -> Asker.STRANGER;
        };
    }

    private <T> T ask(Asker asker, Supplier<T> work) {
        return askers.as(asker, work);
    }
}
