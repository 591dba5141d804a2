package campcloth.cloth;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import campcloth.figure.Words;

/**
 * Layers of the cloth on a hard table, a flat weight on them, and how high the weight stands; after ISO 5084, which presses with
 * 1 kPa or less.
 *
 * @param stackMm height of all layers, 0.1 to 500 mm
 * @param layers how many, 1 to 100
 * @param massG mass of the weight, 1 to 20000 g
 * @param areaCm2 area on which it stands, 1 to 2500 cm2
 * @param readingStepMm smallest step of what it was read with, 0.001 to 5 mm
 */
public record LayerStack(double stackMm, int layers, double massG, double areaCm2, double readingStepMm) {

    private static final double GRAVITY_M_S2 = 9.80665;
    private static final Range STACK = new Range("stackMm", 0.1, 500, "mm");
    private static final Range LAYERS = new Range("layers", 1, 100, "layers");
    private static final Range MASS = new Range("massG", 1, 20_000, "g");
    private static final Range AREA = new Range("areaCm2", 1, 2500, "cm2");
    private static final Range STEP = new Range("readingStepMm", 0.001, 5, "mm");

    public LayerStack {
        STACK.check(stackMm);
        LAYERS.check(layers);
        MASS.check(massG);
        AREA.check(areaCm2);
        STEP.check(readingStepMm);
        if (stackMm < readingStepMm) {
            throw Refused.of("stackMm", "is less than can be read", "stack more layers, or read more finely");
        }
        if (!Property.THICKNESS_MM.range().contains(stackMm / layers)) {
            throw Refused.of(
                    "stackMm",
                    "makes " + Words.number(stackMm / layers) + " mm for one layer",
                    "give the height of all layers in mm; cloth is 0.03 to 60 mm thick");
        }
    }

    public double thicknessMm() {
        return stackMm / layers;
    }

    /** Pressure under a weight: mass times 9.80665 m/s2 over area. */
    static double pressureKPa(double massG, double areaCm2) {
        return massG / 1000 * GRAVITY_M_S2 / (areaCm2 / 10_000) / 1000;
    }

    public double pressureKPa() {
        return pressureKPa(massG, areaCm2);
    }
}
