package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.garment.Options;
import campcloth.layout.LayoutDrawing;
import campcloth.layout.Verification;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

/** A plan can be kept as JSON, and drawn from what was kept. */
class KeptPlanTest {

    /** The cloth of the worked example: 140 cm, 6 % along, 4 % across, 200 g/m2, 14.50 EUR a metre. */
    private static final ClothToCut CLOTH = Orders.priced(Orders.washed(140, 6, 4), 14.5);

    private static final CuttingOrder ORDER = CuttingOrder.of(CLOTH, Orders.tunic(126));

    @Test
    void sameOrderGivesTheSamePlan() {
        CuttingOrder group = CuttingOrder.of(CLOTH, Orders.tunic(110), Orders.tunic(126, 100));
        assertThat(Orders.PLANNER.plan(group)).isEqualTo(Orders.PLANNER.plan(group));
    }

    @Test
    void planComesBackUnchangedFromJson() {
        CuttingPlan plan = Orders.PLANNER.plan(Orders.withRemnant(ORDER, 200));
        JsonMapper json = JsonMapper.builder().build();
        assertThat(json.readValue(json.writeValueAsString(plan), CuttingPlan.class))
                .isEqualTo(plan);
    }

    @Test
    void planGivesItsLayoutBack() {
        Options flared = Options.of(Map.of("centreSeams", true, "flareCm", 6));
        CuttingOrder.Line line = new CuttingOrder.Line("tunic", 1, Orders.wearer(126, 95), flared);
        CuttingPlan plan = Orders.PLANNER.plan(CuttingOrder.of(CLOTH, line));
        assertThat(plan.layout().placements()).hasSize(plan.placements().size());
        plan.layout()
                .placements()
                .forEach(placement -> assertThat(plan.placements())
                        .anyMatch(placed -> placed.piece().equals(placement.piece())
                                && placed.copy() == placement.copy()
                                && placed.outlineCm()
                                        .containsAll(plan.layout()
                                                .outlineOf(placement)
                                                .points())));
        assertThat(Verification.faults(plan.layout())).isEmpty();
        assertThat(LayoutDrawing.svg(plan.sheet())).contains("front").contains("sleeve");
    }
}
