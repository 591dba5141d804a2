package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.figure.PictureRules;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;

class MeasuringDrawingTest {

    private static Measurement along(TapeLine tape) {
        return Measurement.usual(tape, "someCm", 1, 100, 50, "round the thing, as people do");
    }

    @ParameterizedTest
    @EnumSource(TapeLine.class)
    void everyTapeIsDrawnWithinAPictureThatKeepsTheRules(TapeLine tape) throws Exception {
        PictureRules picture = PictureRules.read(MeasuringDrawing.svg(along(tape)), tape.name())
                .readableOnAPhone()
                .wordsKeepTheirPlaces();
        List<Element> seen = picture.all("path").stream()
                .filter(path -> path.getAttribute("stroke-dasharray").equals("1.2 5"))
                .toList();
        assertThat(seen).hasSize(1);
        double[] xy = PictureRules.numbers(seen.get(0).getAttribute("d"));
        assertThat(xy.length).isGreaterThanOrEqualTo(8);
        for (int i = 0; i + 1 < xy.length; i += 2) {
            assertThat(picture.holds(xy[i] - 4, xy[i + 1] - 4) && picture.holds(xy[i] + 4, xy[i + 1] + 4))
                    .as(tape + " at " + xy[i] + " " + xy[i + 1])
                    .isTrue();
        }
        assertThat(picture.words()).isNotEmpty();
        assertThat(picture.description())
                .contains("Round the thing, as people do.", tape.hints().get(0));
    }

    @Test
    void noTwoAreAlike() {
        Set<String> tapes = new HashSet<>();
        Set<String> titles = new HashSet<>();
        Arrays.stream(TapeLine.values()).forEach(tape -> {
            String svg = MeasuringDrawing.svg(along(tape));
            assertThat(tapes.add(svg.substring(svg.indexOf("</desc>"))))
                    .as(tape.name())
                    .isTrue();
            assertThat(titles.add(tape.title())).as(tape.name()).isTrue();
        });
    }

    @Test
    void everyTapeServesADesignAndEveryMeasurementIsToldInWords() {
        Set<TapeLine> used = EnumSet.noneOf(TapeLine.class);
        for (Design design : Designs.all()) {
            for (Measurement measurement : design.measurements()) {
                used.add(measurement.tape());
                assertThat(MeasuringDrawing.text(measurement))
                        .as(measurement.key())
                        .hasSizeGreaterThanOrEqualTo(2)
                        .allMatch(sentence -> sentence.endsWith(".") && Character.isUpperCase(sentence.charAt(0)));
            }
        }
        assertThat(used).containsExactly(TapeLine.values());
    }

    @Test
    void roundAndFlatAreNotMixedUp() {
        for (Design design : Designs.all()) {
            for (Measurement measurement : design.measurements()) {
                boolean saysRound = measurement.howTaken().startsWith("round");
                boolean drawnRound = measurement.tape().title().startsWith("Round");
                assertThat(!saysRound || drawnRound)
                        .as(design.key() + " " + measurement.key())
                        .isTrue();
            }
        }
    }

    @Test
    void hostileWordsStayWords() throws Exception {
        for (String hostile : PictureRules.HOSTILE) {
            Measurement measurement = Measurement.usual(TapeLine.WAIST, "waistCm", 1, 100, 50, hostile);
            PictureRules.read(MeasuringDrawing.svg(measurement), hostile.substring(0, 5));
        }
    }
}
