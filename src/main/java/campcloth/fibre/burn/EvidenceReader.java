package campcloth.fibre.burn;

import campcloth.fibre.Fibre;
import campcloth.fibre.FibreFamily;
import campcloth.fibre.Fibres;
import campcloth.fibre.FlameAnswer;
import campcloth.fibre.FlameClass;
import campcloth.fibre.FlameFeature;
import campcloth.figure.Fault;
import campcloth.figure.ReferenceTable;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads the three tables of the burn-test key; what is wrong in them goes to the faults and the rest is kept. */
public final class EvidenceReader {

    private static final String EVIDENCE = "burn-test.csv";
    private static final String CLASSES = "burn-test-classes.csv";
    private static final String ANSWERS = "burn-test-answers.csv";

    /** Nothing is impossible: fibres, finishes and noses differ. */
    private static final double LEAST_LIKELY = 0.02;

    /** How far the likelihoods of a class over the answers of a feature may miss 1 by rounding. */
    private static final double SUM_TOLERANCE = 0.011;

    private final List<Fault> faults;
    private final Map<String, FlameClass> classes = new LinkedHashMap<>();
    private final Map<String, FlameAnswer> answers = new LinkedHashMap<>();
    private final Map<FlameAnswer, double[]> likelihoods = new LinkedHashMap<>();

    /** Where the last likelihood of a class for a feature stands, by both names. */
    private final Map<String, Long> lastLine = new HashMap<>();

    private EvidenceReader(List<Fault> faults) {
        this.faults = faults;
    }

    /**
     * Reads classes, answers and likelihoods.
     *
     * @throws IOException where a table cannot be read at all
     */
    public static Evidence read(Reader evidence, Reader classes, Reader answers, Fibres fibres, List<Fault> faults)
            throws IOException {
        EvidenceReader reader = new EvidenceReader(faults);
        List<String> columns = List.of("class", "name", "family", "fibres", "source", "note");
        ReferenceTable.read(CLASSES, classes, columns, faults).map(row -> reader.fibreClass(row, fibres));
        columns = List.of("feature", "answer", "words", "melting");
        ReferenceTable.read(ANSWERS, answers, columns, faults).map(reader::answer);
        columns = List.of("feature", "answer", "class", "likelihood", "source", "note");
        ReferenceTable.read(EVIDENCE, evidence, columns, faults).map(reader::likelihood);
        reader.checkWhole();
        return new Evidence(
                List.copyOf(reader.classes.values()), List.copyOf(reader.answers.values()), reader.likelihoods);
    }

    private FlameClass fibreClass(ReferenceTable.Row row, Fibres fibres) {
        List<Fibre> named = Arrays.stream(row.text("fibres").split(";"))
                .map(key -> fibres.require(key, "fibres"))
                .toList();
        row.text("source");
        FlameClass read =
                new FlameClass(row.text("class"), row.text("name"), row.word("family", FibreFamily.class), named);
        if (classes.putIfAbsent(read.key(), read) != null) {
            throw Refused.of("class", read.key() + " stands twice", "keep one row a class");
        }
        return read;
    }

    private FlameAnswer answer(ReferenceTable.Row row) {
        FlameAnswer read = new FlameAnswer(feature(row), row.text("answer"), row.text("words"), row.yes("melting"));
        if (answers.putIfAbsent(read.title(), read) != null) {
            throw Refused.of("answer", read.title() + " stands twice", "keep one row an answer");
        }
        return read;
    }

    private static FlameFeature feature(ReferenceTable.Row row) {
        String text = row.text("feature");
        return Arrays.stream(FlameFeature.values())
                .filter(feature -> feature.key().equals(text))
                .findFirst()
                .orElseThrow(() -> Refused.of(
                        "feature",
                        Words.quoted(text) + " is not known",
                        "write one of "
                                + Arrays.stream(FlameFeature.values())
                                        .map(FlameFeature::key)
                                        .toList()));
    }

    private double likelihood(ReferenceTable.Row row) {
        FlameFeature feature = feature(row);
        FlameAnswer answer = answers.get(feature.key() + " " + row.text("answer"));
        if (answer == null) {
            throw Refused.of("answer", "is no answer to " + feature.key(), "add it to " + ANSWERS + " or mend it");
        }
        int place = List.copyOf(classes.keySet()).indexOf(row.text("class"));
        if (place < 0) {
            throw Refused.of("class", "is not in " + CLASSES, "add it there or mend it");
        }
        double likelihood = row.number("likelihood");
        if (!(likelihood >= LEAST_LIKELY && likelihood < 1)) {
            throw Refused.of(
                    "likelihood",
                    "is " + Words.exact(likelihood),
                    "give at least " + LEAST_LIKELY + " and less than 1: nothing is impossible");
        }
        row.text("source");
        double[] byPlace = likelihoods.computeIfAbsent(answer, ignored -> new double[classes.size()]);
        if (byPlace[place] != 0) {
            throw Refused.of("class", "stands twice for " + answer.title(), "keep one row");
        }
        byPlace[place] = likelihood;
        lastLine.put(feature.key() + " " + row.text("class"), row.line());
        return likelihood;
    }

    private void checkWhole() {
        Set<FlameFeature> asked = new HashSet<>();
        answers.values().forEach(answer -> asked.add(answer.feature()));
        for (FlameFeature feature : FlameFeature.values()) {
            if (!asked.contains(feature)) {
                faults.add(new Fault(ANSWERS, 1, "feature", "has no answer to " + feature.key(), "add its answers"));
            }
        }
        if (classes.isEmpty()) {
            faults.add(new Fault(CLASSES, 1, "class", "there is none", "add the classes"));
        }
        List<String> keys = List.copyOf(classes.keySet());
        for (FlameFeature feature : asked) {
            for (int place = 0; place < keys.size(); place++) {
                checkClass(feature, keys.get(place), place);
            }
        }
    }

    private void checkClass(FlameFeature feature, String key, int place) {
        List<String> missing = new ArrayList<>();
        double sum = 0;
        for (FlameAnswer answer : answers.values()) {
            if (answer.feature() == feature) {
                double likelihood = likelihoods.getOrDefault(answer, new double[classes.size()])[place];
                sum += likelihood;
                if (likelihood == 0) {
                    missing.add(answer.key());
                }
            }
        }
        long line = lastLine.getOrDefault(feature.key() + " " + key, 1L);
        if (!missing.isEmpty()) {
            faults.add(new Fault(
                    EVIDENCE,
                    line,
                    "likelihood",
                    key + " has none for " + feature.key() + " " + String.join(", ", missing),
                    "add a row for each answer"));
        } else if (Math.abs(sum - 1) > SUM_TOLERANCE) {
            faults.add(new Fault(
                    EVIDENCE,
                    line,
                    "likelihood",
                    "those of " + key + " for " + feature.key() + " sum to " + Words.number(sum),
                    "the answers of a feature exclude each other: let them sum to 1"));
        }
    }
}
