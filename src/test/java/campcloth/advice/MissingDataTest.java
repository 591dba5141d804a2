package campcloth.advice;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.Finish;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.event.Event;
import campcloth.fire.FireJudgement.Gate;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A cloth of which nothing is known is never let nearer to a fire than one that is known. */
class MissingDataTest {

    private static final int EVENTS = 400;

    private static final Map<String, Cloth> COMPLETED = Camp.CATALOGUE.cloths().entrySet().stream()
            .collect(Collectors.toMap(Map.Entry::getKey, e -> Estimates.complete(e.getValue())));

    private static final Cloth UNKNOWN = new Cloth(
            "remnant",
            Camp.CATALOGUE.fibres().blend(Map.of("unknown", 100.0)),
            Weave.PLAIN,
            Surface.RAISED,
            Finish.NONE,
            false,
            false,
            Map.of(),
            "");

    /** The gate is what the verdict begins with; warnings that are not about fire may only make it stricter. */
    @Test
    void theGateIsNoWiderForAClothOfWhichNothingIsKnown() {
        RandomEvents events = new RandomEvents(5050);
        int cases = 0;
        for (int i = 0; i < EVENTS; i++) {
            Event event = events.event();
            Gate unknown = Camp.FIRE
                    .judge(Estimates.complete(UNKNOWN), Camp.TUNIC, event)
                    .gate();
            assertThat(unknown == Gate.CLEAR || Camp.judged(UNKNOWN, event).verdict() != Verdict.SUITABLE)
                    .isTrue();
            for (Map.Entry<String, Cloth> known : COMPLETED.entrySet()) {
                assertThat(unknown)
                        .as("event %d of %s, %s", i, events, known.getKey())
                        .isGreaterThanOrEqualTo(Camp.FIRE
                                .judge(known.getValue(), Camp.TUNIC, event)
                                .gate());
                cases++;
            }
        }
        assertThat(cases).isGreaterThan(100_000);
    }
}
