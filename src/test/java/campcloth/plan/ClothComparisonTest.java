package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.figure.Refused;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ClothComparisonTest {

    @Test
    void widerClothThatIsDearerByTheMetreCanBeCheaper() {
        // 126 round: on 140 cm unshrunk side by side, 102 + 60 + 2 = 164, 170 cm at 14; on 110 cm 2 x 102 + 2, 210 cm
        // at 12
        List<ComparedCloth> ranked = ranked(priced(110, 12), priced(140, 14));
        assertThat(ranked).extracting(ComparedCloth::place).containsExactly(1, 0);
        assertThat(ranked.get(0).purchase().orElseThrow().cost()).contains(new Money(23.8, "EUR"));
        assertThat(ranked.get(0).because())
                .anyMatch(s -> s.contains("but is wider") && s.contains("1 row rather than 2 rows"));
        assertThat(ranked.get(1).because().get(0)).contains("more than cloth 2");
    }

    @Test
    void cheapestIsNotAlwaysTheShortest() {
        List<ComparedCloth> ranked = ranked(priced(140, 30), priced(110, 10));
        assertThat(ranked.get(0).place()).isEqualTo(1);
        assertThat(ranked.get(0).because()).anyMatch(s -> s.startsWith("The cheapest is not the shortest: cloth 1"));
    }

    @Test
    void withoutPriceAfterThoseWithOneAndTooNarrowLastWithHelp() {
        List<ComparedCloth> ranked =
                ranked(Orders.washed(60, 0, 0), Orders.washed(140, 0, 0), Orders.washed(110, 0, 0), priced(90, 40));
        assertThat(ranked).extracting(ComparedCloth::place).containsExactly(3, 1, 2, 0);
        assertThat(ranked.get(1).because().get(0))
                .contains("Its price is not known")
                .contains("a metre");
        assertThat(ranked.get(3).purchase()).isEmpty();
        assertThat(ranked.get(3).because().get(0)).contains("wide").contains("centreSeams");
    }

    @Test
    void pricesOfSeveralCurrenciesAreNotCompared() {
        ClothToCut crowns = Orders.withPrice(Orders.washed(140, 0, 0), new Money(99, "SEK"));
        assertThatThrownBy(() -> ranked(priced(110, 12), crowns))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("EUR and SEK");
    }

    @Test
    void orderIsByCostAndHoldsWhateverTheOrderGiven() {
        SplittableRandom random = new SplittableRandom(31);
        for (int round = 0; round < 6; round++) {
            List<ClothToCut> cloths = new ArrayList<>();
            for (int i = 0; i < 5; i++) {
                ClothToCut cloth = Orders.washed(random.nextInt(60, 170), random.nextInt(8), random.nextInt(5));
                cloths.add(random.nextInt(4) == 0 ? cloth : Orders.priced(cloth, random.nextInt(5, 40)));
            }
            String which = "round " + round + " of seed 31: " + cloths;
            List<ComparedCloth> ranked = ranked(cloths.toArray(ClothToCut[]::new));
            assertThat(ranked).as(which).extracting(ComparedCloth::place).containsExactlyInAnyOrder(0, 1, 2, 3, 4);
            double before = 0;
            for (ComparedCloth cloth : ranked) {
                Optional<Money> cost = cloth.purchase().flatMap(ComparedCloth.Purchase::cost);
                if (cost.isPresent()) {
                    assertThat(cost.get().amount()).as(which).isGreaterThanOrEqualTo(before);
                    before = cost.get().amount();
                }
                assertThat(cloth.because()).as(which).isNotEmpty();
            }
            List<Boolean> lies =
                    ranked.stream().map(c -> c.purchase().isPresent()).toList();
            assertThat(lies).as(which).isSortedAccordingTo((a, b) -> Boolean.compare(b, a));
        }
    }

    private static ClothToCut priced(double widthCm, double perMetre) {
        return Orders.priced(Orders.washed(widthCm, 0, 0), perMetre);
    }

    private static List<ComparedCloth> ranked(ClothToCut... cloths) {
        return ClothComparison.ranked(Arrays.stream(cloths)
                .map(cloth -> CuttingOrder.of(cloth, Orders.tunic(126)))
                .toList());
    }
}
