package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LabelReaderFuzzTest {

    private static final long SEED = 20_110_927;
    private static final int RUNS = 200_000;
    private static final List<String> FIBRES = List.of(
            "cotton", "wool", "linen", "silk", "polyester", "nylon", "viscose", "other fibres", "CO", "PES", "hemp");
    private static final List<String> SHARES = List.of(
            "100", "100%", "60", "40%", "60%", "40", "50 %", "65", "35%", "33.3%", "33,4 %", "5%", "95", "0%", "101%");
    private static final List<String> MARKS = List.of(
            " ", " ", " ", " ", " ", ", ", "/", "; ", ": ", ". ", "\n", " - ", "-", " & ", " + ", "(", ")", "%", "\t",
            ".", ",", "*", "\u2022 ");
    private static final List<String> GARBAGE = List.of(
            "xyzzy",
            "cottony",
            "\u0000",
            "\u202E",
            "\uD83E\uDDF5",
            "\uD83E",
            "?",
            "\"",
            "e\u0301",
            "\u00DF",
            "1e5",
            "--",
            "''",
            "\u0130",
            "\u0661",
            "0x1",
            "NaN",
            "<b>",
            "${x}",
            "'; drop");

    private final LabelReader reader = LabelFixture.reader();
    private final LabelOracle oracle = new LabelOracle();
    private final List<String> words = oracle.words();

    @Test
    void nothingIsEverSkippedWhateverTheText() {
        SplittableRandom random = new SplittableRandom(SEED);
        int read = 0;
        for (int run = 0; run < RUNS; run++) {
            String text = random.nextInt(4) == 0 ? soup(random) : mutated(label(random), random);
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
                throw new AssertionError("seed " + SEED + ", run " + run + ", text [" + text + "]", broken);
            }
        }
        assertThat(read).isBetween(RUNS / 20, RUNS * 9 / 10);
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

    private static String label(SplittableRandom random) {
        String text = written(shares(random), random);
        return random.nextInt(3) == 0 ? "Shell: " + text + "\nLining: " + written(shares(random), random) : text;
    }

    /** Up to three words, numbers, marks or bits of garbage put in, or characters taken out, at random places. */
    private String mutated(String label, SplittableRandom random) {
        StringBuilder text = new StringBuilder(label);
        for (int times = random.nextInt(4); times > 0; times--) {
            int at = random.nextInt(text.length() + 1);
            switch (random.nextInt(3)) {
                case 0 -> text.insert(at, piece(random));
                case 1 -> text.insert(Math.max(text.lastIndexOf(" ", at), 0), " " + piece(random) + " ");
                default -> text.delete(at, Math.min(text.length(), at + random.nextInt(1, 6)));
            }
        }
        return text.toString();
    }

    private String soup(SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        for (int length = random.nextInt(12); length > 0; length--) {
            text.append(piece(random)).append(pick(MARKS, random));
        }
        return text.toString();
    }

    private String piece(SplittableRandom random) {
        return switch (random.nextInt(12)) {
            case 0, 1, 2 -> pick(FIBRES, random);
            case 3, 4, 5 -> pick(SHARES, random);
            case 6, 7 -> pick(words, random);
            case 8, 9, 10 -> pick(MARKS, random);
            default -> pick(GARBAGE, random);
        };
    }

    private static String pick(List<String> from, SplittableRandom random) {
        return from.get(random.nextInt(from.size()));
    }
}
