package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.access.Asker;
import campcloth.access.NotAllowed;
import campcloth.access.Role;
import campcloth.access.ShareKey;
import campcloth.access.ThingKind;
import campcloth.journey.SeveralAskers;
import campcloth.store.OwnedThings.Outcome;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Who reads, lists, changes, removes and shares what belongs to whom, for every kind of thing. */
@SeveralAskers
class OwnershipTest extends KeptThings {

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
}
