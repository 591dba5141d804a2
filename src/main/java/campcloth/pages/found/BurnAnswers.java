package campcloth.pages.found;

import campcloth.fibre.FlameFeature;
import campcloth.fibre.ThreadSeen;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.web.util.UriComponentsBuilder;

/**
 * What somebody saw of up to three threads, as it stands in an address: {@code warp.residue=hard-bead}. What is left out or empty
 * was not looked at.
 */
public final class BurnAnswers {

    /** Threads that are asked for. */
    public static final List<String> THREADS = List.of("warp", "weft", "other");

    private final Map<String, String> asked;

    BurnAnswers(Map<String, String> asked) {
        this.asked = Map.copyOf(asked);
    }

    /** Name of a field. */
    public static String field(String thread, FlameFeature feature) {
        return thread + "." + feature.key();
    }

    /** What was answered; empty where nothing was. */
    public String answer(String thread, FlameFeature feature) {
        return asked.getOrDefault(field(thread, feature), "");
    }

    public boolean has(String thread) {
        return !seen(thread).isEmpty();
    }

    /** Whether the questions were sent, answered or not. */
    boolean isSent() {
        return THREADS.stream()
                .anyMatch(thread -> asked.keySet().stream().anyMatch(key -> key.startsWith(thread + ".")));
    }

    boolean isAnswered() {
        return THREADS.stream().anyMatch(this::has);
    }

    /** Whether something was answered while other things were sent empty, so that a shorter address says the same. */
    boolean isWordy() {
        return isAnswered() && asked.values().stream().anyMatch(String::isEmpty);
    }

    /** The threads that something was seen of; the first one where nothing was. */
    List<ThreadSeen> threads() {
        List<ThreadSeen> threads = new ArrayList<>();
        THREADS.stream().filter(this::has).forEach(thread -> threads.add(new ThreadSeen(thread, seen(thread))));
        return threads.isEmpty() ? List.of(new ThreadSeen(THREADS.get(0), Map.of())) : threads;
    }

    /** What was seen, in short: {@code warp: residue hard-bead, odour celery; weft: odour paper}. */
    String words() {
        return threads().stream()
                .map(thread -> thread.thread() + ": " + (thread.seen().isEmpty() ? "nothing seen" : titles(thread)))
                .collect(Collectors.joining("; "));
    }

    private static String titles(ThreadSeen thread) {
        return thread.seen().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(seen -> seen.getKey().key() + " " + seen.getValue())
                .collect(Collectors.joining(", "));
    }

    /** The address without what is empty. */
    String address() {
        UriComponentsBuilder address = UriComponentsBuilder.fromPath("/burn-test");
        for (String thread : THREADS) {
            seen(thread).forEach((feature, answer) -> address.queryParam(field(thread, feature), "{answer}"));
        }
        List<String> answers = THREADS.stream()
                .flatMap(thread -> seen(thread).values().stream())
                .toList();
        return address.encode().buildAndExpand(answers.toArray()).toUriString();
    }

    private Map<FlameFeature, String> seen(String thread) {
        Map<FlameFeature, String> seen = new EnumMap<>(FlameFeature.class);
        for (FlameFeature feature : FlameFeature.values()) {
            String answer = answer(thread, feature);
            if (!answer.isEmpty()) {
                seen.put(feature, answer);
            }
        }
        return seen;
    }
}
