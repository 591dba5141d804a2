package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.Property;
import campcloth.cloth.ShippedCatalogue;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * A copy of the database is read where it has come as far as is asked for, and nowhere else. The copy is a database of its own here, so
 * that a cloth that weighs something else in it tells which of the two was read.
 */
class ClothReplicaTest {

    private static final String ID =
            ShippedCatalogue.get().cloths().keySet().iterator().next();
    private static final int MARK_GSM = 777;

    @Test
    void aCopyThatHasComeAsFarIsRead() {
        try (IndexedDatabase first = filled();
                IndexedDatabase second = filled();
                ClothReplica copy = second.asCopy()) {
            mark(second);
            assertThat(weight(first.snapshot(copy))).isEqualTo(MARK_GSM);
            assertThat(weight(first.snapshot())).isNotEqualTo(MARK_GSM);
        }
    }

    @Test
    void aCopyThatIsBehindIsNotReadUntilItHasCaughtUp() {
        try (IndexedDatabase first = filled();
                IndexedDatabase second = filled();
                ClothReplica copy = second.asCopy()) {
            mark(second);
            first.write(Map.of(ID, weighing(300)));
            ClothSnapshot snapshot = first.snapshot(copy);
            assertThat(weight(snapshot))
                    .as("nothing older than what is asked for")
                    .isEqualTo(300);
            first.write(Map.of(ID, weighing(310)));
            second.write(Map.of(ID, weighing(300)));
            second.write(Map.of(ID, weighing(310)));
            mark(second);
            assertThat(weight(snapshot)).isEqualTo(MARK_GSM);
            first.write(Map.of(ID, weighing(320)));
            assertThat(weight(snapshot)).isEqualTo(320);
        }
    }

    @Test
    void aCopyThatIsAwayOrBreaksOffHidesNothing() {
        try (IndexedDatabase first = filled();
                IndexedDatabase second = filled();
                ClothReplica copy = second.asCopy()) {
            second.sql()
                    .update("update cloth set body = '{\"name\": 1}'::jsonb where id = (select max(id) from cloth)");
            ClothSnapshot snapshot = first.snapshot(copy);
            assertThat(snapshot.columns().cloths())
                    .isEqualTo(ShippedCatalogue.get().cloths().size());
            assertThat(weight(snapshot)).isEqualTo(weight(first.snapshot()));
        }
        try (IndexedDatabase first = filled();
                ClothReplica nowhere = new ClothReplica(
                        "jdbc:postgresql://127.0.0.1:1/none",
                        "a",
                        "b",
                        new Json(),
                        ShippedCatalogue.get().fibres())) {
            assertThat(weight(first.snapshot(nowhere))).isEqualTo(weight(first.snapshot()));
        }
    }

    private static IndexedDatabase filled() {
        IndexedDatabase database = new IndexedDatabase();
        database.write(ShippedCatalogue.get().cloths());
        return database;
    }

    private static void mark(IndexedDatabase database) {
        database.sql()
                .update(
                        "update cloth set body = jsonb_set(body, '{figures,weightGsm,value}', to_jsonb(?)) where id = ?",
                        MARK_GSM,
                        ID);
        database.sql()
                .update(
                        "update cloth set body = jsonb_set(jsonb_set(body, '{figures,weightGsm,low}', to_jsonb(?)),"
                                + " '{figures,weightGsm,high}', to_jsonb(?)) where id = ?",
                        MARK_GSM,
                        MARK_GSM,
                        ID);
    }

    private static Cloth weighing(double gsm) {
        return Objects.requireNonNull(ShippedCatalogue.get().cloths().get(ID))
                .with(Property.WEIGHT_GSM, Figure.exact(gsm, Basis.MEASURED, "own scales"));
    }

    private static double weight(ClothSnapshot snapshot) {
        return snapshot.byIds(List.of(ID))
                .get(0)
                .cloth()
                .figure(Property.WEIGHT_GSM)
                .orElseThrow()
                .value();
    }
}
