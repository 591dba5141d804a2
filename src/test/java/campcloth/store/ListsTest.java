package campcloth.store;

import static campcloth.store.Renamed.named;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.cloth.Cloth;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Property;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import campcloth.supply.ListReport;
import campcloth.supply.ListReport.Outcome;
import campcloth.supply.SupplierLists;
import campcloth.supply.SupplierLists.OnBadRow;
import java.io.IOException;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Lists that are taken over: what comes of their rows, once and again, and what users did in between. */
class ListsTest extends TakenLists {

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
}
