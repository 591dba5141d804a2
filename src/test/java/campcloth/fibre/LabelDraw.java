package campcloth.fibre;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;

/** Labels at random: in every language and in several, whole and spoilt. */
final class LabelDraw {

    private static final List<String> SHARES = List.of(
            "100", "100%", "60", "40%", "60%", "40", "50 %", "65", "35%", "33.3%", "33,4 %", "5%", "95", "0%", "101%");
    private static final List<String> MARKS = List.of(
            " ", " ", " ", " ", " ", ", ", "/", "; ", ": ", ". ", "\n", " - ", "-", " & ", " + ", "(", ")", "%", "\t",
            ".", ",", "*", "\u2022 ", "\u00a0", " o/o ");
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
            "\uFF11",
            "0x1",
            "NaN",
            "<b>",
            "${x}",
            "'; drop");
    private static final List<String> BETWEEN =
            List.of(" ", ", ", "; ", "\n", " / ", " + ", " & ", " \u2022 ", "/", "");
    private static final String LETTERS = "oOlIsSi015%";
    private static final List<String> ALIKE = List.of("0", "0", "1", "1", "5", "5", "1", "O", "l", "S", "o/o");

    private final Map<String, List<CSVRecord>> fibres = new TreeMap<>();
    private final Map<String, List<CSVRecord>> parts = new TreeMap<>();
    /** How each language calls each fibre. */
    private final Map<String, Map<String, List<String>>> names = new TreeMap<>();

    private final List<String> languages;
    private final List<String> words = new ArrayList<>();

    LabelDraw() {
        LabelFixture.rowsByLanguage().forEach((language, rows) -> {
            rows.forEach(row -> words.add(row.get("word")));
            fibres.put(language, ofKind(rows, "FIBRE"));
            names.put(
                    language,
                    of(fibres, language).stream()
                            .collect(Collectors.groupingBy(
                                    row -> row.get("means"),
                                    Collectors.mapping(row -> row.get("word"), Collectors.toList()))));
            parts.put(language, ofKind(rows, "PART"));
        });
        languages = fibres.keySet().stream().filter(key -> key.length() == 2).toList();
    }

    private static List<CSVRecord> ofKind(List<CSVRecord> rows, String kind) {
        return rows.stream().filter(row -> row.get("kind").equals(kind)).toList();
    }

    /** A text of any sort. */
    String text(SplittableRandom random) {
        return switch (random.nextInt(8)) {
            case 0 -> soup(random);
            case 1 -> blurred(label(random), random);
            case 2 -> label(random);
            default -> mutated(label(random), random);
        };
    }

    String label(SplittableRandom random) {
        String language = pick(languages, random);
        Map<String, Integer> shares = shares(language, random);
        String text = written(language, shares, random);
        return switch (random.nextInt(8)) {
            case 0, 1 ->
                pick(of(parts, language), random).get("word") + ": " + text + "\n"
                        + pick(of(parts, language), random).get("word") + ": "
                        + written(language, shares(language, random), random);
            case 2 ->
                text + pick(List.of("\n", " / ", ". ", " "), random) + written(pick(languages, random), shares, random);
            case 3 ->
                language.toUpperCase(java.util.Locale.ROOT) + ": " + text + " EN: " + written("en", shares, random);
            default -> text;
        };
    }

    /** Fibre keys with shares that sum to 100. */
    private Map<String, Integer> shares(String language, SplittableRandom random) {
        Map<String, Integer> shares = new LinkedHashMap<>();
        int left = 100;
        while (left > 0) {
            int share = shares.size() == 3 || random.nextInt(3) == 0 ? left : random.nextInt(1, left + 1);
            shares.merge(pick(of(fibres, language), random).get("means"), share, Integer::sum);
            left -= share;
        }
        return shares;
    }

    private String written(String language, Map<String, Integer> shares, SplittableRandom random) {
        String percent = pick(List.of("", "%", " %"), random);
        String between = pick(BETWEEN, random);
        boolean nameFirst = random.nextBoolean();
        StringBuilder text = new StringBuilder();
        shares.forEach((key, share) -> {
            String name = name(language, key, random);
            text.append(text.isEmpty() ? "" : between)
                    .append(nameFirst ? name + " " + share + percent : share + percent + " " + name);
        });
        return text.toString();
    }

    private String name(String language, String key, SplittableRandom random) {
        List<String> known = names.getOrDefault(language, Map.of()).getOrDefault(key, List.of());
        return known.isEmpty() ? key : pick(known, random);
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

    /** Badly printed: characters that look alike exchanged, spaces put in or lost. */
    private static String blurred(String label, SplittableRandom random) {
        StringBuilder text = new StringBuilder(label);
        for (int times = random.nextInt(1, 4); times > 0; times--) {
            int at = random.nextInt(text.length());
            int letter = LETTERS.indexOf(text.charAt(at));
            if (letter >= 0) {
                text.replace(at, at + 1, ALIKE.get(letter));
            } else if (text.charAt(at) == ' ') {
                text.deleteCharAt(at);
            } else {
                text.insert(at, ' ');
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
        return switch (random.nextInt(13)) {
            case 0, 1, 2 -> pick(of(fibres, pick(languages, random)), random).get("word");
            case 3, 4, 5 -> pick(SHARES, random);
            case 6, 7 -> pick(words, random);
            case 8, 9, 10 -> pick(MARKS, random);
            case 11 -> new String(Character.toChars(random.nextInt(0x2fff)));
            default -> pick(GARBAGE, random);
        };
    }

    static <T> T pick(List<T> from, SplittableRandom random) {
        return from.get(random.nextInt(from.size()));
    }

    private static List<CSVRecord> of(Map<String, List<CSVRecord>> rows, String language) {
        return rows.getOrDefault(language, List.of());
    }
}
