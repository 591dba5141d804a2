package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.event.Activity;
import campcloth.event.Season;
import campcloth.event.Spell;
import campcloth.fibre.Fibre;
import campcloth.figure.Citation;
import campcloth.figure.Fault;
import campcloth.figure.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The reference data that the program ships with: whole, and every figure cited. */
class CatalogueFilesTest {

    private static final ShippedCatalogue CATALOGUE = ShippedCatalogue.get();

    private static final List<String> CITING = List.of(
            "fibres.csv",
            "cloths.csv",
            "seasons.csv",
            "sizes.csv",
            "burn-test.csv",
            "burn-test-classes.csv",
            "list-columns.csv",
            "demo/cloths.csv");

    @Test
    void theFilesHaveNoFaultAndAreLargeEnough() {
        assertThat(CATALOGUE.faults()).extracting(Fault::sentence).isEmpty();
        assertThat(CATALOGUE.fibres().all()).hasSizeGreaterThanOrEqualTo(36);
        assertThat(CATALOGUE.cloths()).hasSizeGreaterThanOrEqualTo(300);
    }

    @Test
    void everyGroupOfClothIsThere() {
        Map<String, Predicate<Cloth>> groups = new LinkedHashMap<>();
        groups.put("linen", pure("flax"));
        groups.put("washed linen", pure("flax").and(c -> c.finish() == Finish.WASHED));
        groups.put("hemp", pure("hemp"));
        groups.put("cotton", pure("cotton"));
        groups.put("cotton pile", pure("cotton").and(c -> c.weave() == Weave.PILE));
        groups.put("brushed cotton", pure("cotton").and(c -> c.finish() == Finish.BRUSHED));
        groups.put("wool", pure("wool"));
        groups.put("fulled wool", pure("wool").and(c -> c.finish() == Finish.FULLED));
        groups.put("open-weave wool", pure("wool").and(c -> c.weave() == Weave.OPEN_PLAIN));
        groups.put("wool knit", pure("wool").and(c -> c.weave().isKnit()).and(Cloth::stretch));
        groups.put("silk", pure("silk"));
        groups.put(
                "regenerated cellulose",
                c -> Stream.of("viscose", "modal", "lyocell", "cupro").anyMatch(f -> pure(f).test(c)));
        groups.put("linen and cotton", both("flax", "cotton"));
        groups.put("linen and viscose", both("flax", "viscose"));
        groups.put("hemp and cotton", both("hemp", "cotton"));
        groups.put("wool and polyester", both("wool", "polyester"));
        groups.put("wool and polyamide", both("wool", "polyamide"));
        groups.put("wool and acrylic", both("wool", "acrylic"));
        groups.put("poly-cotton", both("polyester", "cotton"));
        groups.put("polyester", pure("polyester"));
        groups.put("polyester fleece", pure("polyester").and(c -> c.weave() == Weave.FLEECE));
        groups.put("acrylic", pure("acrylic"));
        groups.put("fake fur", c -> c.weave() == Weave.FUR);
        groups.put("polyamide", pure("polyamide"));
        groups.put("coated", c -> c.finish() == Finish.COATED);
        groups.put("waxed", c -> c.finish() == Finish.WAXED);
        groups.put("elastane blends", c -> c.blend().percentOf("elastane") > 0 && c.stretch());
        groups.put("without a label", pure(Fibre.UNKNOWN));
        groups.put("unnamed shares", c -> c.blend().percentOf(Fibre.OTHER) > 0);
        groups.forEach((name, group) -> assertThat(
                        CATALOGUE.cloths().values().stream().filter(group).count())
                .as("cloths of the group %s", name)
                .isGreaterThanOrEqualTo(2));
    }

    private static Predicate<Cloth> pure(String fibre) {
        return cloth -> cloth.blend().percentOf(fibre) == 100;
    }

    private static Predicate<Cloth> both(String first, String second) {
        return cloth -> cloth.blend().percentOf(first) + cloth.blend().percentOf(second) == 100
                && cloth.blend().percentOf(first) > 0
                && cloth.blend().percentOf(second) > 0;
    }

    @Test
    void everySourceCitedIsOnFile() throws IOException {
        assertThat(citations().stream()
                        .map(citation -> citation.missingFrom(CATALOGUE.sources()))
                        .flatMap(Optional::stream)
                        .map(Fault::sentence))
                .isEmpty();
    }

    @Test
    void everySourceIsCitedOrSaysWhatItIsFor() throws IOException {
        Set<String> cited = citations().stream().map(Citation::source).collect(Collectors.toSet());
        assertThat(cited).hasSizeGreaterThan(15);
        assertThat(CATALOGUE.sources().all())
                .filteredOn(source -> !cited.contains(source.id()))
                .allSatisfy(source -> assertThat(source.note()).as(source.id()).isNotBlank());
    }

    @Test
    void whatWasNotReadSaysSo() {
        assertThat(CATALOGUE.sources().all()).allSatisfy(source -> {
            if (source.kind() == Source.Kind.PROJECT) {
                assertThat(source.evidence()).as(source.id()).isEqualTo(Source.Evidence.CHOSEN);
            }
            if (source.evidence() == Source.Evidence.MEMORY) {
                assertThat(source.note()).as(source.id()).containsAnyOf("from memory", "no source");
            }
        });
    }

    private static List<Citation> citations() throws IOException {
        List<Citation> citations = new ArrayList<>();
        List<String> citing = new ArrayList<>(CITING);
        try (var words = Files.list(Path.of("catalogue", "label-words"))) {
            words.forEach(file -> citing.add("label-words/" + file.getFileName()));
        }
        for (String name : citing) {
            try (var text = ShippedCatalogue.file(name)) {
                citations.addAll(Citation.in(name, text));
            }
        }
        return citations;
    }

    @Test
    void everySeasonHasDayFireAndNight() {
        for (Season season : Season.values()) {
            List<Spell> spells = CATALOGUE.seasons().spells(season);
            assertThat(spells).as(season.name()).hasSizeBetween(3, 5);
            assertThat(spells)
                    .as(season.name())
                    .anySatisfy(spell -> assertThat(spell.fireInUse()).isPresent());
            assertThat(spells.stream().mapToDouble(Spell::hours).sum())
                    .as(season.name())
                    .isLessThanOrEqualTo(24);
        }
        assertThat(Season.values())
                .allSatisfy(season -> assertThat(CATALOGUE.seasons().spells(season))
                        .as("nobody is presumed to fight: %s", season)
                        .noneMatch(spell -> spell.activity() == Activity.FIGHTING));
        assertThat(warmest(Season.SUMMER)).isGreaterThan(warmest(Season.SPRING));
        assertThat(warmest(Season.SPRING)).isGreaterThan(warmest(Season.WINTER));
    }

    private static double warmest(Season season) {
        return CATALOGUE.seasons().spells(season).stream()
                .mapToDouble(Spell::airC)
                .max()
                .orElseThrow();
    }
}
