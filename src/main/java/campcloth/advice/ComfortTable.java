package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.ClothColumns;
import campcloth.cloth.OutfitPart;
import campcloth.comfort.SpellComfort;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * What warmth, heat and breathability come to together, by thickness, air permeability and vapour resistance of the cloth: the
 * models run once on a lattice of the three, and what lies between mixed in proportion. How far that may be off is told beside
 * it: as far as the nodes in between are off a lattice with steps twice as wide, there and beside it, half as much again, and
 * what the models may leap by themselves, since they are interpolated, too. {@code ShortlistTest} holds that against the models.
 */
final class ComfortTable {

    private static final int NODES = 17;

    private static final int CELLS = NODES - 1;

    /** Of two by two by two cells. */
    private static final int BLOCKS = CELLS / 2;

    /** Beyond these nothing changes: {@code GarmentRegression} and {@code Outermost} of the room comfort. */
    private static final double THICKEST_MM = 3;

    private static final double TIGHTEST_MM_S = 20;
    private static final double MOST_OPEN_MM_S = 1000;

    private static final double HALF_AS_MUCH_AGAIN = 1.5;
    static final double ROUNDING = 1e-9;

    private static final double A_LITTLE = 0.05;

    /** Leaps of the models between their own lattices' cells: wettedness over the comfortable one, and clo of wet clothing. */
    private static final double HEAT_LEAPS = 0.01;

    private static final double WARMTH_LEAPS_CLO = 0.005;

    private final LogAxis thickness;
    private final LogAxis permeability;
    private final LogAxis vapour;
    private final double[] scores = new double[NODES * NODES * NODES];
    private final boolean[] cautions = new boolean[scores.length];
    private final double[] blockErrors = new double[BLOCKS * BLOCKS * BLOCKS];
    private final int[] blockCautions = new int[blockErrors.length];
    private final double[] errors = new double[CELLS * CELLS * CELLS];

    private double leap = ROUNDING;

    private ComfortTable(LogAxis thickness, LogAxis permeability, LogAxis vapour) {
        this.thickness = thickness;
        this.permeability = permeability;
        this.vapour = vapour;
    }

    /** For the cloths of the columns, at least one. */
    static ComfortTable of(Judging judging, Cloth any, ClothColumns columns) {
        boolean sewnIn = judging.question().outfit().parts().stream()
                .map(OutfitPart::kind)
                .anyMatch(OutfitPart.Kind::isSewnIn);
        ComfortTable table = new ComfortTable(
                axis(columns, columns::thicknessMm, 0.03, THICKEST_MM),
                axis(columns, columns::permeabilityMmS, TIGHTEST_MM_S, sewnIn ? 10_000 : MOST_OPEN_MM_S),
                axis(columns, columns::vapourResistanceM2PaW, 0.1, 1000));
        table.fill(judging, any);
        return table;
    }

    private static LogAxis axis(ClothColumns columns, IntToDoubleFunction figure, double least, double most) {
        double from = Double.POSITIVE_INFINITY;
        double to = 0;
        for (int row = 0; row < columns.rows(); row++) {
            if (columns.holds(row)) {
                from = Math.min(from, figure.applyAsDouble(row));
                to = Math.max(to, figure.applyAsDouble(row));
            }
        }
        return LogAxis.over(from, to, least, most, NODES);
    }

    private void fill(Judging judging, Cloth any) {
        long usual = known(judging, Bounds.sheet(any, 60, 0, 1000));
        boolean[] unlike = new boolean[scores.length];
        IntStream.range(0, scores.length).parallel().forEach(node -> {
            List<SpellComfort> spells = spells(judging, sheet(any, node));
            scores[node] = judging.comfortScore(spells);
            cautions[node] = Warnings.asksForCaution(spells, judging.bounds());
            unlike[node] = known(spells) != usual;
        });
        boolean anyUnlike = IntStream.range(0, unlike.length).anyMatch(node -> unlike[node]);
        IntStream.range(0, blockErrors.length).forEach(this::measure);
        leap = ROUNDING + (anyUnlike ? 100 * judging.weight(Criteria.HEAT) : 0);
        double margin = A_LITTLE
                + leap
                + judging.weight(Criteria.HEAT) * HEAT_LEAPS * Heat.steepness(judging.bounds())
                + judging.weight(Criteria.WARMTH) * WARMTH_LEAPS_CLO * Warmth.steepness(judging.bounds());
        IntStream.range(0, errors.length).forEach(cell -> errors[cell] = HALF_AS_MUCH_AGAIN * worst(cell) + margin);
    }

    /** Of the block of a cell and those beside the cell. */
    private double worst(int cell) {
        int i = cell / (CELLS * CELLS);
        int j = cell / CELLS % CELLS;
        int k = cell % CELLS;
        double worst = 0;
        for (int a = Math.max(0, i - 1) / 2; a <= Math.min(CELLS - 1, i + 1) / 2; a++) {
            for (int b = Math.max(0, j - 1) / 2; b <= Math.min(CELLS - 1, j + 1) / 2; b++) {
                for (int c = Math.max(0, k - 1) / 2; c <= Math.min(CELLS - 1, k + 1) / 2; c++) {
                    worst = Math.max(worst, blockErrors[(a * BLOCKS + b) * BLOCKS + c]);
                }
            }
        }
        return worst;
    }

    private Cloth sheet(Cloth any, int node) {
        return Bounds.sheet(
                any,
                thickness.at(node / (NODES * NODES)),
                permeability.at(node / NODES % NODES),
                vapour.at(node % NODES));
    }

    private static List<SpellComfort> spells(Judging judging, Cloth sheet) {
        return judging.comfort().of(sheet, judging.question().wear());
    }

    private static long known(Judging judging, Cloth sheet) {
        return known(spells(judging, sheet));
    }

    /** In which spells the model of heat holds; where it does not for a cloth alone, the score leaps. */
    private static long known(List<SpellComfort> spells) {
        long known = 0;
        for (SpellComfort spell : spells) {
            known = 2 * known + (spell.heat().wettednessAsked().inRange().isPresent() ? 1 : 0);
        }
        return known;
    }

    /** Of two by two by two cells the nodes in between against the eight corners. */
    private void measure(int block) {
        int i = 2 * (block / (BLOCKS * BLOCKS));
        int j = 2 * (block / BLOCKS % BLOCKS);
        int k = 2 * (block % BLOCKS);
        double worst = 0;
        int asking = 0;
        for (int di = 0; di <= 2; di++) {
            for (int dj = 0; dj <= 2; dj++) {
                for (int dk = 0; dk <= 2; dk++) {
                    int node = node(i + di, j + dj, k + dk);
                    asking += cautions[node] ? 1 : 0;
                    double coarse = mixed(i, j, k, 2, di / 2.0, dj / 2.0, dk / 2.0);
                    worst = Math.max(worst, Math.abs(coarse - scores[node]));
                }
            }
        }
        blockErrors[block] = worst;
        blockCautions[block] = asking;
    }

    private static int node(int i, int j, int k) {
        return (i * NODES + j) * NODES + k;
    }

    /** Between the corners of a cell that is some steps wide. */
    private double mixed(int i, int j, int k, int steps, double s, double t, double u) {
        return (1 - s) * mixed(i, j, k, steps, t, u) + s * mixed(i + steps, j, k, steps, t, u);
    }

    private double mixed(int i, int j, int k, int steps, double t, double u) {
        int at = node(i, j, k);
        int next = at + steps * NODES;
        double one = scores[at] + u * (scores[at + steps] - scores[at]);
        double other = scores[next] + u * (scores[next + steps] - scores[next]);
        return one + t * (other - one);
    }

    /** How far the models, run for the best figures alone, may be off what they come to with intervals. */
    double leap() {
        return leap;
    }

    /** Looks cloths up; for one thread. */
    final class Reader {

        private static final int ALL = 27;

        private double score;
        private double error;
        private int asking;

        void read(double thicknessMm, double permeabilityMmS, double vapourResistanceM2PaW) {
            double x = thickness.place(thicknessMm);
            double y = permeability.place(permeabilityMmS);
            double z = vapour.place(vapourResistanceM2PaW);
            int i = Math.min(NODES - 2, (int) x);
            int j = Math.min(NODES - 2, (int) y);
            int k = Math.min(NODES - 2, (int) z);
            int block = (i / 2 * BLOCKS + j / 2) * BLOCKS + k / 2;
            score = mixed(i, j, k, 1, x - i, y - j, z - k);
            error = errors[(i * CELLS + j) * CELLS + k];
            asking = blockCautions[block];
        }

        double score() {
            return score;
        }

        double error() {
            return error;
        }

        /** Whether the spells may let it pass without caution. */
        boolean mayPass() {
            return asking < ALL;
        }

        /** Whether they surely do. */
        boolean surelyPasses() {
            return asking == 0;
        }
    }
}
