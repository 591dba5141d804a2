package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.garment.Measurements;
import campcloth.garment.Options;
import campcloth.garment.SewnBy;
import campcloth.layout.AtHand;
import campcloth.layout.Repeat;
import campcloth.plan.ClothToCut;
import campcloth.plan.CuttingOrder;
import campcloth.plan.CuttingPlan;
import campcloth.plan.CuttingPlanner;
import campcloth.plan.Fold;
import campcloth.plan.GarmentWork;
import campcloth.plan.Particulars;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Cutting plans that stand in people's databases are read as they were kept, by whichever version. */
class StoredPlansTest {

    private final Json json = new Json();

    @Test
    void aPlanOfTheFirstSchemaIsReadAndDrawsTheSameLayout() throws IOException {
        CuttingPlan plan = json.read(StoredSamples.read("v1/cutting-plan"), CuttingPlan.class);
        assertThat(plan.placements()).hasSize(4);
        assertThat(plan.layout().lengthCm()).isEqualTo(plan.netLengthCm());
        assertThat(plan.cloth()).isEmpty();
        assertThat(plan.sheet().parts()).hasSize(4);
        assertThat(plan.cost().orElseThrow().currency()).isEqualTo("EUR");
        assertThat(json.read(json.write(plan), CuttingPlan.class)).isEqualTo(plan);
    }

    @Test
    void aPlanOfTheFirstSchemaTellsNothingOfItsMakingAndANewOneKeepsIt() throws IOException {
        CuttingPlan old = json.read(StoredSamples.read("v1/cutting-plan"), CuttingPlan.class);
        assertThat(old.making()).isEmpty();
        CuttingPlan plan = new CuttingPlanner(0.05)
                .plan(new CuttingOrder(
                        ClothToCut.plain(140, 6, 4, 200, true),
                        List.of(new CuttingOrder.Line(
                                "tunic", 1, Measurements.of(Map.of("finishedChestCm", 126.0)), Options.USUAL)),
                        Optional.empty(),
                        Fold.ANY,
                        10,
                        new Particulars(
                                SewnBy.HAND,
                                List.of(new AtHand(80, Optional.empty(), Optional.empty())),
                                Optional.of(Repeat.every(Optional.of(6.0), Optional.empty())))));
        assertThat(plan.making().orElseThrow().matched()).isPresent();
        assertThat(plan.making().orElseThrow().lengthsAtHand()).isPresent();
        assertThat(json.read(json.write(plan), CuttingPlan.class)).isEqualTo(plan);
        String without = json.write(plan).replaceAll(",\"(lineFromCutCm|lineFromSelvedgeCm|atHand)\":[^,}]*", "");
        CuttingPlan older = json.read(without, CuttingPlan.class);
        assertThat(without).doesNotContain("lineFrom", "atHand\":");
        assertThat(older.matchedSheet().orElseThrow().stripes()).hasSize(1);
        assertThat(older.making().orElseThrow().matched().orElseThrow().lineFromCutCm())
                .isEmpty();
    }

    @Test
    void aPlanFromBeforeStepsNamedTheirSeamsIsReadWithoutThem() {
        CuttingPlan plan = new CuttingPlanner(0.02)
                .plan(CuttingOrder.of(
                        ClothToCut.plain(140, 6, 4, 200, true),
                        new CuttingOrder.Line("apron", 1, Measurements.of(Map.of()), Options.USUAL)));
        GarmentWork work = plan.making().orElseThrow().garments().get(0);
        assertThat(work.order().orElseThrow()).hasSameSizeAs(work.steps());
        assertThat(work.scraps().orElseThrow()).isNotEmpty();
        String text = json.write(plan);
        String without =
                text.substring(0, text.indexOf(",\"order\":[")) + text.substring(text.indexOf("}],\"smallPieces\""));
        assertThat(without).doesNotContain("\"order\"", "\"scraps\"");
        GarmentWork old = json.read(without, CuttingPlan.class)
                .making()
                .orElseThrow()
                .garments()
                .get(0);
        assertThat(old.steps()).isEqualTo(work.steps());
        assertThat(old.order()).isEmpty();
        assertThat(old.scraps()).isEmpty();
    }
}
