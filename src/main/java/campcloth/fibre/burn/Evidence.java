package campcloth.fibre.burn;

import campcloth.fibre.FlameAnswer;
import campcloth.fibre.FlameClass;
import campcloth.fibre.FlameFeature;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** How likely each answer is with each class: chosen by the project after published keys, not measured. */
public final class Evidence {

    private final List<FlameClass> classes;
    private final Map<FlameFeature, Map<String, FlameAnswer>> answers;
    private final Map<FlameAnswer, double[]> likelihoods;

    Evidence(List<FlameClass> classes, List<FlameAnswer> answers, Map<FlameAnswer, double[]> likelihoods) {
        this.classes = List.copyOf(classes);
        this.answers = new EnumMap<>(FlameFeature.class);
        answers.forEach(answer -> this.answers
                .computeIfAbsent(answer.feature(), feature -> new LinkedHashMap<>())
                .put(answer.key(), answer));
        this.likelihoods = Map.copyOf(likelihoods);
    }

    public List<FlameClass> classes() {
        return classes;
    }

    /** The answers of a feature, in the order of the table. */
    public List<FlameAnswer> answers(FlameFeature feature) {
        return List.copyOf(answers.getOrDefault(feature, Map.of()).values());
    }

    /** The answers given, in the order of the test; refuses under the feature's key what is no answer of it. */
    public List<FlameAnswer> given(Map<FlameFeature, String> seen) {
        return seen.entrySet().stream()
                .filter(entry -> !key(entry.getValue()).equals(FlameAnswer.NOT_SURE))
                .sorted(Map.Entry.comparingByKey(Comparator.naturalOrder()))
                .map(entry -> answer(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static String key(String told) {
        return told.strip().toLowerCase(Locale.ROOT);
    }

    private FlameAnswer answer(FlameFeature feature, String told) {
        Map<String, FlameAnswer> known = answers.getOrDefault(feature, Map.of());
        FlameAnswer answer = known.get(key(told));
        if (answer == null) {
            throw Refused.of(
                    feature.key(),
                    Words.quoted(told) + " is no answer to it",
                    "write one of " + String.join(", ", known.keySet()) + ", or " + FlameAnswer.NOT_SURE);
        }
        return answer;
    }

    /** How likely the answer is with the class of that place in {@link #classes}, 0 to 1. */
    double likelihood(FlameAnswer answer, int place) {
        double[] byPlace = likelihoods.get(answer);
        if (byPlace == null) {
            throw new IllegalStateException("no likelihoods for " + answer.title());
        }
        return byPlace[place];
    }
}
