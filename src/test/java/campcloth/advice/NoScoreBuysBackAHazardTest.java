package campcloth.advice;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.Property;
import campcloth.event.Event;
import campcloth.event.SafetyRule;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.fire.FireJudgement;
import campcloth.fire.FireJudgement.Gate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What must hold at every event: generated events and rules over the whole catalogue. */
class NoScoreBuysBackAHazardTest {

    private static final long SEED = 20_26;
    private static final int EVENTS = 60;

    /** With the cloths of the catalogue more than 100 000 cases. */
    private static final int MANY_EVENTS = 400;

    private static final List<Property> COMFORT = List.of(
            Property.AIR_PERMEABILITY_MM_S,
            Property.VAPOUR_RESISTANCE_M2PA_W,
            Property.FIBRE_DIAMETER_UM,
            Property.FIBRE_DIAMETER_CV_PERCENT);

    private final RandomEvents random = new RandomEvents(SEED);

    @Test
    void verdictsComeBeforeScoresAndAllCriteriaAreThereWithinTheirRange() {
        for (int i = 0; i < EVENTS; i++) {
            Event event = random.event();
            List<Judged> ranked = Camp.ranked(event);
            assertThat(ranked.stream().map(Judged::verdict))
                    .as("seed %d, event %d: %s", SEED, i, event)
                    .isSorted();
            for (Judged judged : ranked) {
                inRange(
                        judged,
                        "seed " + SEED + ", event " + i + ", "
                                + judged.candidate().id());
            }
        }
    }

    @Test
    @DisplayName(
            "9 No score elsewhere lifts a cloth out of RULED_OUT: not even figures of comfort that are as good as can be")
    void noFlatteryLiftsAClothOutOfBeingRuledOut() {
        Map<String, Cloth> plain = Camp.CATALOGUE.cloths().entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, e -> Estimates.complete(e.getValue())));
        int cases = 0;
        for (int i = 0; i < MANY_EVENTS; i++) {
            Event event = random.event();
            List<Candidate> flattered = Camp.CATALOGUE.cloths().entrySet().stream()
                    .map(e -> new Candidate(e.getKey(), flattered(e.getValue())))
                    .toList();
            for (Judged judged : Camp.ranked(event, flattered)) {
                Cloth plainly =
                        Objects.requireNonNull(plain.get(judged.candidate().id()));
                FireJudgement fire = Camp.FIRE.judge(plainly, Camp.TUNIC, event);
                assertThat(fire.gate() == Gate.RULED_OUT)
                        .as("seed %d, event %d, %s", SEED, i, judged.candidate().id())
                        .isEqualTo(judged.verdict() == Verdict.RULED_OUT);
                cases++;
            }
        }
        assertThat(cases).isGreaterThan(100_000);
    }

    /** The same cloth with other figures of comfort: any that can be. */
    private Cloth flattered(Cloth cloth) {
        Map<Property, Figure> figures = new HashMap<>(cloth.figures());
        for (Property property : COMFORT) {
            double value =
                    random.between(property.range().least(), property.range().most());
            figures.put(property, new Figure(value, value, value, Basis.MEASURED, "drawn"));
        }
        return new Cloth(
                cloth.name(),
                cloth.blend(),
                cloth.weave(),
                cloth.surface(),
                cloth.finish(),
                cloth.nap(),
                cloth.stretch(),
                figures,
                cloth.note());
    }

    @Test
    void noRuleEverImprovesAVerdict() {
        for (int i = 0; i < EVENTS; i++) {
            List<SafetyRule> rules = new ArrayList<>(random.rules());
            Event before = random.event(rules);
            rules.addAll(random.rules(1));
            Event after = new Event(before.name(), before.season(), before.spells(), rules);
            Map<String, Verdict> without = verdicts(before);
            Map<String, Verdict> with = verdicts(after);
            for (Map.Entry<String, Verdict> one : without.entrySet()) {
                assertThat(with.get(one.getKey()))
                        .as("seed %d, event %d, %s, rule %s", SEED, i, one.getKey(), rules.get(rules.size() - 1))
                        .isGreaterThanOrEqualTo(one.getValue());
            }
        }
    }

    private static void inRange(Judged judged, String where) {
        assertThat(judged.criteria().stream().map(Assessment::criterion))
                .as(where)
                .containsExactly("warmth", "heat", "breathability", "itch", "fire", "weight");
        for (Assessment a : judged.criteria()) {
            assertThat(a.score()).as("%s, %s", where, a).isBetween(0.0, 100.0);
            assertThat(a.scoreLow()).as("%s, %s", where, a).isLessThanOrEqualTo(a.score());
            assertThat(a.scoreHigh()).as("%s, %s", where, a).isGreaterThanOrEqualTo(a.score());
            assertThat(a.because()).as(where).isNotBlank();
            a.quantity()
                    .ifPresent(q -> assertThat(q.value()).as("%s, %s", where, a).isBetween(q.low(), q.high()));
        }
        assertThat(judged.score()).as(where).isBetween(judged.scoreLow(), judged.scoreHigh());
    }

    private static Map<String, Verdict> verdicts(Event event) {
        Map<String, Verdict> verdicts = new HashMap<>();
        Camp.ranked(event).forEach(j -> verdicts.put(j.candidate().id(), j.verdict()));
        return verdicts;
    }
}
