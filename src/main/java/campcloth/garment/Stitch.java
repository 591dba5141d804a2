package campcloth.garment;

/**
 * Stitch types of ISO 4915 and the thread each takes, in lengths of thread a length of seam. With T the compressed thickness
 * of the seam, W its width and S the stitches a unit of length, all in the same unit:
 *
 * <ul>
 *   <li>101: 3 + 2 T S; 301: 2 + 2 T S; 401: 4 + 2 T S (published trade formulas, no named author);
 *   <li>504: two published forms, 5 + 4 S (W + T) and 3 + 4 W S + 4 T S; the first, which is 2 greater, is taken;
 *   <li>304, the zigzag lockstitch: needle and bobbin thread each run the diagonal sqrt(1 + (W S)^2), and both cross the
 *       seam once a stitch, 2 T S: derived from its geometry.
 * </ul>
 *
 * <p>{@code 301 with T = 0.01 inch and S = 10 a inch takes 2.2 inch of thread a inch of seam.} The usual flat ratios (common
 * practice, no source) come to more on thin cloth, so the larger of the two is used. Waste is not included.
 */
public enum Stitch {
    CHAIN_101("101", "single-thread chain stitch", 5) {
        @Override
        double formula(double thickness, double width, double stitches) {
            return 3 + 2 * thickness * stitches;
        }
    },
    LOCK_301("301", "lockstitch", 2.5) {
        @Override
        double formula(double thickness, double width, double stitches) {
            return 2 + 2 * thickness * stitches;
        }
    },
    ZIGZAG_304("304", "zigzag lockstitch", 5.5) {
        @Override
        double formula(double thickness, double width, double stitches) {
            return 2 * Math.hypot(1, width * stitches) + 2 * thickness * stitches;
        }
    },
    CHAIN_401("401", "two-thread chain stitch", 5.5) {
        @Override
        double formula(double thickness, double width, double stitches) {
            return 4 + 2 * thickness * stitches;
        }
    },
    OVEREDGE_504("504", "three-thread overedge stitch", 14) {
        @Override
        double formula(double thickness, double width, double stitches) {
            return 5 + 4 * stitches * (width + thickness);
        }
    };

    private final String number;
    private final String words;
    private final double usualRatio;

    Stitch(String number, String words, double usualRatio) {
        this.number = number;
        this.words = words;
        this.usualRatio = usualRatio;
    }

    /** Number in ISO 4915. */
    public String number() {
        return number;
    }

    public String words() {
        return words;
    }

    abstract double formula(double thickness, double width, double stitches);

    /** Thread a length of seam by the formula alone; the three arguments in one unit of length. */
    public double threadByFormula(double thickness, double width, double stitches) {
        return formula(thickness, width, stitches);
    }

    /** Thread a length of seam, the larger of formula and usual ratio; arguments in mm and stitches a mm. */
    double threadRatio(double thicknessMm, double widthMm, double stitchesPerMm) {
        return Math.max(usualRatio, formula(thicknessMm, widthMm, stitchesPerMm));
    }
}
