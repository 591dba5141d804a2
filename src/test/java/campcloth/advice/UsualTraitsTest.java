package campcloth.advice;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.ClothTraits;
import campcloth.cloth.Estimates;
import campcloth.cloth.Property;
import campcloth.cloth.WeightClass;
import campcloth.event.Event;
import campcloth.event.Season;
import campcloth.event.Spell;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.fire.FireGrade;
import campcloth.fire.FireGrading;
import campcloth.fire.WornCloth;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The traits that a catalogue is sorted by agree with what the adviser says. */
class UsualTraitsTest {

    private static final long SEED = 20_261_125;

    private static final UsualTraits TRAITS =
            new UsualTraits(Camp.FIRE, Camp.CATALOGUE.seasons(), Camp.CATALOGUE.fibres());

    /** Common practice, no source: thin plant fibre in summer, milled wool from autumn to spring. */
    @ParameterizedTest
    @CsvSource({
        "linen-handkerchief-100, SUMMER, WINTER",
        "cotton-gauze-60, SUMMER, WINTER",
        "wool-boiled-350, WINTER, SUMMER",
        "wool-mixed-400, AUTUMN, SUMMER"
    })
    void aClothSuitsTheSeasonItIsWornIn(String id, String suits, String not) {
        assertThat(TRAITS.of(Camp.CATALOGUE.cloth(id)).seasons())
                .contains(suits)
                .doesNotContain(not);
    }

    @Test
    void noClothSuitsASeasonThatTheAdviserRulesItOutForOrCautionsAbout() {
        Map<Season, Ranking> rankings = new EnumMap<>(Season.class);
        for (Season season : Season.values()) {
            List<Spell> spells = Camp.CATALOGUE.seasons().spells(season);
            List<Candidate> all = new ArrayList<>();
            Camp.CATALOGUE.cloths().forEach((id, cloth) -> all.add(new Candidate(id, cloth)));
            Event event = new Event("Wendlow river camp", season, spells, List.of());
            rankings.put(season, Camp.ADVISER.rank(new Question(event, UsualTraits.TUNIC_OVER_A_SHIRT, all)));
        }
        rankings.forEach((season, ranking) -> {
            int suiting = 0;
            for (Judged judged : ranking.judged()) {
                if (TRAITS.of(judged.candidate().cloth()).seasons().contains(season.name())) {
                    suiting++;
                    assertThat(judged.verdict()).as(judged.candidate().id()).isNotEqualTo(Verdict.RULED_OUT);
                    assertThat(judged.warnings())
                            .as("%s in %s", judged.candidate().id(), season)
                            .noneMatch(w -> Set.of("COLD", "HEAT_STRAIN").contains(w.code())
                                    && w.severity() != Warning.Severity.NOTE);
                }
            }
            assertThat(suiting)
                    .as("cloths for %s", season)
                    .isBetween(20, ranking.judged().size() / 2);
        });
    }

    @Test
    void theFireGradeIsThatOfTheExposureStated() {
        Map<String, Integer> grades = new TreeMap<>();
        for (Cloth cloth : Camp.CATALOGUE.cloths().values()) {
            ClothTraits traits = TRAITS.of(cloth);
            WornCloth worn = WornCloth.of(Estimates.complete(cloth), UsualTraits.TUNIC_OVER_A_SHIRT);
            assertThat(traits.fireGrade())
                    .isEqualTo(FireGrading.grade(worn, UsualTraits.SEATED_AT_TWO_METRES)
                            .grade()
                            .name());
            grades.merge(traits.fireGrade(), 1, Integer::sum);
        }
        assertThat(grades).as("each grade is met").hasSize(FireGrade.values().length);
        assertThat(UsualTraits.SEATED_AT_TWO_METRES.fireKwOrPresumed()).isEqualTo(100);
    }

    /** Cloths that differ in these are computed once. */
    @Test
    void nameWidthShrinkageAndPriceMakeNoDifference() {
        SplittableRandom random = new SplittableRandom(SEED);
        List<String> ids = List.copyOf(Camp.CATALOGUE.cloths().keySet());
        Cloth any = Estimates.complete(Camp.CATALOGUE.cloth(ids.get(0)));
        Map<Season, SeasonSuit> suits = new EnumMap<>(Season.class);
        for (Season season : Season.values()) {
            Event event = new Event("", season, Camp.CATALOGUE.seasons().spells(season), List.of(), true);
            suits.put(season, new SeasonSuit(event, UsualTraits.TUNIC_OVER_A_SHIRT, Camp.FIRE, any));
        }
        for (int i = 0; i < 40; i++) {
            String id = ids.get(random.nextInt(ids.size()));
            Cloth cloth = Camp.CATALOGUE
                    .cloth(id)
                    .with(Property.WIDTH_CM, Figure.exact(random.nextInt(40, 300), Basis.MEASURED, "draw"))
                    .with(Property.SHRINK_WARP_PERCENT, Figure.exact(random.nextInt(20), Basis.MEASURED, "draw"))
                    .with(Property.SHRINK_WEFT_PERCENT, Figure.exact(random.nextInt(20), Basis.MEASURED, "draw"))
                    .with(Property.PRICE_PER_METRE, Figure.exact(random.nextInt(90), Basis.DECLARED, "draw"));
            Set<String> each = suits.entrySet().stream()
                    .filter(suit -> suit.getValue().suits(Estimates.complete(cloth)))
                    .map(suit -> suit.getKey().name())
                    .collect(Collectors.toSet());
            assertThat(TRAITS.of(cloth).seasons())
                    .as("seed %d, %s", SEED, cloth)
                    .isEqualTo(each);
            assertThat(TRAITS.of(cloth)).isEqualTo(TRAITS.of(Camp.CATALOGUE.cloth(id)));
        }
    }

    /**
     * Whoever changes what these come to has to raise {@link UsualTraits#RULES}, so that catalogues are sorted anew, and then the
     * traits written here.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "linen-plain-150; [SUMMER]; RAISED",
                "wool-boiled-350; [AUTUMN, SPRING, WINTER]; RAISED",
                "wool-flannel-230; [SPRING, SUMMER]; RAISED",
                "cotton-gauze-60; [SUMMER]; HIGH",
                "polyester-microfibre-120; []; SEVERE",
                "waxed-cotton-250; [WINTER]; HIGH"
            })
    void theseRulesHaveThisNumber(String id, String seasons, String grade) {
        assertThat(UsualTraits.RULES).isEqualTo(1);
        ClothTraits traits = TRAITS.of(Camp.CATALOGUE.cloth(id));
        assertThat(traits.seasons()).hasToString(seasons);
        assertThat(traits.fireGrade()).isEqualTo(grade);
    }

    @Test
    void theRulesNameSeasonsAndFibres() {
        assertThat(TRAITS.rules()).contains("WINTER", "night", "flax");
        assertThat(TRAITS.rules())
                .isEqualTo(new UsualTraits(Camp.FIRE, Camp.CATALOGUE.seasons(), Camp.CATALOGUE.fibres()).rules());
    }

    /** Edges of the classes: project choice. */
    @ParameterizedTest
    @CsvSource({
        "10, LIGHT",
        "129.999, LIGHT",
        "130, MEDIUM",
        "249.999, MEDIUM",
        "250, HEAVY",
        "399.999, HEAVY",
        "400, VERY_HEAVY"
    })
    void weightsFallIntoTheirClass(double weightGsm, WeightClass expected) {
        assertThat(WeightClass.of(weightGsm)).isEqualTo(expected);
    }
}
