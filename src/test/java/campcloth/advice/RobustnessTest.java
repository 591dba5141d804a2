package campcloth.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Property;
import campcloth.cloth.Wear;
import campcloth.comfort.Comfort;
import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RobustnessTest {

    private static final long SEED = 20_26;
    private static final int EVENTS = 12;

    /** Over a shirt, where prickle does not count. */
    private static final Wear COAT = new Wear(false, Layer.OUTER, Fit.LOOSE, false, 65, 1.7);

    private static final Event MARKET = Camp.event(List.of(), Camp.WINDY_WINTER_DAY);

    @Test
    void theSameQuestionIsAnsweredTheSameInWhateverOrderTheClothsCome() {
        List<Candidate> turned = new ArrayList<>(Camp.ALL);
        Collections.reverse(turned);
        Robustness once = robustness(new Question(MARKET, Camp.TUNIC, Camp.ALL));
        assertThat(robustness(new Question(MARKET, Camp.TUNIC, Camp.ALL))).isEqualTo(once);
        assertThat(robustness(new Question(MARKET, Camp.TUNIC, turned))).isEqualTo(once);
        assertThat(once.samples()).isEqualTo(64);
    }

    @Test
    void equalClothsShareAlike() {
        Robustness vague =
                robustness(new Question(MARKET, Camp.TUNIC, named(Camp.WOOL, Camp.WOOL, Camp.WOOL, Camp.WOOL)));
        assertThat(vague.topThreePercent()).hasSize(4);
        assertThat(vague.topThreePercent().values())
                .allSatisfy(p -> assertThat(p).isCloseTo(75, within(17.0)));
        assertThat(vague.firstPlacePercent().orElseThrow()).isCloseTo(25, within(17.0));
        Cloth exact = exactly(Camp.WOOL);
        Robustness tied = robustness(new Question(MARKET, COAT, named(exact, exact, exact, exact)));
        assertThat(tied.topThreePercent().values())
                .allSatisfy(p -> assertThat(p).isCloseTo(75, within(1e-9)));
    }

    /** Nothing left to draw: the ranking is told again as it stands, every time. */
    @Test
    void exactFiguresAndOneWearerGiveTheRankingItself() {
        RandomEvents random = new RandomEvents(SEED);
        for (int i = 0; i < EVENTS; i++) {
            Event event = random.event();
            List<Candidate> exact = Camp.ALL.stream()
                    .map(c -> new Candidate(c.id(), exactly(Estimates.complete(c.cloth()))))
                    .toList();
            Question question = new Question(event, COAT, exact);
            Ranking ranking = Camp.ADVISER.rank(question);
            Robustness robustness = ofOneWearer(question, ranking);
            List<Judged> notRuledOut = ranking.judged().stream()
                    .filter(j -> j.verdict() != Verdict.RULED_OUT)
                    .toList();
            for (int place = 0; place < notRuledOut.size(); place++) {
                Judged judged = notRuledOut.get(place);
                boolean tied = place >= 2
                        && notRuledOut.size() > 3
                        && Math.abs(judged.score()
                                        - notRuledOut.get(place == 2 ? 3 : 2).score())
                                < 1e-9;
                double wanted = place < 3 ? 100 : 0;
                robustness
                        .topThreePercent(judged.candidate().id())
                        .filter(p -> !tied)
                        .ifPresent(p -> assertThat(p)
                                .as("%s, %s", event, judged.candidate().id())
                                .isCloseTo(wanted, within(1e-9)));
            }
        }
    }

    @Test
    void samplingCrossesNoGateAndGivesAllThreePlaces() {
        RandomEvents random = new RandomEvents(SEED);
        for (int i = 0; i < EVENTS; i++) {
            Event event = random.event();
            Question question = new Question(event, Camp.TUNIC, Camp.ALL);
            Ranking ranking = Camp.ADVISER.rank(question);
            Robustness robustness = robustness(question);
            String where = "seed " + SEED + ", event " + i;
            Map<String, Judged> judged = new HashMap<>();
            ranking.judged().forEach(j -> judged.put(j.candidate().id(), j));
            long open = ranking.judged().size() - ranking.count(Verdict.RULED_OUT);
            robustness.topThreePercent().forEach((id, percent) -> {
                Judged one = Objects.requireNonNull(judged.get(id));
                assertThat(one.verdict()).as("%s, %s", where, id).isNotEqualTo(Verdict.RULED_OUT);
                long milder = ranking.judged().stream()
                        .filter(other -> Contenders.gate(other) < Contenders.gate(one))
                        .count();
                assertThat(milder).as("%s, %s", where, id).isLessThan(3);
            });
            assertThat(robustness.topThreePercent().values().stream()
                            .mapToDouble(p -> p)
                            .sum())
                    .as(where)
                    .isCloseTo(100.0 * Math.min(3, open), within(1e-6));
            assertThat(robustness.sampled()).as(where).isLessThanOrEqualTo(Contenders.MOST);
            assertThat(robustness.firstPlacePercent().isPresent()).as(where).isEqualTo(open > 0);
        }
    }

    @Test
    void whereAllIsRuledOutNothingIsSampled() {
        Event strict = Camp.event(List.of(Camp.NO_SYNTHETICS_WITHIN_3_M), Camp.fireside(FireRole.SEATED, 1.5));
        List<Candidate> ruledOut = Camp.ranked(strict).stream()
                .filter(judged -> judged.verdict() == Verdict.RULED_OUT)
                .map(Judged::candidate)
                .toList();
        assertThat(ruledOut).isNotEmpty();
        Robustness none = robustness(new Question(strict, Camp.TUNIC, ruledOut));
        assertThat(none.sampled()).isZero();
        assertThat(none.firstPlacePercent()).isEmpty();
    }

    /** Three cloths that differ in nothing but their weight, of which they know less and less. */
    @Test
    void theLessIsKnownTheLessSureIsTheFirstPlace() {
        double last = 100;
        for (double spread = 0; spread <= 0.25; spread += 0.01) {
            List<Candidate> cloths =
                    named(weighing(400, spread), weighing(410, spread), weighing(430, spread), weighing(460, spread));
            Question question = new Question(MARKET, COAT, cloths);
            Robustness robustness = ofOneWearer(question, Camp.ADVISER.rank(question));
            double first = robustness.firstPlacePercent().orElseThrow();
            assertThat(first).as("spread %s", spread).isLessThanOrEqualTo(last);
            last = first;
        }
        assertThat(last).isLessThan(75);
    }

    @Test
    void ofOneClothAloneNoOrderIsCalledSure() {
        Event noon = Camp.event(List.of(), Camp.SUMMER_NOON);
        Robustness alone = robustness(new Question(noon, Camp.TUNIC, List.of(new Candidate("it", Camp.WOOL))));
        assertThat(alone.because()).contains("Only one").doesNotContain("is sure.");
    }

    @Test
    void itIsToldWhatWasDrawn() {
        Robustness robustness = robustness(new Question(MARKET, Camp.TUNIC, Camp.ALL));
        assertThat(robustness.drawn()).hasSize(4);
        assertThat(String.join(" ", robustness.drawn()))
                .contains("metabolic rate", "used to heat", "prickles", "vapour resistance");
        assertThat(robustness.topThreePercent()).hasSizeGreaterThan(3);
    }

    private static Robustness robustness(Question question) {
        return Camp.ADVISER.robustness(question, Camp.ADVISER.rank(question));
    }

    /** Of a wearer as the ranking presumes one: warmth by the lower metabolic rate, heat by the higher one. */
    private static Robustness ofOneWearer(Question question, Ranking ranking) {
        Comfort comfort = Comfort.in(question.event().spells(), question.event().place());
        return new Resampling(64, 1)
                .of(
                        ranking,
                        question.wear(),
                        wearer -> comfort,
                        cloth -> Camp.FIRE.judge(cloth, question.wear(), question.event()));
    }

    private static List<Candidate> named(Cloth... cloths) {
        return IntStream.range(0, cloths.length)
                .mapToObj(i -> new Candidate("inline-" + (i + 1), cloths[i]))
                .toList();
    }

    private static Cloth weighing(double gsm, double spread) {
        return exactly(Camp.WOOL)
                .with(
                        Property.WEIGHT_GSM,
                        new Figure(gsm, gsm * (1 - spread), gsm * (1 + spread), Basis.MEASURED, "drawn"));
    }

    private static Cloth exactly(Cloth completed) {
        UnaryOperator<Figure> exact = f -> Figure.exact(f.value(), f.basis(), f.source());
        Cloth cloth = completed;
        for (Map.Entry<Property, Figure> one : completed.figures().entrySet()) {
            cloth = cloth.with(one.getKey(), exact.apply(one.getValue()));
        }
        return cloth;
    }
}
