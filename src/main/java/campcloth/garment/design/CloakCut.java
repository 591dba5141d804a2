package campcloth.garment.design;

import campcloth.garment.GarmentPiece;
import campcloth.garment.Hem;
import campcloth.garment.SewnCloth;
import campcloth.layout.Outline;
import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;

/**
 * The pieces of a cloak with their allowances (common practice, no source): 1 cm inside the neck for the facing, at the hem
 * what the hem asks for, at seams and front edges 2 cm where no other is chosen, 5 mm more on cloth that frays. Wedges that are
 * wider than the cloth are pieced after {@link PiecedPanels}.
 */
record CloakCut(CircleSector sector, CloakChoice choice, SewnCloth cloth, Hem hem, Hem neck) {

    private static final double NECK_FACING_CM = 4;
    private static final double FRONT_FACING_CM = 6;
    private static final double HEM_FACING_CM = 5;
    private static final double HEM_FACING_ARC_CM = 60;
    private static final double FACING_SEAM_CM = 1;
    /** Project choice: shortening worth telling. */
    private static final double NEAR_CM = 10;

    double seamAllowanceCm() {
        return cloth.seamAllowanceCm(choice.seamCm());
    }

    CutSector cutSector() {
        return new CutSector(sector, cloth, hem.washedAllowanceCm(), neck.allowanceCm(), seamAllowanceCm());
    }

    PiecedPanels panels() {
        double neckCm = cloth.acrossCm(sector.innerCm());
        double usableCm = cloth.usableWidthCm();
        return choice.middleOnGrain()
                ? PiecedPanels.fromTheMiddle(cutSector().corners(), usableCm, seamAllowanceCm(), neckCm)
                : PiecedPanels.fromTheLeft(cutSector().corners(), usableCm, seamAllowanceCm(), neckCm);
    }

    List<GarmentPiece> pieces() {
        List<PiecedPanels.Panel> panels = panels().panels();
        List<GarmentPiece> pieces = new ArrayList<>();
        for (int i = 0; i < panels.size(); i++) {
            String name = panels.size() == 1 && !panels.get(i).twin() ? wedge() : wedge() + " panel " + (i + 1);
            addPieces(name, panels.get(i), pieces);
        }
        return pieces;
    }

    /** Parts with one edge on the grain are mirrored left and right; of three the one in the middle has no twin. */
    private void addPieces(String name, PiecedPanels.Panel panel, List<GarmentPiece> pieces) {
        int wedges = choice.wedges();
        if (panel.symmetrical()) {
            pieces.add(new GarmentPiece(name, panel.outline(), wedges, false, true).matchedAtHem());
            return;
        }
        int inPairs = panel.twin() ? 2 * wedges : wedges / 2 * 2;
        if (inPairs > 0) {
            pieces.add(new GarmentPiece(name, panel.outline(), inPairs, true, false).matchedAtHem());
        }
        if (!panel.twin() && wedges % 2 == 1) {
            String single = inPairs > 0 ? name + " of the middle" : name;
            pieces.add(new GarmentPiece(single, panel.outline(), 1, false, false).matchedAtHem());
        }
    }

    private String wedge() {
        if (choice.wedges() == 1) {
            return "cloak";
        }
        return choice.quarterWedges() ? "quarter" : "half";
    }

    /**
     * How much shorter a cloak needs one panel fewer in each part, where that is near: n panels cover n widths of the cloth
     * less two seam allowances at each seam between them. Empty where it is in one piece or that is far.
     */
    Optional<Double> shorterForOnePanelFewerCm() {
        int panels = panelCount() / choice.wedges();
        if (panels == 1) {
            return Optional.empty();
        }
        DoubleSummaryStatistics x =
                cutSector().corners().stream().mapToDouble(Point::xCm).summaryStatistics();
        double coveredCm = (panels - 1) * cloth.usableWidthCm() - 2 * (panels - 2) * seamAllowanceCm();
        double widthPerLength = choice.middleOnGrain() ? 2 * Math.sin(sector.angle() / 2) : 1;
        double shorterCm = (x.getMax() - x.getMin() - coveredCm) / cloth.acrossCm(widthPerLength);
        return shorterCm > NEAR_CM ? Optional.empty() : Optional.of(Math.ceil(10 * shorterCm) / 10);
    }

    double neckFacingEdgeCm() {
        return choice.angle() * (sector.innerCm() + NECK_FACING_CM);
    }

    /** Length of all seams that piece the wedges, on the finished cloak. */
    double piecingCm() {
        double shrunk = cloth.acrossCm(1);
        return choice.wedges()
                * panels().seamsCm().stream()
                        .mapToDouble(x -> sector.sectionCm(x / shrunk))
                        .sum();
    }

    List<GarmentPiece> smallPieces() {
        List<GarmentPiece> small = new ArrayList<>();
        double neckCm = sector.innerCm();
        int halves = (choice.quarters() + 1) / 2;
        small.add(ring("neck facing", halves, neckCm, neckCm + NECK_FACING_CM, 0, neck.allowanceCm()));
        if (choice.frontFacing()) {
            double lengthCm = cloth.alongCm(sector.lengthCm()) + hem.washedAllowanceCm() + neck.allowanceCm();
            Outline strip = Outline.rectangle(cloth.acrossCm(FRONT_FACING_CM) + seamAllowanceCm(), lengthCm);
            small.add(new GarmentPiece("front facing", strip, 2, false, true));
        }
        if (choice.hemFacing()) {
            double hemCm = sector.outerCm();
            int arcs = (int) Math.ceil(choice.angle() * hemCm / HEM_FACING_ARC_CM);
            small.add(ring("hem facing", arcs, hemCm - HEM_FACING_CM, hemCm, hem.washedAllowanceCm(), 0));
        }
        return small;
    }

    /** A facing round the cloak, in so many pieces alike, each with its middle on the grain. */
    private GarmentPiece ring(
            String name, int count, double innerCm, double outerCm, double outsideCm, double insideCm) {
        CircleSector part = CircleSector.middleOnGrain(innerCm, outerCm, choice.angle() / count);
        CutSector cut = new CutSector(part, cloth, outsideCm, insideCm, FACING_SEAM_CM);
        return new GarmentPiece(name, Outline.of(cut.corners()).movedTo(0, 0), count, false, true);
    }

    /** Widest panel with its allowances. */
    double widestPanelCm() {
        return pieces().stream().mapToDouble(p -> p.outline().widthCm()).max().orElseThrow();
    }

    int panelCount() {
        return pieces().stream().mapToInt(GarmentPiece::count).sum();
    }
}
