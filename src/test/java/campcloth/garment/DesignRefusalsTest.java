package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.figure.Refusal;
import campcloth.figure.Refused;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What no design can make up is refused by the name of what is at fault, at the ends of every range besides. */
class DesignRefusalsTest {

    @Test
    void whatIsRefusedIsNamed() {
        DesignDraw.always(7_000, made -> {
            try {
                made.garment();
            } catch (Refused refused) {
                checkRefusal(made.design(), refused);
            }
        });
    }

    @Test
    void theEndsOfEveryRangeAreMadeUpOrRefused() {
        for (Design design : Designs.all()) {
            for (Measurement first : design.measurements()) {
                for (Measurement second : design.measurements()) {
                    for (int ends = 0; ends < 4; ends++) {
                        Map<String, Double> wearer = new HashMap<>();
                        wearer.put(second.key(), end(second, ends < 2));
                        wearer.put(first.key(), end(first, ends % 2 == 0));
                        makesUpOrRefuses(design, wearer, Options.USUAL);
                    }
                }
            }
        }
    }

    @Test
    void theEndsOfEveryOptionAreMadeUpOrRefused() {
        for (Design design : Designs.all()) {
            Map<String, Double> wearer = new HashMap<>();
            design.measurements().stream()
                    .filter(m -> m.usualCm().isEmpty())
                    .findFirst()
                    .ifPresent(m ->
                            wearer.put(m.key(), (m.range().least() + m.range().most()) / 2));
            for (Option option : design.options()) {
                for (Object value : ends(option.value())) {
                    for (Option other : design.options()) {
                        for (Object otherValue : ends(other.value())) {
                            Options options =
                                    Options.USUAL.with(other.key(), otherValue).with(option.key(), value);
                            makesUpOrRefuses(design, wearer, options);
                        }
                    }
                }
            }
        }
    }

    @Test
    void whatItDoesNotKnowIsToldOrRefused() {
        for (Design design : Designs.all()) {
            Map<String, Double> wearer = new HashMap<>();
            design.measurements().stream()
                    .filter(m -> m.usualCm().isEmpty())
                    .findFirst()
                    .ifPresent(m ->
                            wearer.put(m.key(), (m.range().least() + m.range().most()) / 2));
            wearer.put("wingspanCm", 170.0);
            assertThat(design.madeUp(Measurements.of(wearer), Options.USUAL, SewnCloth.usual())
                            .notes())
                    .as(design.key())
                    .anyMatch(note -> note.startsWith("wingspanCm is not used"));
            assertThatThrownBy(() ->
                            design.madeUp(Measurements.of(wearer), Options.of(Map.of("wings", 2)), SewnCloth.usual()))
                    .as(design.key())
                    .isInstanceOfSatisfying(
                            Refused.class,
                            refused -> assertThat(refused.refusals().get(0).field())
                                    .isEqualTo("options.wings"));
        }
    }

    private static double end(Measurement measurement, boolean least) {
        return least ? measurement.range().least() : measurement.range().most();
    }

    private static List<Object> ends(Option.Value value) {
        if (value instanceof Option.Cm cm) {
            return List.of(cm.range().least(), cm.range().most());
        }
        return value instanceof Option.Count count
                ? List.of(count.range().least(), count.range().most())
                : List.of(true, false);
    }

    private static void makesUpOrRefuses(Design design, Map<String, Double> wearer, Options options) {
        try {
            Garment garment = design.madeUp(Measurements.of(wearer), options, SewnCloth.usual());
            garment.pieces().forEach(PieceRules::hold);
            assertThat(garment.sewing().seams()).as(design.key() + wearer).allMatch(seam -> seam.lengthCm() > 0);
        } catch (Refused refused) {
            checkRefusal(design, refused);
        }
        try {
            design.wear(true, Measurements.of(wearer));
        } catch (Refused refused) {
            checkRefusal(design, refused);
        }
    }

    private static void checkRefusal(Design design, Refused refused) {
        List<String> fields = Stream.of(
                        design.measurements().stream().map(m -> "wearer." + m.key()),
                        design.options().stream().map(o -> "options." + o.key()),
                        Stream.of("cloth.widthCm"))
                .flatMap(s -> s)
                .toList();
        for (Refusal refusal : refused.refusals()) {
            assertThat(fields).as(design.key() + ": " + refused.getMessage()).contains(refusal.field());
        }
    }
}
