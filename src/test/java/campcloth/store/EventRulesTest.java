package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.event.KeptRules;
import campcloth.event.RuleDraft;
import campcloth.event.RulesHistory;
import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import campcloth.event.Season;
import campcloth.event.Seasons;
import campcloth.journey.WholeService;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;

/** Every version of an event's rules is kept with the event, and goes with it. */
@WholeService
class EventRulesTest {

    private static final SafetyRule SHARE =
            RuleDraft.of(Authority.EVENT, "A third at most").mostMeltable(33).rule();
    private static final SafetyRule WEIGHT =
            RuleDraft.of(Authority.VENUE, "Heavy cloth").leastWeight(300).rule();

    @Autowired
    private Events events;

    @Autowired
    private Seasons seasons;

    @Autowired
    private JdbcTemplate database;

    @Autowired
    private TransactionTemplate transaction;

    @Test
    void everyVersionIsKeptAsItStood() {
        KeptEvent first = events.add(event(List.of(SHARE)));
        KeptEvent second = replaced(first, List.of(SHARE, WEIGHT));
        KeptEvent third = replaced(second, List.of(SHARE, WEIGHT));
        KeptEvent fourth = replaced(third, List.of());
        assertThat(rulesAt(first)).containsExactly(SHARE);
        assertThat(rulesAt(second)).containsExactly(SHARE, WEIGHT);
        assertThat(rulesAt(fourth)).isEmpty();
        RulesHistory history = events.rulesHistory(first.id(), 10).orElseThrow();
        assertThat(history.total()).isEqualTo(4);
        assertThat(history.versions())
                .extracting(RulesHistory.Version::version)
                .containsExactly(fourth.version(), third.version(), second.version(), first.version());
        assertThat(history.versions()).extracting(RulesHistory.Version::rules).containsExactly(0, 2, 2, 1);
        assertThat(history.versions())
                .extracting(RulesHistory.Version::changed)
                .containsExactly(true, false, true, true);
        assertThat(events.rulesHistory(first.id(), 1).orElseThrow().versions()).hasSize(1);
    }

    @Test
    void whatIsRolledBackLeavesNoVersion() {
        KeptEvent kept = events.add(event(List.of(SHARE)));
        transaction.executeWithoutResult(status -> {
            replaced(kept, List.of(WEIGHT));
            status.setRollbackOnly();
        });
        assertThat(events.rulesHistory(kept.id(), 10).orElseThrow().total()).isEqualTo(1);
        assertThat(rulesAt(kept)).containsExactly(SHARE);
    }

    @Test
    void aStaleChangeLeavesNoVersion() {
        KeptEvent first = events.add(event(List.of(SHARE)));
        replaced(first, List.of(WEIGHT));
        assertThat(events.replace(first.id(), first.version(), event(List.of())))
                .isInstanceOf(Events.Change.Stale.class);
        assertThat(events.rulesHistory(first.id(), 10).orElseThrow().total()).isEqualTo(2);
    }

    @Test
    void theyGoWithTheEvent() {
        KeptEvent kept = replaced(events.add(event(List.of(SHARE))), List.of());
        events.remove(kept.id(), kept.version());
        assertThat(events.rulesHistory(kept.id(), 10)).isEmpty();
        assertThat(events.rulesAt(kept.id(), kept.version())).isEmpty();
        assertThat(database.queryForObject(
                        "select count(*) from event_rules where event_id = ?", Long.class, UUID.fromString(kept.id())))
                .isZero();
    }

    @Test
    void whatIsNotThereHasNoRules() {
        KeptEvent kept = events.add(event(List.of()));
        assertThat(events.rulesAt(kept.id(), 99)).isEqualTo(Optional.empty());
        assertThat(events.rulesAt("nowhere", 0)).isEmpty();
        assertThat(events.rulesHistory("nowhere", 10)).isEmpty();
    }

    private Event event(List<SafetyRule> rules) {
        return new Event("Wendlow river camp", Season.SPRING, seasons.spells(Season.SPRING), rules);
    }

    private KeptEvent replaced(KeptEvent kept, List<SafetyRule> rules) {
        Events.Change change =
                events.replace(kept.id(), kept.version(), kept.event().withRules(rules));
        return ((Events.Change.Done) change).event();
    }

    private List<SafetyRule> rulesAt(KeptEvent kept) {
        KeptRules rules = events.rulesAt(kept.id(), kept.version()).orElseThrow();
        assertThat(rules.version()).isEqualTo(kept.version());
        return rules.rules();
    }
}
