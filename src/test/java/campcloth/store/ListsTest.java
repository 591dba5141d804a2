package campcloth.store;

import static campcloth.store.Renamed.named;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.cloth.Cloth;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Property;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import campcloth.journey.WholeService;
import campcloth.supply.ListOrder;
import campcloth.supply.ListReader;
import campcloth.supply.ListReport;
import campcloth.supply.ListReport.Outcome;
import campcloth.supply.ListWriter;
import campcloth.supply.SupplierLists;
import campcloth.supply.SupplierLists.OnBadRow;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Lists that are taken over: what comes of their rows, once and again, and what users did in between. */
@WholeService
class ListsTest {

    private static final String HEAD = "key,name,composition,weight g/m2,width cm\n";

    @Autowired
    private SupplierLists lists;

    @Autowired
    private ListReader reader;

    @Autowired
    private Cloths cloths;

    private final String supplier = "Mill " + UUID.randomUUID();

    @Test
    void theSameListTwiceChangesNothing() throws IOException {
        String list = HEAD + "A,Linen A,100% linen,180,150\nB,Wool B,100% wool,300,140\n";
        assertThat(take(list).counts()).isEqualTo(new ListReport.Counts(2, 2, 0, 0, 0));
        Map<String, KeptCloth> before = kept();
        assertThat(take(list).counts()).isEqualTo(new ListReport.Counts(2, 0, 0, 2, 0));
        assertThat(kept()).isEqualTo(before);
        assertThat(before).hasSize(2);
        assertThat(kept("A").origin()).isEqualTo(KeptCloth.Origin.OWN);
        assertThat(kept("A").cloth().figures().get(Property.WEIGHT_GSM))
                .isEqualTo(Figure.exact(180, Basis.DECLARED, "list of " + supplier));
    }

    @Test
    void aRowThatSaysSomethingElseChangesThatAlone() throws IOException {
        take(HEAD + "A,Linen A,100% linen,180,150\nB,Wool B,100% wool,300,140\n");
        KeptCloth before = kept("A");
        ListReport report = take(HEAD + "A,Linen A,100% linen,185,150\nB,Wool B,100% wool,300,140\n");
        assertThat(report.counts()).isEqualTo(new ListReport.Counts(2, 0, 1, 1, 0));
        KeptCloth after = kept("A");
        assertThat(after.version()).isEqualTo(before.version() + 1);
        assertThat(after.cloth())
                .isEqualTo(before.cloth()
                        .with(Property.WEIGHT_GSM, Figure.exact(185, Basis.DECLARED, "list of " + supplier)));
    }

    @Test
    void whatAUserMeasuredOrChangedStaysAndTheReportSaysSo() throws IOException {
        take(HEAD + "A,Linen A,100% linen,180,150\n");
        KeptCloth listed = kept("A");
        Figure measured = new Figure(192, 188, 196, Basis.MEASURED, "my scales");
        Cloth mine = named("My linen", listed.cloth().with(Property.WEIGHT_GSM, measured));
        cloths.replace(listed.id(), listed.version(), mine);
        ListReport report = take(HEAD + "A,Linen A new,100% linen,185,155\n");
        Cloth after = kept("A").cloth();
        assertThat(after.figures().get(Property.WEIGHT_GSM)).isEqualTo(measured);
        assertThat(after.name()).isEqualTo("My linen");
        assertThat(after.figure(Property.WIDTH_CM).map(Figure::value)).contains(155.0);
        assertThat(report.rows().get(0).outcome()).isEqualTo(Outcome.CHANGED);
        assertThat(report.rows().get(0).notes())
                .containsExactlyInAnyOrder(
                        "weightGsm: stays 192 as it was measured; the list says 185",
                        "name: stays as you changed it; the list says 'Linen A new'");
        assertThat(take(HEAD + "A,Linen A new,100% linen,185,155\n").counts().unchanged())
                .isEqualTo(1);
    }

    @Test
    void aClothThatAUserRemovedStaysRemoved() throws IOException {
        take(HEAD + "A,Linen A,100% linen,180,150\n");
        KeptCloth listed = kept("A");
        cloths.remove(listed.id(), listed.version());
        ListReport report = take(HEAD + "A,Linen A,100% linen,190,150\n");
        assertThat(report.rows().get(0).outcome()).isEqualTo(Outcome.UNCHANGED);
        assertThat(report.rows().get(0).notes()).containsExactly("you removed this cloth; it stays removed");
        assertThat(kept()).isEmpty();
    }

    @Test
    void oneBadRowKeepsTheWholeListOutUnlessItIsToBeSkipped() throws IOException {
        String list = HEAD + "A,Linen A,100% linen,180,150\nB,Wool B,100% moonlight,300,140\n";
        ListReport refused = take(list);
        assertThat(refused.written()).isFalse();
        assertThat(refused.counts()).isEqualTo(new ListReport.Counts(2, 1, 0, 0, 1));
        assertThat(kept()).isEmpty();
        ListReport skipped = take(list, OnBadRow.SKIP, false);
        assertThat(skipped.written()).isTrue();
        assertThat(skipped.rows()).extracting(ListReport.Row::line).containsExactly(2L, 3L);
        assertThat(kept()).containsOnlyKeys("A");
    }

    @Test
    void aDryRunReportsAndWritesNothing() throws IOException {
        ListReport report = take(HEAD + "A,Linen A,100% linen,180,150\n", OnBadRow.SKIP, true);
        assertThat(report.counts().added()).isEqualTo(1);
        assertThat(report.written()).isFalse();
        assertThat(kept()).isEmpty();
    }

    @Test
    void aListThatBreaksOffLeavesNothing() {
        String list = HEAD + "A,Linen A,100% linen,180,150\n".repeat(1) + "B,\"Wool";
        assertThatThrownBy(() -> take(list)).isInstanceOf(Refused.class);
        assertThat(kept()).isEmpty();
    }

    @Test
    void twoSuppliersMayUseTheSameKey() throws IOException {
        take(HEAD + "A,Linen A,100% linen,180,150\n");
        SupplierLists.Order other = new SupplierLists.Order(supplier + "'s neighbour", OnBadRow.SKIP, false);
        assertThat(take(HEAD + "A,Wool A,100% wool,300,150\n", other).counts().added())
                .isEqualTo(1);
        assertThat(kept("A").cloth().name()).isEqualTo("Linen A");
    }

    @Test
    void whatIsExportedAndReadBackChangesNothing() throws IOException {
        take(HEAD + "=A,=Linen A,100% linen,180,150\n@B,'-Wool B,100% wool,300,140\n");
        Map<String, Cloth> before = catalogue();
        ListReport report = take(exported(), OnBadRow.REFUSE_ALL, false);
        assertThat(report.rows())
                .filteredOn(row -> row.outcome() != Outcome.UNCHANGED)
                .isEmpty();
        assertThat(report.counts().unchanged())
                .isEqualTo(report.counts().rows())
                .isEqualTo(before.size());
        assertThat(catalogue()).isEqualTo(before);
    }

    @Test
    void anExportThatWasEditedChangesTheClothItNames() throws IOException {
        KeptCloth own = cloths.add(named(
                "Mine " + supplier,
                cloths.matching(ClothSearch.EVERYTHING).get(0).cloth()));
        ListReport report = take(exported().replace("Mine " + supplier, "Renamed"), OnBadRow.REFUSE_ALL, false);
        assertThat(report.counts().changed()).isEqualTo(1);
        assertThat(cloths.byId(own.id()).orElseThrow().cloth()).isEqualTo(named("Renamed", own.cloth()));
        assertThat(kept()).isEmpty();
    }

    @Test
    void theOutcomesAddUpToTheRowsAndASecondTimeNothingIsAddedOrChanged() throws IOException {
        for (long seed = 1; seed <= 10; seed++) {
            String list = drawn(new SplittableRandom(seed));
            ListReport first = take(list, OnBadRow.SKIP, false);
            ListReport.Counts counts = first.counts();
            assertThat(counts.added() + counts.changed() + counts.unchanged() + counts.refused())
                    .as("seed %d", seed)
                    .isEqualTo(counts.rows())
                    .isEqualTo(list.lines().count() - 1);
            assertThat(take(list, OnBadRow.SKIP, false).counts())
                    .as("seed %d: %s", seed, list)
                    .isEqualTo(new ListReport.Counts(
                            counts.rows(), 0, 0, counts.rows() - counts.refused(), counts.refused()));
        }
    }

    private static String drawn(SplittableRandom draw) {
        StringBuilder list = new StringBuilder(HEAD);
        for (int i = draw.nextInt(1, 60); i > 0; i--) {
            list.append("K").append(draw.nextInt(40)).append(",Cloth ").append(draw.nextInt(5));
            list.append(
                    draw.nextInt(6) == 0 ? ",100% moonlight," : draw.nextBoolean() ? ",100% wool," : ",100% linen,");
            list.append(draw.nextInt(5, 400))
                    .append(",")
                    .append(draw.nextInt(90, 160))
                    .append("\n");
        }
        return list.toString();
    }

    private ListReport take(String list) throws IOException {
        return take(list, OnBadRow.REFUSE_ALL, false);
    }

    private ListReport take(String list, OnBadRow onBadRow, boolean dryRun) throws IOException {
        return take(list, new SupplierLists.Order(supplier, onBadRow, dryRun));
    }

    private ListReport take(String list, SupplierLists.Order order) throws IOException {
        ListOrder how = new ListOrder(order.supplier(), Optional.empty(), Optional.empty());
        return lists.take(
                order,
                rows -> reader.read(new ByteArrayInputStream(list.getBytes(StandardCharsets.UTF_8)), how, rows),
                SupplierLists.Watcher.NONE);
    }

    /** What is kept of the supplier's list, by its keys. */
    private Map<String, KeptCloth> kept() {
        Map<String, KeptCloth> kept = new HashMap<>();
        for (ListWriter.Line line : lines()) {
            if (line.supplier().equals(Optional.of(supplier))) {
                kept.put(line.key().orElseThrow(), line.kept());
            }
        }
        return kept;
    }

    private KeptCloth kept(String key) {
        return Objects.requireNonNull(kept().get(key));
    }

    private Map<String, Cloth> catalogue() {
        Map<String, Cloth> all = new HashMap<>();
        lines().forEach(line -> all.put(line.kept().id(), line.kept().cloth()));
        return all;
    }

    private String exported() throws IOException {
        StringBuilder out = new StringBuilder();
        ListWriter writer = new ListWriter(out);
        for (ListWriter.Line line : lines()) {
            writer.write(line);
        }
        return out.toString();
    }

    private List<ListWriter.Line> lines() {
        List<ListWriter.Line> lines = new ArrayList<>();
        lists.each(EnumSet.allOf(KeptCloth.Origin.class), lines::add);
        return lines;
    }
}
