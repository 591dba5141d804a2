package campcloth.supply;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Holding;
import campcloth.cloth.Cloth;
import campcloth.cloth.Finish;
import campcloth.cloth.FlameTreatment;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.fibre.Blend;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written is read again as it was, and no spreadsheet runs any of it. */
class RoundTripTest {

    private static final int DRAWS = 2000;

    @Test
    void everyClothThatIsWrittenIsReadAsItWas() throws IOException {
        for (long seed = 1; seed <= DRAWS; seed++) {
            KeptCloth kept = kept(new SplittableRandom(seed));
            String text = written(kept);
            Lists.Read list = Lists.read(text);
            assertThat(list.good(0).cloth()).as("seed %d: %s", seed, text).isEqualTo(kept.cloth());
            assertThat(list.good(0).clothId()).contains(kept.id());
            assertThat(ListMerge.of(kept.cloth(), kept.cloth(), list.good(0)).cloth())
                    .as("seed %d", seed)
                    .isEqualTo(kept.cloth());
        }
    }

    @Test
    void noCellThatIsWrittenBeginsLikeAFormulaUnlessItIsANumber() throws IOException {
        for (long seed = 1; seed <= DRAWS; seed++) {
            String text = written(kept(new SplittableRandom(seed)));
            for (var row : CSVFormat.RFC4180.parse(new StringReader(text))) {
                for (String cell : row) {
                    assertThat(cell).as("seed %d", seed).doesNotMatch("(?s)[=+\\-@\t\r\n\uff1d\uff0b\uff0d\uff20].*");
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"=1+1", "'=1+1", "''@x", "+x", "-x", "\tx", "\rx", "'tis", "'", "", "-2.5", "x=1", "\uff1dx"})
    void theGuardIsTakenOffExactly(String text) {
        assertThat(Cells.unguarded(Cells.guarded(text))).isEqualTo(text);
    }

    @Test
    void negativeNumbersStayNumbers() {
        assertThat(Cells.guarded("-2.5")).isEqualTo("-2.5");
        assertThat(Cells.guarded("-2.5+x")).isEqualTo("'-2.5+x");
    }

    private static String written(KeptCloth kept) throws IOException {
        StringBuilder out = new StringBuilder();
        new ListWriter(out).write(new ListWriter.Line(kept, Optional.empty(), Optional.empty()));
        return out.toString();
    }

    private static KeptCloth kept(SplittableRandom draw) {
        Weave weave = Weave.values()[draw.nextInt(Weave.values().length)];
        Map<Property, Figure> figures = new EnumMap<>(Property.class);
        for (Property property : Property.values()) {
            if (draw.nextBoolean()) {
                figures.put(property, figure(draw, property));
            }
        }
        Cloth cloth = new Cloth(
                words(draw, 20) + "x",
                blend(draw),
                weave,
                weave.isPile() || draw.nextBoolean() ? Surface.RAISED : Surface.PLAIN,
                Finish.values()[draw.nextInt(Finish.values().length)],
                draw.nextBoolean(),
                draw.nextBoolean(),
                figures,
                draw.nextInt(3) == 0 ? "" : words(draw, 60) + ".",
                FlameTreatment.values()[draw.nextInt(FlameTreatment.values().length)]);
        return new KeptCloth("own-" + draw.nextInt(1000), 0, KeptCloth.Origin.OWN, cloth, Holding.COMMON);
    }

    private static Figure figure(SplittableRandom draw, Property property) {
        double[] ends = draw.doubles(
                        3, property.range().least(), property.range().most())
                .sorted()
                .toArray();
        Basis basis = Basis.values()[draw.nextInt(Basis.values().length)];
        return draw.nextBoolean()
                ? new Figure(ends[1], ends[0], ends[2], basis, words(draw, 20) + ".")
                : Figure.exact(ends[1], basis, words(draw, 20) + ".");
    }

    private static Blend blend(SplittableRandom draw) {
        double first = draw.nextBoolean() ? 100.0 / 3 : draw.nextInt(1, 100);
        List<Blend.Share> shares = new ArrayList<>();
        shares.add(new Blend.Share(Lists.FIBRES.require("flax"), first));
        shares.add(new Blend.Share(Lists.FIBRES.require(draw.nextBoolean() ? "polyester" : "unknown"), 100 - first));
        return new Blend(shares);
    }

    private static String words(SplittableRandom draw, int most) {
        String signs = "=+-@\t\r\n'\";, |/\uff1daäß0\u20ac\ud83e\uddf5";
        StringBuilder text = new StringBuilder();
        int length = draw.nextInt(most);
        while (text.length() < length) {
            int at = draw.nextInt(signs.codePointCount(0, signs.length()));
            text.appendCodePoint(signs.codePointAt(signs.offsetByCodePoints(0, at)));
        }
        return text.toString();
    }
}
