package campcloth.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Texts of pages stand in message files, so that another language is another file; and none of them is idle. */
class TextsTest {

    private static final Path RESOURCES = Path.of("src", "main", "resources");
    private static final Path TEMPLATES = RESOURCES.resolve("templates");
    private static final Path CODE = Path.of("src", "main", "java", "campcloth", "pages");

    /** {@code #{key}}, {@code #{key(arguments)}} and, where a part of the key varies, {@code #{|start${...}end|}}. */
    private static final Pattern USED = Pattern.compile("#\\{(\\|[^|]*\\||[\\w.-]+)");

    /** The same in the midst of an expression. */
    private static final Pattern USED_WITHIN = Pattern.compile("#messages\\.msg\\('([\\w.-]+)'");

    /** The family of texts that the entries of a choice in a template are read by. */
    private static final Pattern FAMILY = Pattern.compile(":: choice\\(.*, '([\\w.-]+)', \\$\\{");

    /** The same in code, for the values of an enum. */
    private static final Pattern FAMILY_IN_CODE = Pattern.compile("\\b(?:any|words)\\(\"([\\w.-]+)\", ");

    private static final Pattern COMMENT = Pattern.compile("<!--.*?-->", Pattern.DOTALL);
    private static final Pattern TAG = Pattern.compile("<(?:[^>\"']|\"[^\"]*\"|'[^']*')*>");
    private static final Pattern LETTERS = Pattern.compile("\\p{L}{2,}");

    /** A key in code, or the beginning of one that ends in a point. */
    private static final Pattern QUOTED = Pattern.compile("\"([a-z][\\w-]*(?:\\.[\\w-]+)*(?:\\.|\\.[\\w-]+))\"");

    @Test
    void noTemplateHoldsTextOfItsOwn() {
        Map<String, List<String>> found = new TreeMap<>();
        templates().forEach((name, text) -> {
            String bare = TAG.matcher(COMMENT.matcher(text).replaceAll("")).replaceAll(" ");
            List<String> words =
                    LETTERS.matcher(bare).results().map(MatchResult::group).toList();
            if (!words.isEmpty()) {
                found.put(name, words);
            }
        });
        assertThat(found).isEmpty();
    }

    @Test
    void everyTextThatIsAskedForIsThere() {
        TreeSet<String> keys = keys();
        Map<String, String> missing = new TreeMap<>();
        templates()
                .forEach((name, text) -> asked(text)
                        .filter(key -> keys.stream().noneMatch(pattern(key).asMatchPredicate()))
                        .forEach(key -> missing.put(key, name)));
        assertThat(missing).isEmpty();
    }

    @Test
    void everyTextThatIsThereIsAskedFor() {
        List<Pattern> asked = Stream.concat(
                        templates().values().stream().flatMap(TextsTest::asked),
                        code().flatMap(text -> Stream.concat(
                                found(QUOTED, text), found(FAMILY_IN_CODE, text).map(TextsTest::family))))
                .distinct()
                .map(TextsTest::pattern)
                .toList();
        assertThat(keys().stream()
                        .filter(key -> !key.startsWith("typeMismatch"))
                        .filter(key -> asked.stream()
                                .noneMatch(pattern -> pattern.matcher(key).matches()))
                        .toList())
                .isEmpty();
    }

    @Test
    void everyWayToAskForATextIsSeenAndNoOther() {
        assertThat(
                        asked(
                                "#{a.b} #{|a.c.${d}|} #messages.msg('a.d') ~{x/y :: choice('a.e', #{a.f}, 'a.g', ${ {'H'} })} 'a.i'"))
                .containsExactlyInAnyOrder("a.b", "|a.c.${d}|", "a.d", "a.f", "a.g.");
        assertThat(found(FAMILY_IN_CODE, "any(\"a.b\", Verdict.values()); many(\"a.c\", d); text(\"a.e\")"))
                .containsExactly("a.b");
        assertThat(pattern("a.g.").matcher("a.g").matches()).isFalse();
        assertThat(pattern("a.b").matcher("a.b.c").matches()).isFalse();
    }

    @Test
    void theRuleAboutTextsInTemplatesCanFail() {
        String bare = TAG.matcher("<p th:text=\"#{a.b}\">words</p>").replaceAll(" ");
        assertThat(LETTERS.matcher(bare).find()).isTrue();
    }

    private static Stream<String> asked(String template) {
        return Stream.of(
                        found(USED, template),
                        found(USED_WITHIN, template),
                        found(FAMILY, template).map(TextsTest::family))
                .flatMap(keys -> keys);
    }

    private static Stream<String> found(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(found -> found.group(1));
    }

    /** What all keys of a family begin with. */
    private static String family(String name) {
        return name + ".";
    }

    /** A key, or what begins and ends like one where a part of it varies. */
    private static Pattern pattern(String asked) {
        if (asked.endsWith(".")) {
            return Pattern.compile(Pattern.quote(asked) + "[\\w.-]+");
        }
        String key = asked.startsWith("|") ? asked.substring(1, asked.length() - 1) : asked;
        return Pattern.compile(
                Stream.of(key.split("\\$\\{[^}]*}", -1)).map(Pattern::quote).collect(Collectors.joining("[\\w-]+")));
    }

    private static TreeSet<String> keys() {
        TreeSet<String> keys = new TreeSet<>();
        for (Path file : files(RESOURCES.resolve("messages"), ".properties")) {
            Properties texts = new Properties();
            try (var reader = Files.newBufferedReader(file)) {
                texts.load(reader);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
            texts.stringPropertyNames()
                    .forEach(key ->
                            assertThat(keys.add(key)).as("%s stands once", key).isTrue());
        }
        return keys;
    }

    private static Map<String, String> templates() {
        return files(TEMPLATES, ".html").stream()
                .collect(Collectors.toMap(file -> TEMPLATES.relativize(file).toString(), TextsTest::read));
    }

    private static Stream<String> code() {
        return files(CODE, ".java").stream().map(TextsTest::read);
    }

    private static List<Path> files(Path folder, String ending) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
