package campcloth.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Cloth;
import campcloth.event.Event;
import campcloth.figure.PictureRules;
import campcloth.figure.Shown;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class RankingDrawingTest {

    private static final Cloth CLOTH =
            Camp.CATALOGUE.cloths().values().iterator().next();

    @Test
    void aRealRankingIsDrawn() throws Exception {
        Event event = Camp.event(List.of(), Camp.WINDY_WINTER_DAY);
        List<Candidate> all = Camp.CATALOGUE.cloths().entrySet().stream()
                .map(e -> new Candidate(e.getKey(), e.getValue()))
                .toList();
        Question question = new Question(event, Camp.TUNIC, all);
        Ranking ranking = Camp.ADVISER.rank(question);
        Robustness robustness = Camp.ADVISER.robustness(question, ranking);
        String svg = Shown.kept("ranking", RankingDrawing.svg(ranking, robustness));
        PictureRules picture =
                PictureRules.read(svg, "ranking").readableOnAPhone().wordsKeepTheirPlaces();
        List<RankingRow> rows = RankingDrawing.rows(ranking, robustness);
        assertThat(rows).hasSize(RankingDrawing.MOST);
        assertThat(rows.get(0).name())
                .isEqualTo(ranking.judged().get(0).candidate().cloth().name());
        assertThat(picture.description()).contains(rows.get(7).sentence(), robustness.because());
        assertThat(String.join(" ", picture.words()))
                .contains(all.size() - ranking.count(Verdict.RULED_OUT) - 8 + " more are not shown");
    }

    @Test
    void whatIsDrawnIsWhatIsTold() throws Exception {
        Ranking ranking = ranking(List.of(judged("a", "Thick coating", Verdict.CAUTION, true, 40, 25, 65)));
        Robustness robustness = robustness(Map.of("a", 75.0));
        PictureRules picture = PictureRules.read(RankingDrawing.svg(ranking, robustness), "one");
        Element interval = bars(picture, "url(#rising)").get(1);
        assertThat(number(interval, "x")).isCloseTo(10 + 0.25 * 190, within(0.01));
        assertThat(number(interval, "width")).isCloseTo(0.40 * 190, within(0.01));
        Element share = bars(picture, "url(#falling)").get(1);
        assertThat(number(share, "width")).isCloseTo(0.75 * 190, within(0.01));
        assertThat(picture.words()).contains("1. Thick coating", "with caution", "40 (25 to 65)", "75 % first three");
        assertThat(RankingDrawing.text(ranking, robustness))
                .contains(
                        "1. Thick coating (with caution): score 40, from 25 to 65; among the first three in 75 % of the"
                                + " drawn rankings.");
    }

    @Test
    void ruledOutClothsAreCountedNeverDrawn() throws Exception {
        SplittableRandom random = new SplittableRandom(31);
        for (int i = 0; i < 400; i++) {
            List<Judged> judged = new ArrayList<>();
            Map<String, Double> top = new HashMap<>();
            int cloths = random.nextInt(0, 14);
            for (int c = 0; c < cloths; c++) {
                double[] scores = random.doubles(3, 0, 100).sorted().toArray();
                Verdict verdict = Verdict.values()[random.nextInt(3)];
                judged.add(judged(
                        "id" + c,
                        "cloth" + c + "x" + verdict,
                        verdict,
                        random.nextBoolean(),
                        scores[1],
                        scores[0],
                        scores[2]));
                if (verdict != Verdict.RULED_OUT && random.nextInt(3) > 0) {
                    top.put("id" + c, random.nextInt(4) == 0 ? 0 : random.nextDouble(100));
                }
            }
            Ranking ranking = ranking(judged);
            Robustness robustness = robustness(top);
            String which = "seed 31, draw " + i;
            String svg = RankingDrawing.svg(ranking, robustness);
            PictureRules picture =
                    PictureRules.read(svg, which).readableOnAPhone().wordsKeepTheirPlaces();
            assertThat(svg).as(which).doesNotContain("RULED_OUT");
            long out = ranking.count(Verdict.RULED_OUT);
            assertThat(picture.description().contains("ruled out and not shown"))
                    .as(which)
                    .isEqualTo(out > 0);
            assertThat(RankingDrawing.rows(ranking, robustness)).as(which).hasSize((int) Math.min(8, cloths - out));
        }
    }

    @Test
    void hostileNamesStayWords() throws Exception {
        for (String hostile : PictureRules.HOSTILE) {
            Ranking ranking = ranking(List.of(judged("a", hostile, Verdict.SUITABLE, false, 100, 0, 100)));
            PictureRules.read(RankingDrawing.svg(ranking, robustness(Map.of())), hostile.substring(0, 5))
                    .readableOnAPhone()
                    .wordsKeepTheirPlaces();
        }
    }

    private static Judged judged(
            String id, String name, Verdict verdict, boolean suits, double score, double low, double high) {
        Cloth named = new Cloth(
                name.substring(0, Math.min(name.length(), 200)),
                CLOTH.blend(),
                CLOTH.weave(),
                CLOTH.surface(),
                CLOTH.finish(),
                false,
                false,
                CLOTH.figures(),
                "",
                CLOTH.flameTreatment());
        return new Judged(
                new Candidate(id, named), verdict, suits, score, low, high, List.of(), List.of(), List.of(), List.of());
    }

    private static Ranking ranking(List<Judged> judged) {
        return new Ranking(judged, List.of(), List.of(), Map.of(), List.of(), Optional.empty());
    }

    private static Robustness robustness(Map<String, Double> top) {
        return new Robustness(64, 1, Optional.empty(), top, List.of(), "Said in plain words.");
    }

    private static List<Element> bars(PictureRules picture, String fill) {
        return picture.all("rect").stream()
                .filter(r -> r.getAttribute("fill").equals(fill))
                .toList();
    }

    private static double number(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }
}
