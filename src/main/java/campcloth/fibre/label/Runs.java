package campcloth.fibre.label;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What a stretch of letters and digits without a space may have been meant to be: numbers and known words in turns, with
 * characters exchanged that look alike. Two words may follow each other where one of them is a joining word or both are fibres.
 */
final class Runs {

    private static final Pattern NUMBER = Pattern.compile("[0-9OolI]{1,3}");
    private static final int SHORTEST_WORD = 3;
    private static final int MOST_EXCHANGED = 4;
    private static final int MOST_READINGS = 2;
    private static final Set<WordKind> JOINING =
            EnumSet.of(WordKind.AND, WordKind.OR, WordKind.PURE, WordKind.PERCENT, WordKind.HEADING, WordKind.OF);

    private final Lexicon lexicon;

    Runs(Lexicon lexicon) {
        this.lexicon = lexicon;
    }

    /** A piece as it was meant, and what may follow it. */
    private record Meant(String text, boolean isNumber, boolean joins) {}

    /**
     * At most two readings, words and numbers parted by spaces; the run itself where it reads as it stands.
     *
     * @param percentFollows whether a percent sign stands after it, so that letters alone may be a number
     */
    Set<String> readings(String run, boolean percentFollows) {
        if (percentFollows && NUMBER.matcher(run).matches()) {
            return share(run) ? Set.of(digits(run)) : Set.of();
        }
        Set<String> readings = new LinkedHashSet<>();
        for (List<Meant> meant : from(run, 0, new HashMap<>())) {
            readings.add(written(meant, run));
        }
        return readings;
    }

    /** Whether it is one word, and one that mending may make. */
    boolean isWhole(String word) {
        List<Entry> meanings = lexicon.meanings(word);
        return !meanings.isEmpty()
                && meanings.stream()
                        .noneMatch(e ->
                                e.kind().isRefused() || e.kind() == WordKind.CODE || e.kind() == WordKind.LANGUAGE);
    }

    private static String written(List<Meant> meant, String run) {
        StringBuilder plain = new StringBuilder();
        StringBuilder spaced = new StringBuilder();
        boolean wordsTogether = false;
        for (int i = 0; i < meant.size(); i++) {
            wordsTogether |=
                    i > 0 && !meant.get(i).isNumber() && !meant.get(i - 1).isNumber();
            plain.append(meant.get(i).text());
            spaced.append(i > 0 ? " " : "").append(meant.get(i).text());
        }
        return !wordsTogether && plain.toString().equals(run) ? run : spaced.toString();
    }

    private List<List<Meant>> from(String run, int at, Map<Integer, List<List<Meant>>> known) {
        if (at == run.length()) {
            return List.of(List.of());
        }
        List<List<Meant>> done = known.get(at);
        if (done != null) {
            return done;
        }
        List<List<Meant>> readings = new ArrayList<>();
        for (int to = at + 1; to <= run.length(); to++) {
            for (Meant first : pieces(run, at, to)) {
                for (List<Meant> rest : from(run, to, known)) {
                    if (rest.isEmpty() || mayFollow(first, rest.get(0))) {
                        List<Meant> reading = new ArrayList<>(List.of(first));
                        reading.addAll(rest);
                        readings.add(reading);
                    }
                }
            }
        }
        known.put(at, few(readings));
        return few(readings);
    }

    /** Enough readings to tell none, one and several apart, whatever stands before them. */
    private static List<List<Meant>> few(List<List<Meant>> readings) {
        List<List<Meant>> few = new ArrayList<>();
        Map<String, Integer> starts = new HashMap<>();
        for (List<Meant> reading : readings) {
            Meant first = reading.get(0);
            String start = (first.isNumber() ? "n" : first.joins() ? "j" : "w");
            if (starts.merge(start, 1, Integer::sum) <= MOST_READINGS) {
                few.add(reading);
            }
        }
        return few;
    }

    private static boolean mayFollow(Meant first, Meant second) {
        if (first.isNumber() || second.isNumber()) {
            return first.isNumber() != second.isNumber();
        }
        return first.joins() != second.joins() || !first.joins();
    }

    private List<Meant> pieces(String run, int at, int to) {
        String piece = run.substring(at, to);
        List<Meant> pieces = new ArrayList<>();
        if (NUMBER.matcher(piece).matches() && piece.chars().anyMatch(Character::isDigit) && share(piece)) {
            pieces.add(new Meant(digits(piece), true, false));
        }
        if (piece.length() >= SHORTEST_WORD) {
            for (String word : words(piece)) {
                pieces.add(new Meant(word, false, joins(word)));
            }
        }
        return pieces;
    }

    /** The known words that it may be with letters for digits; names of fibres and joining words only, where it is a part. */
    private List<String> words(String piece) {
        List<String> words = new ArrayList<>(List.of(""));
        int exchanged = 0;
        for (int i = 0; i < piece.length(); i++) {
            char c = piece.charAt(i);
            String meant = c == '0'
                    ? "o"
                    : c == '1' ? "li" : c == '5' ? "s" : Character.isDigit(c) ? "" : Character.toString(c);
            exchanged += Character.isDigit(c) ? 1 : 0;
            if (meant.isEmpty() || exchanged > MOST_EXCHANGED) {
                return List.of();
            }
            List<String> longer = new ArrayList<>();
            for (String word : words) {
                meant.chars().forEach(m -> longer.add(word + (char) m));
            }
            words = longer;
        }
        return words.stream().filter(this::isWhole).toList();
    }

    private boolean joins(String word) {
        return lexicon.meanings(word).stream().allMatch(e -> JOINING.contains(e.kind()));
    }

    private static boolean share(String number) {
        int value = Integer.parseInt(digits(number));
        return value >= 1 && value <= 100 && digits(number).charAt(0) != '0';
    }

    private static String digits(String number) {
        return number.replace('O', '0').replace('o', '0').replace('l', '1').replace('I', '1');
    }
}
