package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.MarkPair;
import campcloth.cloth.Property;
import campcloth.cloth.SwatchSamples;
import campcloth.cloth.Swatches;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.journey.WholeService;
import campcloth.supply.ListOrder;
import campcloth.supply.ListReader;
import campcloth.supply.SupplierLists;
import campcloth.supply.SupplierLists.OnBadRow;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A cloth of a supplier's list that was measured: the next list neither undoes the swatch nor makes it stay for ever. */
@WholeService
class ListedSwatchTest {

    private static final String HEAD = "key,name,composition,shrinkWarpPercent,width cm\n";

    @Autowired
    private SupplierLists lists;

    @Autowired
    private ListReader reader;

    @Autowired
    private Swatches swatches;

    private final String supplier = "Mill " + UUID.randomUUID();

    @Test
    void aSwatchOutlastsTheNextListAndCanStillBeRemoved() throws IOException {
        take(HEAD + "A,Linen A,100% linen,3,150\n");
        String id = kept().id();
        Optional<Figure> listed = shrinkage();
        assertThat(listed.map(Figure::value)).contains(3.0);
        Swatches.Outcome told =
                swatches.add(id, SwatchSamples.warp(SwatchSamples.DAY, new MarkPair(50, List.of(47.3))));
        take(HEAD + "A,Linen A,100% linen,3,155\n");
        assertThat(kept().cloth().required(Property.WIDTH_CM).value()).isEqualTo(155);
        assertThat(shrinkage().map(Figure::basis)).contains(Basis.MEASURED);
        assertThat(shrinkage().map(Figure::value)).contains(5.4);
        assertThat(told).isInstanceOf(Swatches.Outcome.Done.class);
        if (told instanceof Swatches.Outcome.Done done) {
            swatches.remove(id, done.swatch().id());
        }
        assertThat(shrinkage()).isEqualTo(listed);
        assertThat(kept().cloth().required(Property.WIDTH_CM).value()).isEqualTo(155);
    }

    private Optional<Figure> shrinkage() {
        Cloth cloth = kept().cloth();
        return cloth.figure(Property.SHRINK_WARP_PERCENT);
    }

    private KeptCloth kept() {
        List<KeptCloth> kept = new ArrayList<>();
        lists.each(EnumSet.allOf(KeptCloth.Origin.class), line -> {
            if (line.supplier().equals(Optional.of(supplier))) {
                kept.add(line.kept());
            }
        });
        assertThat(kept).hasSize(1);
        return kept.get(0);
    }

    private void take(String list) throws IOException {
        ListOrder how = new ListOrder(supplier, Optional.empty(), Optional.empty());
        boolean written = lists.take(
                        new SupplierLists.Order(supplier, OnBadRow.REFUSE_ALL, false),
                        rows -> reader.read(new ByteArrayInputStream(list.getBytes(StandardCharsets.UTF_8)), how, rows),
                        SupplierLists.Watcher.NONE)
                .written();
        assertThat(written).isTrue();
    }
}
