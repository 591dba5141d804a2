package campcloth.garment;

/**
 * A seam of a garment.
 *
 * @param name what it joins
 * @param lengthCm all of it on one garment
 * @param stitch how it is sewn
 * @param neatenedEdges raw edges along it that are neatened: two where the allowances are pressed apart, none where the
 *     cloth holds its cut edge
 */
public record Seam(String name, double lengthCm, Stitch stitch, int neatenedEdges) {

    /** A plain seam, both allowances neatened where the cloth needs it. */
    public static Seam pressedOpen(String name, double lengthCm, SewnCloth cloth) {
        return new Seam(name, lengthCm, Stitch.LOCK_301, cloth.holdsItsCutEdge() ? 0 : 2);
    }
}
