package campcloth.garment;

import campcloth.figure.Words;
import java.util.Optional;

/**
 * A round opening with a slit that a part of the body must pass: its edge is {@code pi d + 2 s}, for a circle {@code d} across
 * and a slit {@code s} long. {@code pi x 15 + 2 x 8 = 63.1 cm.}
 *
 * @param name which opening
 * @param acrossCm diameter of the circle, 0 for a slit alone
 * @param slitCm length of the slit, 0 without
 * @param bodyCm circumference of what must pass
 * @param easeCm what the opening must have over it (project choice)
 * @param halfCmGivesCm what the edge gains where half a centimetre is cut away all round; empty at the end of a tube, which
 *     does not widen so
 */
public record Opening(
        String name, double acrossCm, double slitCm, double bodyCm, double easeCm, Optional<Double> halfCmGivesCm) {

    /** The end of a tube, such as a leg: cutting it away does not widen it. */
    public static Opening ofTube(String name, double roundCm, double slitCm, double bodyCm, double easeCm) {
        return new Opening(name, roundCm / Math.PI, slitCm, bodyCm, easeCm, Optional.empty());
    }

    /** Length of the opening's edge. */
    public double edgeCm() {
        return Math.PI * acrossCm + 2 * slitCm;
    }

    public boolean passes() {
        return shortCm() <= 0;
    }

    /** How much longer the edge would have to be; not above 0 where it passes. */
    public double shortCm() {
        return bodyCm + easeCm - edgeCm();
    }

    /** Slit, in whole cm, with which it passes. */
    public double slitWantedCm() {
        return slitCm + Math.ceil(Math.max(0, shortCm()) / 2);
    }

    public String words() {
        return "The " + name + " opens " + Words.fixed(edgeCm(), 1) + " cm, for " + Words.number(bodyCm) + " cm and "
                + Words.number(easeCm) + " cm of ease"
                + halfCmGivesCm
                        .map(cm ->
                                "; cutting away half a centimetre all round gives " + Words.fixed(cm, 1) + " cm more.")
                        .orElse(".");
    }
}
