package campcloth.garment;

import campcloth.figure.Words;

/**
 * A round opening with a slit that a part of the body must pass: its edge is {@code pi d + 2 s}, for a circle {@code d} across
 * and a slit {@code s} long. {@code pi x 15 + 2 x 8 = 63.1 cm.}
 *
 * @param name which opening
 * @param acrossCm diameter of the circle, 0 for a slit alone
 * @param slitCm length of the slit, 0 without
 * @param bodyCm circumference of what must pass
 * @param easeCm what the opening must have over it (project choice)
 */
public record Opening(String name, double acrossCm, double slitCm, double bodyCm, double easeCm) {

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

    /** What the edge gains where the circle's edge is cut away by so much all round. */
    public static double widenedByCm(double allRoundCm) {
        return 2 * Math.PI * allRoundCm;
    }

    /** Slit, in whole cm, with which it passes. */
    public double slitWantedCm() {
        return slitCm + Math.ceil(Math.max(0, shortCm()) / 2);
    }

    public String words() {
        return "The " + name + " opens " + Words.fixed(edgeCm(), 1) + " cm, for " + Words.number(bodyCm) + " cm and "
                + Words.number(easeCm) + " cm of ease; cutting away half a centimetre all round gives "
                + Words.fixed(widenedByCm(0.5), 1) + " cm more.";
    }
}
