package campcloth.store;

import static campcloth.store.Renamed.named;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.ShippedCatalogue;
import campcloth.supply.ListReport;
import campcloth.supply.ListReport.Outcome;
import campcloth.supply.ListWriter;
import campcloth.supply.SupplierLists.OnBadRow;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is written of the catalogue can be taken over as a list again. */
class ExportedListsTest extends TakenLists {

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
        KeptCloth own =
                cloths.add(named("Mine " + supplier, ShippedCatalogue.get().cloth("linen-plain-185")));
        ListReport report = take(exported().replace("Mine " + supplier, "Renamed"), OnBadRow.REFUSE_ALL, false);
        assertThat(report.counts().changed()).isEqualTo(1);
        assertThat(cloths.byId(own.id()).orElseThrow().cloth()).isEqualTo(named("Renamed", own.cloth()));
        assertThat(kept()).isEmpty();
    }

    /** The catalogue as it comes, and what this test made; not what others left and may be changing. */
    private List<ListWriter.Line> ours() {
        return lines().stream()
                .filter(line -> line.kept().origin() == KeptCloth.Origin.CATALOGUE
                        || line.supplier().equals(Optional.of(supplier))
                        || line.kept().cloth().name().endsWith(supplier))
                .toList();
    }

    private Map<String, Cloth> catalogue() {
        Map<String, Cloth> all = new HashMap<>();
        ours().forEach(line -> all.put(line.kept().id(), line.kept().cloth()));
        return all;
    }

    private String exported() throws IOException {
        StringBuilder out = new StringBuilder();
        ListWriter writer = new ListWriter(out);
        for (ListWriter.Line line : ours()) {
            writer.write(line);
        }
        return out.toString();
    }
}
