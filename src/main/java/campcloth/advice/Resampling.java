package campcloth.advice;

import campcloth.advice.sample.Points;
import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.Prickle;
import campcloth.cloth.Wear;
import campcloth.comfort.Comfort;
import campcloth.figure.Words;
import campcloth.fire.FireJudgement;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Ranks the contenders again and again, with figures and wearers drawn from their intervals: by the same models, criteria and
 * weights, behind the same gates. How the wearer and the cloths are drawn: {@link SampledWearer}, {@link SampledCloth}. Nothing
 * is interpolated. A few trial rankings of all cloths tell who the contenders are ({@link Contenders}).
 *
 * @param samples how many times
 * @param seed of the draws
 */
record Resampling(int samples, long seed) {

    /** Project choice: a share of a half is then known to 6 points, and the answer takes no more than a moment. */
    static final Resampling USUAL = new Resampling(64, 1960);

    /** Project choice. */
    private static final int TRIALS = 8;

    /**
     * @param wearers the event for a sampled wearer
     * @param fire what fire and rules say of a completed cloth
     */
    Robustness of(
            Ranking ranking, Wear wear, Function<SampledWearer, Comfort> wearers, Function<Cloth, FireJudgement> fire) {
        List<Judged> open = Contenders.open(ranking.judged());
        if (open.isEmpty()) {
            return Robustness.nothingToChoose(samples, seed);
        }
        return new Run(ranking.weights(), wear, wearers, fire).of(open);
    }

    private final class Run {

        private final Map<String, Double> weights;
        private final Wear wear;
        private final Function<SampledWearer, Comfort> wearers;
        private final Function<Cloth, FireJudgement> fire;
        private final Points points;
        private final Comfort usual;

        Run(
                Map<String, Double> weights,
                Wear wear,
                Function<SampledWearer, Comfort> wearers,
                Function<Cloth, FireJudgement> fire) {
            this.weights = weights;
            this.wear = wear;
            this.wearers = wearers;
            this.fire = fire;
            this.usual = wearers.apply(SampledWearer.USUAL);
            this.points = Points.of(samples, SampledWearer.DIMENSIONS, seed);
        }

        Robustness of(List<Judged> open) {
            List<SampledCloth> cloths = open.parallelStream()
                    .map(judged -> sampled(judged.candidate()))
                    .toList();
            List<double[]> trials = cloths.size() <= Contenders.MOST ? List.of() : scores(0, TRIALS, cloths);
            List<Integer> chosen = trials.isEmpty()
                    ? IntStream.range(0, cloths.size()).boxed().toList()
                    : Contenders.nearest(cloths.size(), trials);
            Places places = places(cloths, chosen, trials, open);
            Map<String, Double> topThree = new LinkedHashMap<>();
            for (int i = 0; i < chosen.size(); i++) {
                topThree.put(open.get(chosen.get(i)).candidate().id(), places.topThreePercent(i));
            }
            double first = places.firstPercent(0);
            return new Robustness(
                    samples,
                    seed,
                    Optional.of(first),
                    topThree,
                    DRAWN,
                    open.size() == 1 ? ALONE : because(open.get(0), first));
        }

        /** Of the cloths chosen, over all samples; the trials are the first of them. */
        private Places places(
                List<SampledCloth> cloths, List<Integer> chosen, List<double[]> trials, List<Judged> open) {
            Places places = new Places(
                    chosen.stream().map(i -> Contenders.gate(open.get(i))).toList());
            trials.forEach(scores ->
                    places.add(chosen.stream().mapToDouble(i -> scores[i]).toArray()));
            scores(trials.size(), samples, chosen.stream().map(cloths::get).toList())
                    .forEach(places::add);
            return places;
        }

        /** Of some samples in their order, each worked out by itself. */
        private List<double[]> scores(int from, int to, List<SampledCloth> cloths) {
            return IntStream.range(from, to)
                    .parallel()
                    .mapToObj(sample -> scores(sample, cloths))
                    .toList();
        }

        private double[] scores(int sample, List<SampledCloth> cloths) {
            SampledWearer wearer = SampledWearer.at(points, sample);
            Comfort comfort = wearers.apply(wearer);
            Bounds bounds = Bounds.atBestFigures(comfort, cloths.get(0).completed(), wear);
            return cloths.stream()
                    .mapToDouble(cloth -> score(cloth.facts(sample, wearer, comfort, bounds)))
                    .toArray();
        }

        private double score(Facts facts) {
            return Criteria.ALL.stream()
                    .mapToDouble(criterion -> weights.getOrDefault(criterion.name(), 0.0) * criterion.score(facts))
                    .sum();
        }

        private SampledCloth sampled(Candidate candidate) {
            Cloth completed = Estimates.complete(candidate.cloth());
            return new SampledCloth(
                    completed,
                    wear,
                    usual.ensembles(completed, wear),
                    fire.apply(completed),
                    Prickle.of(completed),
                    SampledCloth.points(candidate.id(), samples, seed));
        }
    }

    private static final List<String> DRAWN = Stream.concat(SampledWearer.DRAWN.stream(), Stream.of(SampledCloth.WHAT))
            .toList();

    private static final String ALONE =
            "Only one of these cloths is not ruled out: there is no order to be sure or unsure of.";

    private String because(Judged leader, double firstPercent) {
        return "\"" + leader.candidate().cloth().name() + "\" stays first in " + Words.fixed(firstPercent, 0) + " % of "
                + samples + " rankings with figures and wearers drawn from their intervals: " + sureness(firstPercent)
                + " Weather, outfit, fire and rules stayed as they are.";
    }

    /** Project choice. */
    private static String sureness(double firstPercent) {
        if (firstPercent >= 90) {
            return "the first place is sure.";
        }
        return firstPercent >= 50
                ? "the first place is likely, not sure."
                : "the first place is open; what follows may be as good.";
    }
}
