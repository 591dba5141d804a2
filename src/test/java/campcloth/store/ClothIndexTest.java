package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.cloth.Cloth;
import campcloth.cloth.ClothTraiter;
import campcloth.cloth.ClothTraits;
import campcloth.fibre.FibreFamily;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The index follows the table of the cloths, whoever writes it. */
class ClothIndexTest {

    private static final long SEED = 77_001;

    private final IndexedDatabase database = new IndexedDatabase();
    private final ClothDraw draw = new ClothDraw(SEED);

    /** Quick stand-ins for what the sciences compute. */
    private record PlainTraits(String rules) implements ClothTraiter {

        @Override
        public ClothTraits of(Cloth cloth) {
            boolean melts = cloth.blend().percentOf(FibreFamily.MELTABLE) > 0;
            return new ClothTraits(Set.of(rules), melts ? "HIGH" : "LOW");
        }
    }

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void addedReplacedAndRemovedClothsAreFoundAsTheyStand() {
        ClothIndex index = index();
        database.write(Map.of("a", named("wendlow serge"), "b", named("wendlow canvas")));
        index.bringUpToDate();
        assertThat(database.found("wendlow").ids()).containsExactly("a", "b");
        database.write(Map.of("a", named("river melton")));
        index.bringUpToDate();
        assertThat(database.found("wendlow serge").near()).isTrue();
        assertThat(database.found("melton").ids()).containsExactly("a");
        database.remove("a");
        index.bringUpToDate();
        assertThat(database.found("melton").ids()).isEmpty();
        database.write(Map.of("a", named("river melton")));
        index.bringUpToDate();
        assertThat(database.found("melton").ids()).containsExactly("a");
    }

    @Test
    void aChangeLargerThanABatchIsBroughtInWhole() {
        ClothIndex index = index();
        database.write(drawn(1_203));
        index.bringUpToDate();
        assertThat(database.rows()).hasSize(1_203);
        Map<String, Cloth> exactlyTwoBatches = drawn(1_000);
        database.write(exactlyTwoBatches);
        index.bringUpToDate();
        assertThat(database.found(Optional.ofNullable(exactlyTwoBatches.get("c-999"))
                                .orElseThrow()
                                .name())
                        .ids())
                .contains("c-999");
    }

    @Test
    void anyOrderOfChangesEndsAsIfMadeAnew() {
        ClothIndex index = index();
        SplittableRandom random = new SplittableRandom(SEED);
        for (int step = 0; step < 60; step++) {
            String id = "c-" + random.nextInt(12);
            if (random.nextInt(3) == 0) {
                database.remove(id);
            } else {
                database.write(Map.of(id, draw.cloth()));
            }
            if (random.nextInt(3) == 0) {
                index.bringUpToDate();
            }
        }
        index.bringUpToDate();
        Map<String, String> followed = database.rows();
        database.sql().update("delete from cloth_index");
        database.sql().update("update cloth_index_state set tick = -1, through_id = null");
        index.bringUpToDate();
        assertThat(followed).as("seed " + SEED).isNotEmpty().isEqualTo(database.rows());
    }

    @Test
    void whatBreaksOffInTheMiddleIsGoneOnWith() {
        ClothIndex index = index();
        database.write(drawn(1_100));
        database.spoil("c-999");
        database.write(more(50));
        assertThatThrownBy(index::bringUpToDate).isInstanceOf(RuntimeException.class);
        int before = database.rows().size();
        assertThat(before).as("whole batches that were committed").isEqualTo(1_000);
        database.write(Map.of("c-999", draw.cloth()));
        index().bringUpToDate();
        assertThat(database.rows()).hasSize(1_150);
    }

    @Test
    void manyInstancesAtOnceDoTheWorkOnceAndTheSame() throws Exception {
        index();
        database.write(drawn(1_300));
        ExecutorService pool = Executors.newFixedThreadPool(4);
        try {
            List<Future<?>> all = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                ClothIndex instance = database.index(new PlainTraits("A"));
                all.add(pool.submit(instance::bringUpToDate));
                database.write(Map.of("late-" + i, draw.cloth()));
            }
            for (Future<?> each : all) {
                each.get();
            }
        } finally {
            pool.shutdown();
        }
        index().bringUpToDate();
        assertThat(database.rows()).hasSize(1_304);
    }

    @Test
    void otherRulesMakeItAnewAtStartAndTheSameRulesDoNot() {
        database.write(drawn(3));
        index();
        database.sql().update("update cloth_index set fire_grade = 'SEVERE'");
        index();
        assertThat(database.rows().values()).allMatch(row -> row.contains("SEVERE"));
        database.index(new PlainTraits("B")).afterSingletonsInstantiated();
        assertThat(database.rows().values()).hasSize(3).noneMatch(row -> row.contains("SEVERE"));
        assertThat(database.rows().values()).allMatch(row -> row.contains("{B}"));
    }

    @Test
    void theLongestNoteAndWordsAreIndexed() {
        ClothIndex index = index();
        Cloth plain = named("serge");
        database.write(Map.of(
                "long", with(plain, "x".repeat(2000)),
                "ligatures", with(plain, "\uFDFA".repeat(2000)),
                "many", with(plain, "a b ".repeat(500))));
        index.bringUpToDate();
        assertThat(database.found("serge").ids()).hasSize(3);
    }

    private ClothIndex index() {
        ClothIndex index = database.index(new PlainTraits("A"));
        index.afterSingletonsInstantiated();
        return index;
    }

    private Map<String, Cloth> drawn(int count) {
        Map<String, Cloth> cloths = new LinkedHashMap<>();
        for (int i = 0; i < count; i++) {
            cloths.put("c-" + i, draw.cloth());
        }
        return cloths;
    }

    private Map<String, Cloth> more(int count) {
        Map<String, Cloth> cloths = new LinkedHashMap<>();
        drawn(count).forEach((id, cloth) -> cloths.put("more-" + id, cloth));
        return cloths;
    }

    private Cloth named(String name) {
        return Renamed.named(name, draw.cloth());
    }

    private static Cloth with(Cloth cloth, String note) {
        return new Cloth(
                cloth.name(),
                cloth.blend(),
                cloth.weave(),
                cloth.surface(),
                cloth.finish(),
                cloth.nap(),
                cloth.stretch(),
                cloth.figures(),
                note);
    }
}
