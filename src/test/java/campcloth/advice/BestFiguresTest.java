package campcloth.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.comfort.Comfort;
import campcloth.comfort.Reading;
import campcloth.comfort.SpellComfort;
import campcloth.event.Event;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The short way through the models, which is asked thousands of times, against the long one. */
class BestFiguresTest {

    private static final long SEED = 20_26;
    private static final int EVENTS = 12;

    @Test
    void theBestFiguresAreThoseOfTheWholeModelButForItsLattice() {
        RandomEvents random = new RandomEvents(SEED);
        for (int i = 0; i < EVENTS; i++) {
            Event event = random.event();
            Comfort comfort = Comfort.in(event.spells(), event.place());
            for (Candidate candidate : Camp.ALL.subList(0, 40)) {
                Cloth completed = Estimates.complete(candidate.cloth());
                List<SpellComfort> whole = comfort.of(completed, Camp.TUNIC);
                List<SpellComfort> brief = comfort.atBestFigures(completed, Camp.TUNIC);
                for (int spell = 0; spell < whole.size(); spell++) {
                    String where = "seed " + SEED + ", event " + i + ", spell " + spell + ", " + candidate.id();
                    alike(
                            whole.get(spell).warmth().marginClo(),
                            brief.get(spell).warmth().marginClo(),
                            where);
                    alike(
                            whole.get(spell).heat().wettednessAsked(),
                            brief.get(spell).heat().wettednessAsked(),
                            where);
                    alike(
                            whole.get(spell).heat().vapourResistanceM2PaW(),
                            brief.get(spell).heat().vapourResistanceM2PaW(),
                            where);
                }
            }
        }
    }

    private static void alike(Reading whole, Reading brief, String where) {
        whole.inRange()
                .ifPresent(value -> assertThat(brief.inRange().orElseThrow().value())
                        .as(where)
                        .isCloseTo(value.value(), within(0.01)));
    }
}
