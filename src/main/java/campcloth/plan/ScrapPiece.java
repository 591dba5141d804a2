package campcloth.plan;

import campcloth.garment.GarmentPiece;

/**
 * A small piece of a garment, which may come from a scrap.
 *
 * @param name name on the pattern
 * @param count how many for one garment
 * @param acrossCm its width with all allowances
 * @param alongCm its length along the grain with all allowances
 */
public record ScrapPiece(String name, int count, double acrossCm, double alongCm) {

    static ScrapPiece of(GarmentPiece piece) {
        return new ScrapPiece(
                piece.name(),
                piece.count(),
                piece.outline().widthCm(),
                piece.outline().heightCm());
    }
}
