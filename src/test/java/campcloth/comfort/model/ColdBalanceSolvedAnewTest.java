package campcloth.comfort.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.comfort.Reading;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * The equations of ISO 11079:2007 written out a second time and solved by nothing cleverer than walking along the unknown in
 * small steps until the balance changes its sign: generated cases, compared with the bisection of the model.
 */
class ColdBalanceSolvedAnewTest {

    private static final long SEED = 20_261_101L;
    private static final int CASES = 2_000;
    private static final double STEP_CLO = 0.005;

    private final SplittableRandom random = new SplittableRandom(SEED);

    @Test
    void theRequiredInsulationIsWhereTheBalanceTurns() {
        int solved = 0;
        for (int i = 0; i < CASES; i++) {
            Case at = drawn();
            double turning = firstTurn(STEP_CLO, 18, clo -> at.balance(clo * 0.155, 0) >= 0);
            Reading model = RequiredInsulation.clo(at.air(), at.metabolic, at.motion(), at.criterion);
            if (turning > 0 && turning < 18) {
                solved++;
                assertThat(model.inRange().orElseThrow().value())
                        .as("seed %d, case %d: %s", SEED, i, at)
                        .isCloseTo(turning, within(0.05));
            }
        }
        assertThat(solved).isGreaterThan(CASES / 2);
    }

    @Test
    void theDurationLimitIsWhereTheHeatDebtTurns() {
        int solved = 0;
        for (int i = 0; i < CASES; i++) {
            Case at = drawn();
            double insulation = 0.155 * from(0.2, 4);
            double debt = firstTurn(0.02, 400, lost -> at.balance(insulation, -lost) >= 0);
            double hours = model(at, insulation);
            String which = "seed " + SEED + ", case " + i + ": " + at + ", " + insulation;
            if (debt <= 5) {
                assertThat(hours).as(which).isCloseTo(8, within(0.05));
            } else if (debt < 400) {
                solved++;
                assertThat(hours).as(which).isCloseTo(40 / debt, within(0.04));
            }
        }
        assertThat(solved).isGreaterThan(CASES / 4);
    }

    private static double model(Case at, double insulation) {
        return DurationLimit.hours(at.air(), at.metabolic, at.motion(), at.criterion, insulation)
                .inRange()
                .orElseThrow()
                .value();
    }

    private interface Turned {
        boolean at(double x);
    }

    private static double firstTurn(double step, double most, Turned turned) {
        double x = 0;
        while (x < most && !turned.at(x)) {
            x += step;
        }
        return x;
    }

    private record Case(
            double metabolic, double airC, double radiantC, double speed, double rh, ColdCriterion criterion) {

        Air air() {
            return new Air(airC, radiantC, speed, rh);
        }

        Motion motion() {
            return Motion.conditioned(speed, 0, metabolic);
        }

        /** M - E - H_res - R - C - S for an insulation of the clothing, m2 K/W, and a storage S, W/m2. */
        double balance(double i, double s) {
            double v = Math.max(0.4, speed);
            double w = Math.min(1.2, 0.0052 * (metabolic - 58));
            double ia = 0.092 * Math.exp(-0.15 * v - 0.22 * w) - 0.0045;
            boolean minimal = criterion == ColdCriterion.MINIMAL;
            double tsk = minimal ? 33.34 - 0.0354 * metabolic : 35.7 - 0.0285 * metabolic;
            double wet = minimal ? 0.06 : 0.001 * metabolic;
            double pa = rh / 100 * saturation(airC);
            double tex = 29 + 0.2 * airC;
            double breath = 0.0173 * metabolic * (saturation(tex) - pa) + 0.0014 * metabolic * (tex - airC);
            double e = wet * (saturation(tsk) - pa) / (0.06 / 0.38 * (ia + i));
            double tcl = tsk - i * (metabolic - e - breath - s);
            double fcl = 1 + 1.197 * i;
            double gap = tcl - radiantC;
            double hr = 5.67e-8 * 0.95 * 0.77 * (Math.pow(tcl + 273, 4) - Math.pow(radiantC + 273, 4)) / gap;
            double hc = 1 / ia - hr;
            return metabolic - e - breath - fcl * hr * gap - fcl * hc * (tcl - airC) - s;
        }

        private static double saturation(double t) {
            return 0.1333 * Math.exp(18.6686 - 4030.183 / (t + 235));
        }
    }

    private Case drawn() {
        double airC = from(-40, 10);
        return new Case(
                from(58, 400),
                airC,
                airC + from(0, 25),
                from(0, 18),
                from(0, 100),
                ColdCriterion.values()[random.nextInt(2)]);
    }

    private double from(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }
}
