package campcloth.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.advice.sample.Points;
import campcloth.cloth.Estimates;
import campcloth.comfort.Comfort;
import campcloth.comfort.Reading;
import campcloth.comfort.SpellComfort;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The wearers that are drawn, and what the models make of them. */
class SampledWearerTest {

    @Test
    void aWearerHasOneRateWithinTheRangeOfTheActivity() {
        Comfort comfort = Comfort.in(List.of(Camp.SUMMER_NOON));
        assertThat(comfort.forWearer(0, 0).needs().get(0).surroundings().highMet())
                .isEqualTo(2.0);
        assertThat(comfort.forWearer(1, 0).needs().get(0).surroundings().lowMet())
                .isCloseTo(2.6, within(1e-12));
        double idle = comfort.atBestFigures(Camp.WOOL, Camp.TUNIC)
                .get(0)
                .heat()
                .wettednessAsked()
                .inRange()
                .orElseThrow()
                .value();
        assertThat(comfort.forWearer(0, 0)
                        .atBestFigures(Camp.WOOL, Camp.TUNIC)
                        .get(0)
                        .heat()
                        .wettednessAsked()
                        .inRange()
                        .orElseThrow()
                        .value())
                .isLessThan(idle);
    }

    /** Sweating begins at a cooler core, so the same cloth asks for another wettedness; cold is the same. */
    @Test
    void whetherTheWearerIsUsedToHeatChangesHeatAndNotCold() {
        Comfort comfort = Comfort.in(List.of(Camp.SUMMER_NOON, Camp.WINDY_WINTER_DAY));
        List<SpellComfort> unused = comfort.forWearer(1, 0).atBestFigures(Camp.WOOL, Camp.TUNIC);
        List<SpellComfort> used = comfort.forWearer(1, 1).atBestFigures(Camp.WOOL, Camp.TUNIC);
        assertThat(value(used.get(0).heat().coreC()))
                .isLessThan(value(unused.get(0).heat().coreC()) - 0.1);
        assertThat(value(used.get(0).heat().wettednessAsked()))
                .isNotCloseTo(value(unused.get(0).heat().wettednessAsked()), within(1e-4));
        assertThat(value(used.get(0).heat().wettednessLimit()))
                .isGreaterThan(value(unused.get(0).heat().wettednessLimit()) + 0.05);
        for (int spell = 0; spell < 2; spell++) {
            assertThat(used.get(spell).warmth()).isEqualTo(unused.get(spell).warmth());
        }
        assertThat(value(comfort.forWearer(1, 1)
                        .of(Estimates.complete(Camp.WOOL), Camp.TUNIC)
                        .get(0)
                        .heat()
                        .coreC()))
                .isEqualTo(value(used.get(0).heat().coreC()));
    }

    @Test
    void theWearersDrawnAreSpreadOverAllTheirRanges() {
        int count = Resampling.USUAL.samples();
        Points points = Points.of(count, SampledWearer.DIMENSIONS, Resampling.USUAL.seed());
        List<SampledWearer> wearers = IntStream.range(0, count)
                .mapToObj(i -> SampledWearer.at(points, i))
                .toList();
        for (int tenth = 0; tenth < 10; tenth++) {
            double from = tenth / 10.0;
            assertThat(wearers).anyMatch(w -> w.usedToHeat() >= from && w.usedToHeat() < from + 0.1);
            assertThat(wearers).anyMatch(w -> w.pace() >= from && w.pace() < from + 0.1);
        }
        assertThat(wearers).allMatch(w -> w.prickle() >= 0.4 && w.prickle() <= 2.5);
        assertThat(wearers).anyMatch(w -> w.prickle() < 0.5).anyMatch(w -> w.prickle() > 2);
        double mean = wearers.stream()
                .mapToDouble(SampledWearer::usedToHeat)
                .average()
                .orElseThrow();
        assertThat(mean).isCloseTo(0.5, within(0.03));
    }

    private static double value(Reading reading) {
        return reading.inRange().orElseThrow().value();
    }
}
