package campcloth.fire;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.event.RuleDraft;
import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RuleConflictsTest {

    private static final RuleDraft EVENT = RuleDraft.of(Authority.EVENT, "of the event");
    private static final RuleDraft VENUE = RuleDraft.of(Authority.VENUE, "of the venue");

    @Test
    void rulesThatSayTheSameOrSpeakOfOtherThingsDoNotDiffer() {
        assertThat(conflicts(EVENT.mostMeltable(20), VENUE.mostMeltable(20))).isEmpty();
        assertThat(conflicts(EVENT.mostMeltable(20), VENUE.leastWeight(300))).isEmpty();
        assertThat(conflicts(EVENT.forbidding(Set.of("polyester")), VENUE.allowingOnly(Set.of("wool"))))
                .isEmpty();
    }

    @Test
    void ofDifferentSharesTheLeastStands() {
        RuleConflict only = one(EVENT.mostMeltable(33), VENUE.mostMeltable(10));
        assertThat(only.rules()).extracting(SafetyRule::authority).containsExactly(Authority.VENUE, Authority.EVENT);
        assertThat(only.text())
                .isEqualTo(
                        "The share that melts: at most 10 %: Rule of the venue: \"of the venue\". The share that melts:"
                                + " at most 33 %: Rule of the event: \"of the event\". The strictest stands: at most 10 %.");
        assertThat(only.noClothMeetsAll()).isFalse();
    }

    @Test
    void ofDifferentWeightsAndDistancesTheGreatestStands() {
        assertThat(one(EVENT.leastWeight(200), VENUE.leastWeight(350)).stands())
                .isEqualTo("The strictest stands: at least 350 g/m2.");
        assertThat(one(EVENT.keepAtLeast(3), VENUE.keepAtLeast(1.5)).stands())
                .isEqualTo("The strictest stands: at least 3 m.");
    }

    @Test
    void aStrictestThatHoldsOnlyNearAFireSaysSo() {
        RuleConflict only = one(EVENT.mostMeltable(0).within(Optional.of(3.0)), VENUE.mostMeltable(33));
        assertThat(only.stands())
                .isEqualTo(
                        "The strictest stands: at most 0 % within 3 m of a fire; elsewhere the strictest of those that"
                                + " hold there.");
    }

    @Test
    void sameDemandWithinDifferentDistances() {
        RuleConflict only = one(
                EVENT.mostMeltable(0).within(Optional.of(3.0)),
                VENUE.mostMeltable(0).within(Optional.of(5.0)));
        assertThat(only.stands()).isEqualTo("The strictest stands: it holds within 5 m of a fire.");
    }

    @Test
    void whatOneAllowsAndAnotherForbidsIsForbidden() {
        RuleConflict only = one(EVENT.allowingOnly(Set.of("wool", "cotton")), VENUE.forbidding(Set.of("cotton")));
        assertThat(only.stands()).contains("only wool is left");
        assertThat(only.noClothMeetsAll()).isFalse();
    }

    @Test
    void whereNothingIsLeftNoClothMeetsAll() {
        RuleConflict lists = one(EVENT.allowingOnly(Set.of("wool")), VENUE.allowingOnly(Set.of("cotton")));
        assertThat(lists.noClothMeetsAll()).isTrue();
        assertThat(lists.text()).contains("of the event", "of the venue", "no cloth meets them all", "Ask");
        RuleConflict own = one(EVENT.allowingOnly(Set.of("wool")).forbidding(Set.of("wool")), VENUE.plainSurface());
        assertThat(own.noClothMeetsAll()).isTrue();
    }

    @Test
    void aListOfWhatMeltsMeetsNoLimitOfTheShareThatMelts() {
        RuleConflict only = one(EVENT.allowingOnly(Set.of("polyester", "polyamide")), VENUE.mostMeltable(50));
        assertThat(only.about()).isEqualTo("fibres that melt");
        assertThat(only.noClothMeetsAll()).isTrue();
        assertThat(conflicts(EVENT.allowingOnly(Set.of("polyester", "wool")), VENUE.mostMeltable(50)))
                .isEmpty();
    }

    @Test
    void twoEditionsOfAnAuthoritysRulesAreTold() {
        RuleConflict only = one(
                EVENT.leastWeight(200).from("Camp rules", "1", "2026-01-01"),
                RuleDraft.of(Authority.EVENT, "other words").leastWeight(200).from("camp rules", "2", "2027-01-01"));
        assertThat(only.about()).isEqualTo("the edition");
        assertThat(only.text()).contains("Edition 1, issued on 2026-01-01", "Edition 2", "does not lift an older one");
        assertThat(conflicts(EVENT.from("Camp rules", "1", "2026-01-01"), VENUE.from("Camp rules", "2", "2027-01-01")))
                .isEmpty();
    }

    @Test
    void authoritiesWithoutARuleSayWhomToAsk() {
        assertThat(MissingRules.of(List.of(EVENT.rule()))).containsExactly(Authority.VENUE, Authority.LOCAL_LAW);
        assertThat(MissingRules.sentence(Authority.VENUE)).contains("no permission", "owns the land");
        assertThat(MissingRules.sentence(Authority.LOCAL_LAW)).contains("local authority", "fire service");
    }

    private static RuleConflict one(RuleDraft... rules) {
        List<RuleConflict> conflicts = conflicts(rules);
        assertThat(conflicts).hasSize(1);
        return conflicts.get(0);
    }

    private static List<RuleConflict> conflicts(RuleDraft... rules) {
        return RuleConflicts.of(List.of(rules).stream().map(RuleDraft::rule).toList(), FireFixtures.FIBRES);
    }
}
