package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LabelReaderFuzzTest {

    private static final long SEED = 20_110_927;
    private static final int CHUNKS = 100;
    private static final int RUNS_EACH = 10_000;

    private final LabelReader reader = LabelFixture.reader();
    private final LabelOracle oracle = new LabelOracle();
    private final LabelDraw draw = new LabelDraw();

    @Test
    void nothingIsEverSkippedWhateverTheText() {
        long read =
                IntStream.range(0, CHUNKS).parallel().mapToLong(this::readSome).sum();
        assertThat(read).isBetween(CHUNKS * RUNS_EACH / 20L, CHUNKS * RUNS_EACH * 9 / 10L);
    }

    private long readSome(int chunk) {
        SplittableRandom random = new SplittableRandom(SEED + 1_000 + chunk);
        long read = 0;
        for (int run = 0; run < RUNS_EACH; run++) {
            String text = draw.text(random);
            try {
                LabelReading reading = reader.read(text);
                if (reading instanceof LabelReading.Read found) {
                    oracle.check(text, found);
                    read++;
                } else if (reading instanceof LabelReading.NotRead notRead) {
                    assertThat(notRead.from()).isBetween(0, notRead.to());
                    assertThat(notRead.to()).isLessThanOrEqualTo(text.length());
                    assertThat(notRead.because()).isNotBlank();
                }
            } catch (RuntimeException | AssertionError broken) {
                throw new AssertionError(
                        "seed " + SEED + ", chunk " + chunk + ", run " + run + ", [" + text + "]", broken);
            }
        }
        return read;
    }

    @Test
    void theOrderOfTheFilesMakesNoDifference() throws IOException {
        LabelReader backwards =
                new LabelReader(LabelVocabulary.read(backwards(), LabelFixture.fibres(), new ArrayList<>()));
        SplittableRandom random = new SplittableRandom(SEED + 4);
        for (int run = 0; run < 20_000; run++) {
            String text = draw.text(random);
            assertThat(backwards.read(text)).as("run %s, [%s]", run, text).isEqualTo(reader.read(text));
        }
    }

    /** The vocabulary in folders that turn the order of its files round. */
    private static Map<String, Reader> backwards() {
        Map<String, Reader> files = new LinkedHashMap<>();
        int folder = 100;
        for (Map.Entry<String, String> file : LabelFixture.words().entrySet()) {
            files.put(folder-- + "/" + file.getKey(), new StringReader(file.getValue()));
        }
        return files;
    }

    @Test
    void aLabelInAnyFormIsReadForWhatItSays() {
        SplittableRandom random = new SplittableRandom(SEED + 1);
        for (int run = 0; run < 20_000; run++) {
            Map<String, Integer> shares = shares(random);
            String text = written(shares, random);
            LabelReading reading = reader.read(text);
            assertThat(reading)
                    .as("seed %s, run %s, text [%s]", SEED + 1, run, text)
                    .isInstanceOf(LabelReading.Read.class);
            Blend blend = ((LabelReading.Read) reading).parts().get(0).blend();
            assertThat(blend.shares()).as(text).hasSameSizeAs(shares.keySet());
            shares.forEach(
                    (key, percent) -> assertThat(blend.percentOf(key)).as(text).isCloseTo(percent, within(1e-9)));
        }
    }

    @Test
    void oneUnknownWordRefusesAnyLabelAndIsPointedAt() {
        SplittableRandom random = new SplittableRandom(SEED + 2);
        for (int run = 0; run < 20_000; run++) {
            String text = written(shares(random), random);
            int at = text.indexOf(' ') < 0 ? text.length() : text.indexOf(' ');
            String spoilt = text.substring(0, at) + " zonk " + text.substring(at);
            LabelReading reading = reader.read(spoilt);
            assertThat(reading).as(spoilt).isInstanceOf(LabelReading.NotRead.class);
            assertThat(((LabelReading.NotRead) reading).place()).as(spoilt).isEqualTo("zonk");
        }
    }

    @Test
    void caseAndSpacesMakeNoDifference() {
        SplittableRandom random = new SplittableRandom(SEED + 3);
        for (int run = 0; run < 5_000; run++) {
            String text = written(shares(random), random);
            LabelReading plain = reader.read(text);
            assertThat(reader.read(text.toUpperCase(Locale.ROOT))).as(text).isEqualTo(plain);
            assertThat(reader.read("  " + text.replace(" ", "  ") + "\t"))
                    .as(text)
                    .isEqualTo(plain);
        }
    }

    private static Map<String, Integer> shares(SplittableRandom random) {
        List<String> keys = new ArrayList<>(
                List.of("cotton", "wool", "hemp", "silk", "polyester", "viscose", "acrylic", "elastane", "jute"));
        Map<String, Integer> shares = new LinkedHashMap<>();
        int left = 100;
        while (left > 0) {
            int share = shares.size() == 4 ? left : random.nextInt(1, left + 1);
            shares.put(keys.remove(random.nextInt(keys.size())), share);
            left -= share;
        }
        return shares;
    }

    private static String written(Map<String, Integer> shares, SplittableRandom random) {
        String percent = pick(List.of("", "%", " %", " percent"), random);
        String inPair = pick(List.of(" ", "  ", "\t"), random);
        String between = pick(List.of(" ", ", ", "; ", "\n", " / ", " + ", " and ", " & ", " \u2022 "), random);
        boolean nameFirst = random.nextBoolean();
        List<String> pairs = new ArrayList<>();
        shares.forEach(
                (key, share) -> pairs.add(nameFirst ? key + inPair + share + percent : share + percent + inPair + key));
        if (shares.size() > 1 && random.nextInt(4) == 0) {
            String ratio = String.join(
                    "/", shares.values().stream().map(String::valueOf).toList());
            String names = String.join("/", shares.keySet());
            return nameFirst ? names + " " + ratio : ratio + " " + names;
        }
        return String.join(between, pairs);
    }

    private static String pick(List<String> from, SplittableRandom random) {
        return LabelDraw.pick(from, random);
    }
}
