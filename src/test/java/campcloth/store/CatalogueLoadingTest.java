package campcloth.store;

import static campcloth.store.Renamed.named;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.ClothTable;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.MarkPair;
import campcloth.cloth.Property;
import campcloth.cloth.Swatch;
import campcloth.cloth.SwatchSamples;
import campcloth.cloth.Swatches;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.journey.WholeService;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.TestPropertySource;
import org.springframework.transaction.support.TransactionTemplate;

/** What users did to the catalogue survives every loading of it. On a database of its own, where cloths that others ask for may be changed and gone. */
@WholeService
@TestPropertySource(properties = "a.database=of the catalogue's loading")
@DirtiesContext
class CatalogueLoadingTest {

    @Autowired
    private Catalogue catalogue;

    @Autowired
    private ClothRows rows;

    @Autowired
    private Json json;

    @Autowired
    private Clock clock;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private Cloths cloths;

    @Autowired
    private Swatches swatches;

    @AfterEach
    void backToTheCatalogueAsItIs() {
        load(catalogue);
    }

    @Test
    void loadingTheSameFilesAgainChangesNothing() {
        long before = rows.newestTick();
        load(catalogue);
        assertThat(rows.newestTick()).isEqualTo(before);
    }

    @Test
    void everyClothOfTheFilesIsThereAsWritten() {
        for (ClothTable.Entry entry : catalogue.cloths()) {
            KeptCloth kept = cloths.byId(entry.id()).orElseThrow();
            if (kept.origin() == KeptCloth.Origin.CATALOGUE) {
                assertThat(kept.cloth()).isEqualTo(entry.cloth());
            }
        }
    }

    @Test
    void aNewerCatalogueReplacesWhatAnOlderOneSaid() {
        String id = untouched(0);
        load(changed(id, cloth -> named("Said anew", cloth)));
        assertThat(cloths.byId(id).orElseThrow().cloth().name()).isEqualTo("Said anew");
    }

    @Test
    void anEditedClothKeepsTheEditWhenANewerCatalogueComes() {
        String id = untouched(1);
        KeptCloth before = cloths.byId(id).orElseThrow();
        cloths.replace(id, before.version(), named("Mine now", before.cloth()));
        load(changed(id, cloth -> named("Said anew", cloth)));
        KeptCloth after = cloths.byId(id).orElseThrow();
        assertThat(after.cloth().name()).isEqualTo("Mine now");
        assertThat(after.origin()).isEqualTo(KeptCloth.Origin.EDITED);
    }

    @Test
    void aClothThatAUserRemovedDoesNotComeBack() {
        String id = untouched(2);
        cloths.byId(id).ifPresent(kept -> cloths.remove(id, kept.version()));
        load(changed(id, cloth -> named("Said anew", cloth)));
        assertThat(cloths.byId(id)).isEmpty();
    }

    @Test
    void aClothThatTheCatalogueDropsGoesAndMayComeBack() {
        String id = untouched(3);
        List<ClothTable.Entry> fewer = new ArrayList<>(catalogue.cloths());
        fewer.removeIf(entry -> entry.id().equals(id));
        load(with(fewer));
        assertThat(cloths.byId(id)).isEmpty();
        load(catalogue);
        assertThat(cloths.byId(id)).isPresent();
    }

    @Test
    void anOwnClothIsLeftAlone() {
        KeptCloth own = cloths.add(
                named("Grandmother's curtain", catalogue.cloths().get(4).cloth()));
        load(with(catalogue.cloths().subList(0, 10)));
        assertThat(cloths.byId(own.id())).contains(own);
    }

    @Test
    void aMeasuredClothKeepsItsSwatchWhenANewerCatalogueComes() {
        String id = untouched(4);
        Swatch swatch = SwatchSamples.warp(SwatchSamples.DAY, new MarkPair(50, List.of(47.3)));
        swatches.add(id, swatch);
        KeptCloth measured = cloths.byId(id).orElseThrow();
        load(changed(
                id, cloth -> cloth.with(Property.SHRINK_WARP_PERCENT, Figure.exact(1, Basis.MEASURED, "newer files"))));
        KeptCloth after = cloths.byId(id).orElseThrow();
        assertThat(after).isEqualTo(measured);
        assertThat(after.cloth().required(Property.SHRINK_WARP_PERCENT).value()).isEqualTo(5.4);
        assertThat(swatches.of(id).orElseThrow().newestFirst()).hasSize(1);
    }

    @Test
    void aMeasuredClothThatTheCatalogueDropsStays() {
        String id = untouched(5);
        swatches.add(id, SwatchSamples.warp(SwatchSamples.DAY, new MarkPair(50, List.of(47.3))));
        List<ClothTable.Entry> fewer = new ArrayList<>(catalogue.cloths());
        fewer.removeIf(entry -> entry.id().equals(id));
        load(with(fewer));
        assertThat(cloths.byId(id)
                        .orElseThrow()
                        .cloth()
                        .required(Property.SHRINK_WARP_PERCENT)
                        .basis())
                .isEqualTo(Basis.MEASURED);
    }

    /** The id of a cloth that no test has changed yet. */
    private String untouched(int number) {
        return catalogue.cloths().stream()
                .map(ClothTable.Entry::id)
                .filter(id -> cloths.byId(id)
                        .filter(kept -> kept.origin() == KeptCloth.Origin.CATALOGUE)
                        .isPresent())
                .skip(number)
                .findFirst()
                .orElseThrow();
    }

    private void load(Catalogue files) {
        new CatalogueLoading(files, rows, json, clock, transaction).afterSingletonsInstantiated();
    }

    private Catalogue changed(String id, UnaryOperator<Cloth> change) {
        return with(catalogue.cloths().stream()
                .map(e -> e.id().equals(id) ? new ClothTable.Entry(id, change.apply(e.cloth())) : e)
                .toList());
    }

    private Catalogue with(List<ClothTable.Entry> entries) {
        return new Catalogue(
                catalogue.sources(),
                catalogue.fibres(),
                entries,
                catalogue.seasons(),
                catalogue.sizes(),
                catalogue.labelVocabulary(),
                catalogue.flameKey(),
                catalogue.listWords(),
                catalogue.demo());
    }
}
