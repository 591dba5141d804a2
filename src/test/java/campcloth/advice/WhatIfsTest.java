package campcloth.advice;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.event.SafetyRule;
import campcloth.event.Spell;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** For how many cloths of an answer it is searched what would better their verdict. */
class WhatIfsTest {

    private static final SafetyRule RULE = Camp.rule("No more than a third", Optional.of(33.0), Optional.of(3.0));

    private static final List<Candidate> ALL = Camp.CATALOGUE.cloths().entrySet().stream()
            .map(entry -> new Candidate(entry.getKey(), entry.getValue()))
            .toList();

    @Test
    void underFewRulesEveryClothIsSearchedFor() {
        assertThat(searched(List.of(RULE), 1)).isEqualTo(ALL.size());
    }

    @Test
    void underVeryManyRulesAndFiresTheUsualPageIs() {
        assertThat(searched(Collections.nCopies(100, RULE), 24))
                .isGreaterThanOrEqualTo(20)
                .isLessThan(ALL.size() / 2);
    }

    private static int searched(List<SafetyRule> rules, int fires) {
        Spell[] spells =
                Collections.nCopies(fires, Camp.fireside(FireRole.SEATED, 2)).toArray(new Spell[0]);
        Event event = Camp.event(rules, spells);
        return Camp.ADVISER.whatIfs(new Question(event, Camp.TUNIC, ALL), ALL).size();
    }
}
