package campcloth.fibre.label;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds slips of print in a text that cannot be read as it stands: the letters O, o, l, I in a number, the digits 0, 1, 5 in a
 * word, a word broken by a space or at the end of a line, words run together, and o/o for the percent sign. A slip is only
 * found where something is not known as it stands; abbreviations are never made by mending. Project choice: what is mended are
 * likenesses of characters, never the spelling.
 */
final class Slips {

    private static final Pattern PERCENT =
            Pattern.compile("(?<=[0-9Ool\\s])([\u00B0\u00BAoO]/[oO0])(?![\\p{L}\\p{Nd}])");
    private static final Pattern RUN = Pattern.compile("[\\p{L}0-9][\\p{L}\\p{M}0-9]*");
    private static final Pattern BEFORE_PERCENT = Pattern.compile("\\s*(?:%|[\u00B0\u00BAoO]/[oO0])");
    private static final Pattern GAP = Pattern.compile("[ \\t\\p{Zs}]+|-[ \\t]*[\\r\\n]*[ \\t]*");
    private static final int LONGEST_RUN = 40;
    private static final int SHORTEST_JOINED = 5;

    private final String text;
    private final Lexicon lexicon;
    private final Runs runs;
    private final Map<List<Integer>, Set<String>> found = new LinkedHashMap<>();

    private Slips(String text, Lexicon lexicon) {
        this.text = text;
        this.lexicon = lexicon;
        this.runs = new Runs(lexicon);
    }

    /** The slips in the order of the text; none where there are none, or where they overlap. */
    static List<Slip> in(String text, Lexicon lexicon) {
        return new Slips(text, lexicon).find();
    }

    private List<Slip> find() {
        Matcher percents = PERCENT.matcher(text);
        BitSet signs = new BitSet(text.length());
        while (percents.find()) {
            add(percents.start(1), percents.end(1), Set.of("%"));
            signs.set(percents.start(1), percents.end(1));
        }
        List<int[]> words = new ArrayList<>();
        Matcher stretch = RUN.matcher(text);
        while (stretch.find()) {
            if (signs.get(stretch.start(), stretch.end()).isEmpty()) {
                words.add(new int[] {stretch.start(), stretch.end()});
            }
        }
        for (int i = 0; i < words.size(); i++) {
            run(words.get(i)[0], words.get(i)[1]);
            joined(words, i);
        }
        return apart();
    }

    private void run(int from, int to) {
        String run = text.substring(from, to);
        if (run.length() > LONGEST_RUN || run.chars().allMatch(Character::isDigit) || isWord(run)) {
            return;
        }
        boolean percentFollows =
                BEFORE_PERCENT.matcher(text).region(to, text.length()).lookingAt();
        Set<String> meant = runs.readings(run, percentFollows);
        if (!meant.isEmpty() && !meant.contains(run)) {
            add(from, to, meant);
        }
    }

    private boolean isWord(String word) {
        return !lexicon.meanings(word).isEmpty()
                && lexicon.meanings(word).stream().noneMatch(e -> e.kind().isRefused());
    }

    /** The word here with the next, or the next two, as one word. */
    private void joined(List<int[]> words, int first) {
        StringBuilder joined = new StringBuilder();
        boolean anyUnknown = false;
        for (int i = first; i < Math.min(words.size(), first + 3); i++) {
            int from = words.get(i)[0];
            if (i > first
                    && !GAP.matcher(text.substring(words.get(i - 1)[1], from)).matches()) {
                return;
            }
            String word = text.substring(from, words.get(i)[1]);
            if (!word.codePoints()
                    .allMatch(c -> Character.isLetter(c) || Character.getType(c) == Character.NON_SPACING_MARK)) {
                return;
            }
            joined.append(word);
            if (joined.length() > LONGEST_RUN) {
                return;
            }
            anyUnknown |= !isWord(word);
            if (i > first && anyUnknown && joined.length() >= SHORTEST_JOINED && runs.isWhole(joined.toString())) {
                add(words.get(first)[0], words.get(i)[1], Set.of(joined.toString()));
            }
        }
    }

    private void add(int from, int to, Set<String> meant) {
        found.computeIfAbsent(List.of(from, to), place -> new LinkedHashSet<>()).addAll(meant);
    }

    /** Slips that overlap are one place with several readings. */
    private List<Slip> apart() {
        List<Slip> slips = new ArrayList<>();
        found.forEach((place, meant) -> slips.add(new Slip(place.get(0), place.get(1), meant)));
        slips.sort(Comparator.comparingInt(Slip::from).thenComparingInt(Slip::to));
        List<Slip> apart = new ArrayList<>();
        for (Slip slip : slips) {
            Slip before = apart.isEmpty() ? slip : apart.get(apart.size() - 1);
            if (before == slip || !before.overlaps(slip)) {
                apart.add(slip);
                continue;
            }
            Set<String> both = new LinkedHashSet<>();
            int to = Math.max(before.to(), slip.to());
            before.meant().forEach(m -> both.add(m + text.substring(before.to(), to)));
            slip.meant().forEach(m -> both.add(text.substring(before.from(), slip.from()) + m));
            apart.set(apart.size() - 1, new Slip(before.from(), to, both));
        }
        return apart;
    }
}
