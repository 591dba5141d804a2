package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.MarkPair;
import campcloth.cloth.Property;
import campcloth.cloth.SwatchSamples;
import campcloth.cloth.Swatches;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A cloth of a supplier's list that was measured: the next list neither undoes the swatch nor makes it stay for ever. */
class ListedSwatchTest extends TakenLists {

    private static final String LIST = "key,name,composition,shrinkWarpPercent,width cm\n";

    @Autowired
    private Swatches swatches;

    @Test
    void aSwatchOutlastsTheNextListAndCanStillBeRemoved() throws IOException {
        taken(LIST + "A,Linen A,100% linen,3,150\n");
        String id = kept("A").id();
        Optional<Figure> listed = shrinkage();
        assertThat(listed.map(Figure::value)).contains(3.0);
        Swatches.Outcome told =
                swatches.add(id, SwatchSamples.warp(SwatchSamples.DAY, new MarkPair(50, List.of(47.3))));
        taken(LIST + "A,Linen A,100% linen,3,155\n");
        assertThat(kept("A").cloth().required(Property.WIDTH_CM).value()).isEqualTo(155);
        assertThat(shrinkage().map(Figure::basis)).contains(Basis.MEASURED);
        assertThat(shrinkage().map(Figure::value)).contains(5.4);
        assertThat(told).isInstanceOf(Swatches.Outcome.Done.class);
        if (told instanceof Swatches.Outcome.Done done) {
            swatches.remove(id, done.swatch().id());
        }
        assertThat(shrinkage()).isEqualTo(listed);
        assertThat(kept("A").cloth().required(Property.WIDTH_CM).value()).isEqualTo(155);
    }

    private void taken(String list) throws IOException {
        assertThat(take(list).written()).isTrue();
        assertThat(kept()).containsOnlyKeys("A");
    }

    private Optional<Figure> shrinkage() {
        Cloth cloth = kept("A").cloth();
        return cloth.figure(Property.SHRINK_WARP_PERCENT);
    }
}
