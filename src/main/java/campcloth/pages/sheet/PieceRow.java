package campcloth.pages.sheet;

import campcloth.layout.Point;
import campcloth.plan.CuttingPlan;
import campcloth.plan.Making;
import campcloth.plan.Matched;
import campcloth.plan.PlacedPiece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One piece of the layout in words, on the cloth unfolded.
 *
 * @param name name of the piece
 * @param count how many of it
 * @param acrossCm its width as it lies
 * @param alongCm its length along the cloth
 * @param places where each lies
 */
record PieceRow(String name, int count, double acrossCm, double alongCm, List<Place> places) {

    /** From the left selvedge and from the cut edge to the nearest corner of its box. */
    record Place(double leftCm, double lowCm, boolean turned, boolean mirrored) {}

    /** Beyond so many places a table tells less than the drawing. */
    private static final int MOST_PLACES = 24;

    PieceRow {
        places = List.copyOf(places);
    }

    static List<PieceRow> of(CuttingPlan plan) {
        List<PlacedPiece> placed = drawn(plan);
        Map<String, List<PlacedPiece>> byName = new LinkedHashMap<>();
        placed.forEach(piece ->
                byName.computeIfAbsent(piece.piece(), name -> new ArrayList<>()).add(piece));
        return byName.values().stream()
                .map(copies -> of(copies, placed.size() <= MOST_PLACES))
                .toList();
    }

    /** The pieces that the drawing shows: matched to the pattern where there is one. */
    private static List<PlacedPiece> drawn(CuttingPlan plan) {
        return plan.making().flatMap(Making::matched).map(Matched::placements).orElse(plan.placements());
    }

    private static PieceRow of(List<PlacedPiece> copies, boolean told) {
        PlacedPiece first = copies.get(0);
        return new PieceRow(
                first.piece(),
                copies.size(),
                span(first.outlineCm().stream().map(Point::xCm).toList()),
                span(first.outlineCm().stream().map(Point::yCm).toList()),
                told
                        ? copies.stream()
                                .map(p -> new Place(p.xCm(), p.yCm(), p.turned(), p.mirrored()))
                                .toList()
                        : List.of());
    }

    private static double span(List<Double> values) {
        double least = values.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double most = values.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        return most - least;
    }
}
