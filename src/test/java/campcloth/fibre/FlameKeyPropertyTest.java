package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.fibre.FlameFinding.Melting;
import campcloth.fibre.FlameFinding.OfThread;
import campcloth.fibre.FlameFinding.Ranked;
import campcloth.fibre.FlameFinding.Verdict;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** What holds of the burn-test key whatever was seen. */
class FlameKeyPropertyTest {

    private static final int CASES = 3000;
    private static final long SEED = 20_261_125L;
    private static final double TOLERANCE = 1e-9;

    private static void always(Consumer<Random> property) {
        for (int i = 0; i < CASES; i++) {
            long seed = SEED + i;
            try {
                property.accept(new Random(seed));
            } catch (AssertionError | RuntimeException broken) {
                Map<FlameFeature, String> drawn = draw(new Random(seed));
                throw new AssertionError(
                        "seed " + seed + ", first drawn " + drawn + ": " + broken.getMessage(), broken);
            }
        }
    }

    /** Each feature answered or not, with any of its answers. */
    private static Map<FlameFeature, String> draw(Random random) {
        Map<FlameFeature, String> seen = new EnumMap<>(FlameFeature.class);
        for (FlameFeature feature : FlameFeature.values()) {
            if (random.nextBoolean()) {
                seen.put(feature, any(feature, random).key());
            }
        }
        return seen;
    }

    private static FlameAnswer any(FlameFeature feature, Random random) {
        List<FlameAnswer> answers = FlameFixture.KEY.answers(feature);
        return answers.get(random.nextInt(answers.size()));
    }

    private static int rank(OfThread thread, String key) {
        List<String> order =
                thread.ranking().stream().map(r -> r.fibreClass().key()).toList();
        return order.indexOf(key);
    }

    @Test
    void probabilitiesSumToOneAndNoneIsOverTheCap() {
        always(random -> {
            OfThread thread = FlameFixture.thread(draw(random));
            double sum =
                    thread.ranking().stream().mapToDouble(Ranked::probability).sum();
            assertThat(sum + thread.notInTheKey()).isBetween(1 - TOLERANCE, 1 + TOLERANCE);
            assertThat(thread.ranking())
                    .hasSameSizeAs(FlameFixture.KEY.classes())
                    .allSatisfy(ranked -> assertThat(ranked.probability())
                            .isGreaterThan(0)
                            .isLessThanOrEqualTo(FlameKey.MOST_PROBABLE + TOLERANCE));
        });
    }

    @Test
    void rankedFromTheMostProbableDown() {
        always(random -> assertThat(FlameFixture.thread(draw(random)).ranking())
                .isSortedAccordingTo((one, other) -> Math.abs(one.probability() - other.probability()) < TOLERANCE
                        ? 0
                        : Double.compare(other.probability(), one.probability())));
    }

    @Test
    void aBeadOrFlamingDropsAlwaysMelt() {
        always(random -> {
            Map<FlameFeature, String> seen = draw(random);
            if (random.nextBoolean()) {
                seen.put(FlameFeature.RESIDUE, "hard-bead");
            } else {
                seen.put(FlameFeature.MOLTEN, "flaming-drips");
            }
            FlameFinding finding = FlameFixture.KEY.finding(List.of(
                    new ThreadSeen("warp", draw(random)),
                    new ThreadSeen("weft", seen),
                    new ThreadSeen("pile", draw(random))));
            assertThat(finding.melting()).isEqualTo(Melting.SHOWN);
        });
    }

    @Test
    void moreAnswersNeverTakeMeltingBack() {
        always(random -> {
            Map<FlameFeature, String> fewer = draw(random);
            Map<FlameFeature, String> more = draw(random);
            more.putAll(fewer);
            if (FlameFixture.thread(fewer).melting() == Melting.SHOWN) {
                assertThat(FlameFixture.thread(more).melting()).isEqualTo(Melting.SHOWN);
            }
        });
    }

    @Test
    void notSureOfAnythingIsThePriorAndUnsure() {
        Map<FlameFeature, String> notSure = new EnumMap<>(FlameFeature.class);
        for (FlameFeature feature : FlameFeature.values()) {
            notSure.put(feature, FlameAnswer.NOT_SURE);
        }
        OfThread thread = FlameFixture.thread(notSure);
        assertThat(thread.verdict()).isEqualTo(Verdict.UNSURE);
        assertThat(thread.ranking()).isEqualTo(FlameFixture.thread(Map.of()).ranking());
        assertThat(thread.next()).isEmpty();
    }

    @Test
    void nothingSeenIsThePriorAndUnsure() {
        OfThread thread = FlameFixture.thread(Map.of());
        double each = FlameKey.MOST_PROBABLE / FlameFixture.KEY.classes().size();
        assertThat(thread.verdict()).isEqualTo(Verdict.UNSURE);
        assertThat(thread.melting()).isEqualTo(Melting.NOT_SHOWN);
        assertThat(thread.ranking()).allSatisfy(ranked -> {
            assertThat(ranked.probability()).isBetween(each - TOLERANCE, each + TOLERANCE);
            assertThat(ranked.because()).isEmpty();
        });
    }

    @Test
    void oneAnswerIsUnsureWhateverItIs() {
        for (FlameFeature feature : FlameFeature.values()) {
            for (FlameAnswer answer : FlameFixture.KEY.answers(feature)) {
                assertThat(FlameFixture.thread(Map.of(feature, answer.key())).verdict())
                        .isEqualTo(Verdict.UNSURE);
            }
        }
    }

    @Test
    void theOrderOfAnswersAndThreadsDoesNotMatter() {
        always(random -> {
            Map<FlameFeature, String> seen = draw(random);
            List<Map.Entry<FlameFeature, String>> entries = new ArrayList<>(seen.entrySet());
            Collections.shuffle(entries, random);
            Map<FlameFeature, String> shuffled = new LinkedHashMap<>();
            entries.forEach(entry -> shuffled.put(entry.getKey(), entry.getValue()));
            assertThat(FlameFixture.thread(shuffled)).isEqualTo(FlameFixture.thread(seen));
            ThreadSeen warp = new ThreadSeen("warp", seen);
            ThreadSeen weft = new ThreadSeen("weft", draw(random));
            FlameFinding one = FlameFixture.KEY.finding(List.of(warp, weft));
            FlameFinding other = FlameFixture.KEY.finding(List.of(weft, warp));
            assertThat(one.verdict()).isEqualTo(other.verdict());
            assertThat(one.melting()).isEqualTo(other.melting());
            assertThat(one.threads()).containsExactlyInAnyOrderElementsOf(other.threads());
        });
    }

    @Test
    void anAnswerNeverLowersTheClassThatItIsMostLikelyWith() {
        always(random -> {
            Map<FlameFeature, String> seen = draw(random);
            FlameFeature feature = FlameFeature.values()[random.nextInt(FlameFeature.values().length)];
            seen.remove(feature);
            FlameAnswer answer = any(feature, random);
            OfThread alone = FlameFixture.thread(Map.of(feature, answer.key()));
            String favourite = alone.first().key();
            OfThread before = FlameFixture.thread(seen);
            Map<FlameFeature, String> more = new EnumMap<>(seen.isEmpty() ? Map.of(feature, answer.key()) : seen);
            more.put(feature, answer.key());
            OfThread after = FlameFixture.thread(more);
            assertThat(rank(after, favourite)).isLessThanOrEqualTo(rank(before, favourite));
            assertThat(probability(after, favourite))
                    .isGreaterThanOrEqualTo(probability(before, favourite) - TOLERANCE);
        });
    }

    private static double probability(OfThread thread, String key) {
        return thread.ranking().get(rank(thread, key)).probability();
    }

    @Test
    void theNextQuestionIsOneNotAnswered() {
        always(random -> {
            Map<FlameFeature, String> seen = draw(random);
            OfThread thread = FlameFixture.thread(seen);
            if (seen.size() == FlameFeature.values().length) {
                assertThat(thread.next()).isEmpty();
            } else {
                FlameFinding.Next next = thread.next().orElseThrow();
                assertThat(seen).doesNotContainKey(next.feature());
                double most = Math.log(FlameFixture.KEY.answers(next.feature()).size()) / Math.log(2);
                assertThat(next.expectedBits()).isBetween(0.0, most);
            }
        });
    }

    @Test
    void whatTwoThreadsTellIsNeverSurerThanTheLessSure() {
        always(random -> {
            FlameFinding finding = FlameFixture.KEY.finding(
                    List.of(new ThreadSeen("warp", draw(random)), new ThreadSeen("weft", draw(random))));
            List<Verdict> each =
                    finding.threads().stream().map(OfThread::verdict).toList();
            if (finding.verdict() == Verdict.CLASS) {
                assertThat(each).containsOnly(Verdict.CLASS);
            }
            if (each.contains(Verdict.FITS_NOTHING) || each.contains(Verdict.UNSURE)) {
                assertThat(finding.verdict()).isIn(Verdict.FITS_NOTHING, Verdict.UNSURE);
            }
        });
    }

    /** Whatever else was seen: a thread that melts is never named after fibres that do not. */
    @Test
    void whatWasSeenToMeltIsNeverNamedAfterAFibreThatDoesNot() {
        always(random -> {
            OfThread thread = FlameFixture.thread(draw(random));
            if (thread.melting() == Melting.SHOWN && !thread.first().melts()) {
                assertThat(thread.verdict()).isIn(Verdict.FITS_NOTHING, Verdict.UNSURE);
            }
        });
    }
}
