package campcloth.fibre.label;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Labels that say the same in several languages, each after its mark: {@code DE: 100% Baumwolle EN: 100% cotton}. All must say
 * the same. Since marks look like other words ({@code PL} is also polyester, {@code en} is "and" in Dutch), the label is read
 * with and without taking such words for marks, and every reading that keeps the rules must agree with the others. A single
 * mark counts only before a colon or in brackets: {@code no 100% lana} says in Spanish what the cloth is not.
 */
final class LanguageMarks {

    private final String text;
    private final List<Spot> spots;
    private final Set<String> spoken;

    private LanguageMarks(String text, List<Spot> spots, Set<String> spoken) {
        this.text = text;
        this.spots = spots;
        this.spoken = spoken;
    }

    /**
     * A stretch of the label in one language, or in several that share it.
     *
     * @param languages those of its mark
     * @param named those that it is called by, also where its first word may be a mark or another word
     * @param spots what stands after the mark
     */
    private record Block(Set<String> languages, Set<String> named, List<Spot> spots) {

        boolean saysSomething() {
            return spots.stream()
                    .anyMatch(s -> s.sort() == Token.Sort.NUMBER
                            || (s.isWord() && !s.isOnly(WordKind.HEADING) && !s.isOnly(WordKind.CLOTH)));
        }

        int from() {
            return spots.get(0).from();
        }

        int to() {
            return spots.get(spots.size() - 1).to();
        }

        String name() {
            return named.isEmpty()
                    ? "the text before the first language mark"
                    : named.stream().map(Entry::languageName).collect(Collectors.joining(" and "));
        }
    }

    static Reading read(String text, List<Spot> spots, Set<String> spoken) {
        return new LanguageMarks(text, spots, spoken).read();
    }

    private Reading read() {
        List<Unreadable> broken = new ArrayList<>();
        Optional<Reading> only = Optional.empty();
        for (List<Integer> marks : waysToMark()) {
            try {
                Reading reading = marks.isEmpty() ? Choices.read(text, unmarked(), spoken) : inBlocks(marks);
                if (only.isPresent() && !only.get().agreesWith(reading)) {
                    throw Unreadable.readings(
                            text,
                            spots.get(marks(at -> true).get(0)),
                            List.of(only.get().inWords(), reading.inWords()));
                }
                only = Optional.of(only.orElse(reading));
            } catch (Unreadable unreadable) {
                if (unreadable.isAboutReadings() && marks.stream().anyMatch(this::isSure)) {
                    throw unreadable;
                }
                broken.add(unreadable);
            }
        }
        return only.orElseThrow(() -> marks(this::isSure).size() > 1 ? broken.get(0) : broken.get(broken.size() - 1));
    }

    /** Whether it can be nothing but a mark: no other word, or no name of a fibre and set before a colon. */
    private boolean isSure(int at) {
        return spots.get(at).senses().stream()
                .allMatch(s -> s.kind() == WordKind.LANGUAGE
                        || (isSetBeforeColon(at) && !s.kind().namesOneFibre()));
    }

    private boolean isSetBeforeColon(int at) {
        return at + 1 < spots.size() && spots.get(at + 1).isSign(":)");
    }

    /** Which spots to take for marks: those that can be nothing else, those set before a colon, all, none. */
    private Set<List<Integer>> waysToMark() {
        Set<List<Integer>> ways = new LinkedHashSet<>();
        ways.add(marks(this::isSure));
        ways.add(marks(at -> isSure(at) || isSetBeforeColon(at)));
        ways.add(marks(at -> true));
        ways.remove(List.<Integer>of());
        ways.add(List.of());
        return ways;
    }

    private List<Integer> marks(Predicate<Integer> isMark) {
        List<Integer> marks = new ArrayList<>();
        for (int at = 0; at < spots.size(); at++) {
            if (spots.get(at).mayBe(WordKind.LANGUAGE) && isMark.test(at)) {
                marks.add(at);
            }
        }
        return marks;
    }

    /** The spots as they are where no word is a mark. */
    private List<Spot> unmarked() {
        marks(this::isSure).stream().findFirst().ifPresent(sure -> {
            throw misplaced(spots.get(sure));
        });
        return spots.stream().map(LanguageMarks::unmarked).toList();
    }

    private static Spot unmarked(Spot spot) {
        return spot.meaning(spot.senses().stream()
                .filter(s -> s.kind() != WordKind.LANGUAGE)
                .toList());
    }

    private Reading inBlocks(List<Integer> marks) {
        List<Block> blocks = blocks(marks);
        if (blocks.size() == 1 && marks.stream().noneMatch(this::isSetBeforeColon)) {
            throw misplaced(spots.get(marks.get(0)));
        }
        Optional<Reading> first = Optional.empty();
        for (Block block : blocks) {
            Reading reading =
                    Choices.read(text, block.spots(), block.languages().isEmpty() ? spoken : block.languages());
            if (first.isPresent() && !first.get().agreesWith(reading)) {
                throw contradiction(blocks.get(0), first.get(), block, reading);
            }
            first = Optional.of(
                    first.map(f -> f.and(reading).noting(Repeats.NOTE)).orElse(reading));
        }
        return first.orElseThrow(() -> misplaced(spots.get(marks.get(0))));
    }

    private Unreadable misplaced(Spot mark) {
        return new Unreadable(
                mark.from(),
                mark.to(),
                "'" + Shown.excerpt(text, mark.from(), mark.to()) + "' is not a word that says anything in this place",
                "leave it out; where it marks a language, put a colon after it and the whole composition after that");
    }

    private List<Block> blocks(List<Integer> marks) {
        List<Block> blocks = new ArrayList<>();
        Set<String> languages = new TreeSet<>();
        int from = 0;
        for (int mark : marks) {
            if (add(blocks, languages, from, mark)) {
                languages = new TreeSet<>();
            }
            languages.addAll(languagesOf(spots.get(mark)));
            from = mark + 1;
        }
        if (!add(blocks, languages, from, spots.size())) {
            Spot last = spots.get(from - 1);
            throw new Unreadable(
                    last.from(), last.to(), "no composition stands after this language mark", "write the composition");
        }
        return blocks;
    }

    private boolean add(List<Block> blocks, Set<String> languages, int from, int to) {
        int start = from;
        while (start < to && spots.get(start).isSign(":)-/.,;\n")) {
            start++;
        }
        List<Spot> content =
                spots.subList(start, to).stream().map(LanguageMarks::unmarked).toList();
        Set<String> named = languages.isEmpty() && start < to ? languagesOf(spots.get(start)) : languages;
        Block block = new Block(languages, named, content);
        return block.saysSomething() && blocks.add(block);
    }

    /** The languages that a spot marks, where it is a mark. */
    private static Set<String> languagesOf(Spot spot) {
        return spot.senses().stream()
                .filter(sense -> sense.kind() == WordKind.LANGUAGE)
                .flatMap(sense -> sense.means().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Unreadable contradiction(Block first, Reading one, Block block, Reading other) {
        return new Unreadable(
                block.from(),
                block.to(),
                "the languages contradict each other: " + first.name() + " has " + one.inWords() + ", " + block.name()
                        + " has " + other.inWords(),
                "find out which of them holds for this cloth",
                List.of(first.name() + ": " + one.inWords(), block.name() + ": " + other.inWords()));
    }
}
