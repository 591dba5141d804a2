package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.figure.Fault;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The burn-test key that the program ships with, and threads written as {@code odour hair; residue hard-bead}. */
final class FlameFixture {

    static final FlameKey KEY = shipped();

    private FlameFixture() {}

    static Map<FlameFeature, String> seen(String observations) {
        Map<FlameFeature, String> seen = new EnumMap<>(FlameFeature.class);
        Arrays.stream(observations.split(";"))
                .map(String::strip)
                .filter(o -> !o.isEmpty())
                .forEach(o -> {
                    String[] words = o.split(" ", 2);
                    seen.put(FlameFeature.valueOf(words[0].toUpperCase(Locale.ROOT)), words[1]);
                });
        return seen;
    }

    static FlameFinding finding(String... threads) {
        List<ThreadSeen> told = new ArrayList<>();
        for (String thread : threads) {
            told.add(new ThreadSeen("thread " + told.size(), seen(thread)));
        }
        return KEY.finding(told);
    }

    static FlameFinding.OfThread thread(Map<FlameFeature, String> seen) {
        return KEY.finding(List.of(new ThreadSeen(ThreadSeen.ONLY, seen)))
                .threads()
                .get(0);
    }

    static FlameFinding.OfThread thread(String observations) {
        return thread(seen(observations));
    }

    static String text(String file) {
        try {
            return Files.readString(Path.of("catalogue", file));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static FlameKey read(String evidence, String classes, String answers, List<Fault> faults) {
        try {
            return FlameKey.read(
                    new StringReader(evidence),
                    new StringReader(classes),
                    new StringReader(answers),
                    LabelFixture.fibres(),
                    faults);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static FlameKey shipped() {
        List<Fault> faults = new ArrayList<>();
        FlameKey key =
                read(text("burn-test.csv"), text("burn-test-classes.csv"), text("burn-test-answers.csv"), faults);
        assertThat(faults).extracting(Fault::sentence).isEmpty();
        return key;
    }
}
