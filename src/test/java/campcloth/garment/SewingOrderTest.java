package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The order of sewing: whole, and nothing before what it rests on. */
class SewingOrderTest {

    /**
     * Pairs of seams and edges, the first never after the second, written from how garments are sewn and not from the stages
     * (common practice, no source).
     */
    private static final List<List<String>> BEFORE = List.of(
            List.of("shoulders", "facing to neck"),
            List.of("shoulders", "sleeves to body"),
            List.of("centre front and back of body", "shoulders"),
            List.of("halves of the gores", "side gores"),
            List.of("halves of the gores", "gores of front and back"),
            List.of("gores of front and back", "sides and sleeves"),
            List.of("side gores", "sides and sleeves"),
            List.of("gussets", "sides and sleeves"),
            List.of("sleeves to body", "gussets"),
            List.of("sleeves to body", "sides and sleeves"),
            List.of("facing to neck", "sides and sleeves"),
            List.of("sides and sleeves", "cuff bands"),
            List.of("sides and sleeves", "hem"),
            List.of("sides and sleeves", "cuff"),
            List.of("sides and sleeves", "side split"),
            List.of("sides and sleeves", "wrist slit"),
            List.of("side gores", "hem"),
            List.of("gores of front and back", "hem"),
            List.of("centre front and back", "casing"),
            List.of("centre front and back", "leg end"),
            List.of("gusset to one leg", "inseams"),
            List.of("inseams", "gusset to the other leg"),
            List.of("gusset to the other leg", "centre front and back"),
            List.of("inseams", "centre front and back of trousers"),
            List.of("inseams", "leg end"),
            List.of("sides", "inseams"),
            List.of("panels to panels", "from neck to hem"),
            List.of("panels to panels", "front edges"),
            List.of("panels to panels", "side edges"),
            List.of("panels to panels", "hem"),
            List.of("panels to panels", "waistband to skirt"),
            List.of("panels to panels", "band to apron, both edges"),
            List.of("from neck to hem", "facing to neck"),
            List.of("from neck to hem", "hem"),
            List.of("from neck to hem", "facing to hem"),
            List.of("front edges", "facing to neck"),
            List.of("front edges", "waistband to skirt"),
            List.of("facings to front edges", "facing to neck"),
            List.of("between the gores", "waistband to skirt"),
            List.of("between the gores", "placket"),
            List.of("between the gores", "casing"),
            List.of("between the gores", "hem"),
            List.of("placket", "waistband to skirt"),
            List.of("waistband to skirt", "waistband, inner edge and ends"),
            List.of("side edges", "two gathering rows"),
            List.of("side edges", "band to apron, both edges"),
            List.of("two gathering rows", "band to apron, both edges"),
            List.of("ties, along and across", "band to apron, both edges"),
            List.of("ties", "side edges"),
            List.of("gores to cape", "hem"),
            List.of("crown and back", "front"),
            List.of("crown and back", "face edge"),
            List.of("crown", "face edge"),
            List.of("front", "hem"),
            List.of("across the bands", "side edges"));

    @Test
    void everySeamAndHemStandsInOneStep() {
        DesignDraw.alwaysMadeUp(7_000, (made, garment) -> {
            Sewing sewing = garment.sewing();
            List<String> sewn = inOrder(sewing);
            assertThat(new HashSet<>(sewn)).hasSameSizeAs(sewn);
            Set<String> there = new TreeSet<>();
            sewing.seams().forEach(seam -> there.add(seam.name()));
            sewing.hems().forEach(hem -> there.add(hem.edge()));
            assertThat(sewn).containsExactlyInAnyOrderElementsOf(there);
        });
    }

    @Test
    void nothingIsSewnBeforeWhatItRestsOn() {
        Set<List<String>> seen = new HashSet<>();
        DesignDraw.alwaysMadeUp(8_000, (made, garment) -> {
            List<String> sewn = named(garment);
            for (List<String> pair : BEFORE) {
                int first = sewn.indexOf(pair.get(0));
                int then = sewn.indexOf(pair.get(1));
                if (first >= 0 && then >= 0) {
                    seen.add(pair);
                    assertThat(first).as("%s in %s", pair, sewn).isLessThan(then);
                }
            }
        });
        assertThat(BEFORE).allMatch(seen::contains);
    }

    @Test
    void whatIsDrawnTakesEverySeamAndEdgeThatTheTableNames() {
        Set<String> drawn = new TreeSet<>();
        DesignDraw.alwaysMadeUp(9_000, (made, garment) -> drawn.addAll(named(garment)));
        Set<String> spokenOf = new TreeSet<>();
        BEFORE.forEach(spokenOf::addAll);
        assertThat(spokenOf).isSubsetOf(drawn);
    }

    @Test
    void itIsTriedOnBeforeItsLowestEdgeIsHemmed() {
        DesignDraw.alwaysMadeUp(10_000, (made, garment) -> {
            List<SewingStage> stages =
                    garment.sewing().steps().stream().map(SewingStep::stage).toList();
            int tried = stages.indexOf(SewingStage.FITTING);
            assertThat(tried).isLessThan(Math.max(stages.lastIndexOf(SewingStage.HEMS), stages.size() - 1));
        });
    }

    @Test
    void aSeamOfNoStepAStepOfNoSeamAndASeamOfTwoStepsAreNoSewing() {
        Seam side = new Seam("side", 50, Stitch.LOCK_301, 2);
        SewingStep sews = SewingStep.seams(SewingStage.CLOSING, "Close the side.", "side");
        assertThat(sewing(List.of(side), sews).steps()).containsExactly(sews);
        assertThatThrownBy(() -> sewing(List.of(side))).hasMessageContaining("[side]");
        assertThatThrownBy(() -> sewing(List.of(), sews)).hasMessageContaining("[side]");
        assertThatThrownBy(() -> sewing(List.of(side), sews, sews)).hasMessageContaining("[side, side]");
    }

    @Test
    void aStepBeforeWhatItRestsOnIsNoSewing() {
        Seam side = new Seam("side", 50, Stitch.LOCK_301, 2);
        SewingStep sews = SewingStep.seams(SewingStage.CLOSING, "Close the side.", "side");
        SewingStep hangs = SewingStep.of(SewingStage.HEMS, "Let it hang.");
        assertThat(sewing(List.of(side), sews, hangs).steps()).hasSize(2);
        assertThatThrownBy(() -> sewing(List.of(side), hangs, sews)).hasMessageContaining("rests on");
    }

    @Test
    void stagesRestOnOthersWithoutACircle() {
        for (SewingStage stage : SewingStage.values()) {
            Set<SewingStage> below = new HashSet<>();
            List<SewingStage> open = new ArrayList<>(List.of(stage));
            while (!open.isEmpty()) {
                SewingStage next = open.remove(open.size() - 1);
                for (SewingStage other : SewingStage.values()) {
                    if (next.restsOn(other) && below.add(other)) {
                        open.add(other);
                    }
                }
            }
            assertThat(below).as("below %s", stage).doesNotContain(stage);
            assertThat(stage.because()).endsWith(".");
        }
    }

    private static Sewing sewing(List<Seam> seams, SewingStep... steps) {
        return new Sewing(seams, List.of(), 2, List.of(steps), List.of());
    }

    private static List<String> inOrder(Sewing sewing) {
        List<String> sewn = new ArrayList<>();
        for (SewingStep step : sewing.steps()) {
            sewn.addAll(step.seams());
            sewn.addAll(step.hems());
        }
        return sewn;
    }

    /** With the centre seams, which trousers and bodies both have, told apart. */
    private static List<String> named(Garment garment) {
        List<String> named = new ArrayList<>();
        boolean trousers = garment.design().equals("trousers");
        for (String name : inOrder(garment.sewing())) {
            boolean centre = name.equals("centre front and back");
            if (centre && !trousers) {
                named.add("centre front and back of body");
            } else {
                named.add(name);
                if (centre) {
                    named.add("centre front and back of trousers");
                }
            }
        }
        return named;
    }
}
