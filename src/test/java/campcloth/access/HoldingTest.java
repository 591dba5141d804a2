package campcloth.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.security.SecureRandom;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoldingTest {

    private static final UUID OWNER = new UUID(1, 1);
    private static final UUID OTHER = new UUID(2, 2);
    private static final ShareKey KEY = ShareKey.random(new SecureRandom());

    @ParameterizedTest
    @CsvSource({
        // who, belongs to, key shown, reads, changes, changes rules
        "owner,    owner,  no,  true,  true,  true",
        "maker,    owner,  no,  false, false, false",
        "maker,    owner,  yes, true,  false, false",
        "keeper,   owner,  yes, true,  false, false",
        "marshal,  owner,  no,  false, false, false",
        "marshal,  owner,  yes, true,  false, true",
        "stranger, owner,  no,  false, false, false",
        "stranger, owner,  yes, true,  false, false",
        "maker,    nobody, no,  true,  false, false",
        "marshal,  nobody, no,  true,  true,  true",
        "keeper,   nobody, no,  true,  false, false",
        "stranger, nobody, no,  false, false, false",
        "local,    nobody, no,  true,  true,  true"
    })
    void whoMayReadAndChange(
            String who, String owner, String shown, boolean reads, boolean changes, boolean changesRules) {
        Holding holding = new Holding(
                owner.equals("owner") ? Optional.of(OWNER) : Optional.empty(),
                owner.equals("owner") ? Optional.of(KEY) : Optional.empty());
        Asker asker = asker(who).with(shown.equals("yes") ? Set.of(KEY) : Set.of());
        assertThat(holding.mayRead(asker)).isEqualTo(reads);
        assertThat(holding.mayChange(asker, Role.MARSHAL)).isEqualTo(changes);
        assertThat(holding.mayChangeRules(asker)).isEqualTo(changesRules);
    }

    private static Asker asker(String who) {
        return switch (who) {
            case "owner" -> Asker.of(OWNER, Set.of(Role.MAKER));
            case "maker" -> Asker.of(OTHER, Set.of(Role.MAKER));
            case "keeper" -> Asker.of(OTHER, Set.of(Role.KEEPER));
            case "marshal" -> Asker.of(OTHER, Set.of(Role.MARSHAL));
            case "local" -> Asker.LOCAL;
            default -> Asker.STRANGER;
        };
    }

    @Test
    void anotherKeyOpensNothing() {
        Holding holding = new Holding(Optional.of(OWNER), Optional.of(KEY));
        assertThat(holding.mayRead(Asker.STRANGER.with(Set.of(ShareKey.random(new SecureRandom())))))
                .isFalse();
    }

    @Test
    void theAskerBeforeAsksAgainAfterwards() {
        Askers askers = new Askers(Asker.STRANGER);
        Asker owner = Asker.of(OWNER, Set.of(Role.MAKER));
        assertThat(askers.as(owner, () -> askers.as(Asker.LOCAL, askers::now))).isEqualTo(Asker.LOCAL);
        assertThat(askers.as(owner, askers::now)).isEqualTo(owner);
        assertThat(askers.now()).isEqualTo(Asker.STRANGER);
    }

    @Test
    void aKeyDoesNotShowItselfInLogs() {
        assertThat(KEY.toString()).doesNotContain(KEY.text());
        assertThat(ShareKey.in(KEY.text())).contains(KEY);
        assertThat(ShareKey.in("x")).isEmpty();
    }
}
