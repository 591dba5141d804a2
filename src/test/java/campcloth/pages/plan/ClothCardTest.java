package campcloth.pages.plan;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.advice.Adviser;
import campcloth.advice.Candidate;
import campcloth.advice.Judged;
import campcloth.advice.Ranking;
import campcloth.advice.Verdict;
import campcloth.advice.Warning;
import campcloth.cloth.Outfit;
import campcloth.cloth.ShippedCatalogue;
import campcloth.event.Season;
import campcloth.fire.FireAdvice;
import campcloth.fire.FireRules;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a card shows of a judgement, for every cloth of the catalogue in every season. */
class ClothCardTest {

    private static final ShippedCatalogue CATALOGUE = ShippedCatalogue.get();
    private static final Adviser ADVISER = new Adviser(new FireAdvice(new FireRules(CATALOGUE.fibres())));

    @ParameterizedTest
    @EnumSource
    void nothingUrgentIsHiddenAndTheWorstStandsFirst(Season season) {
        Ranking ranking = ranking(season);
        int stops = 0;
        for (int i = 0; i < ranking.judged().size(); i++) {
            Judged judged = ranking.judged().get(i);
            ClothCard card = ClothCard.of(i + 1, judged, ranking);
            assertThat(card.urgent()).doesNotContainAnyElementsOf(card.notes());
            assertThat(card.urgent().size() + card.notes().size())
                    .isEqualTo(judged.warnings().size());
            assertThat(card.notes()).allMatch(note -> note.severity() == Warning.Severity.NOTE);
            assertThat(card.urgent().stream()
                            .map(Warning::severity)
                            .map(Enum::ordinal)
                            .toList())
                    .isSortedAccordingTo(Comparator.reverseOrder());
            assertThat(card.criteria()).hasSize(6);
            assertThat(card.asks().size() + card.otherRules().size())
                    .isEqualTo(judged.rules().size());
            if (judged.verdict() == Verdict.RULED_OUT) {
                assertThat(card.urgent()).as("why %s is ruled out", card.id()).isNotEmpty();
            }
            stops += (int) card.urgent().stream()
                    .filter(w -> w.severity() == Warning.Severity.STOP)
                    .count();
        }
        assertThat(stops).isPositive();
    }

    @ParameterizedTest
    @EnumSource
    void tellsOneMeritAndOneFaultOfThoseThatCount(Season season) {
        Ranking ranking = ranking(season);
        for (Judged judged : ranking.judged()) {
            List<ClothCard.CriterionRow> telling =
                    ClothCard.of(1, judged, ranking).telling();
            assertThat(telling).hasSizeBetween(1, 2).allMatch(row -> row.value() != null);
            assertThat(telling.get(0).merit()).isTrue();
            assertThat(telling.stream().skip(1)).allMatch(row -> !row.merit());
            assertThat(telling.stream().map(ClothCard.CriterionRow::name)).doesNotHaveDuplicates();
        }
    }

    private static Ranking ranking(Season season) {
        AskedForm form = new AskedForm();
        form.season = season;
        form.design = "tunic";
        List<Candidate> all = CATALOGUE.cloths().entrySet().stream()
                .map(entry -> new Candidate(entry.getKey(), entry.getValue()))
                .toList();
        return ADVISER.rank(
                form.asking(form.event(new NoEvents(), CATALOGUE.seasons()).event(), CATALOGUE.sizes(), Outfit.UNTOLD)
                        .about(() -> all)
                        .question());
    }
}
