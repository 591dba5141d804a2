package campcloth.cloth.swatch;

import campcloth.cloth.Property;
import campcloth.cloth.Swatch;
import campcloth.cloth.WindTest;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Range;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Air permeability beside a cloth of which it is known. The same volume leaves through the same opening under the same pressure, so
 * the flows are to each other as the times turned round; where the flow is laminar (Darcy), so are the permeabilities at any
 * pressure.
 *
 * <p>It need not be laminar: flow goes as pressure to a power between 1/2 (holes) and 1 (Darcy). From the pressure in the bag to
 * the 100 Pa of the figure two cloths can part by {@code (p / 100 Pa)} to the power 1/2: by no more than {@value #FACTOR} for 25
 * to 400 Pa. The interval carries that factor each way, the reference's interval, and the times' own. Outside these pressures,
 * or beside a cloth that nobody measured or declared, the result is a note. Not ISO 9237 and no claim of windproofness.
 */
final class WindByReference {

    private static final double FACTOR = 2;
    private static final Range PRESSURE_PA = new Range("pressure", 25, 400, "Pa");
    /** A watch started and stopped by hand; project choice. */
    private static final double BY_HAND_S = 0.5;

    private WindByReference() {}

    static double ratio(WindTest wind) {
        return Spread.of(wind.referenceSeconds()).mean()
                / Spread.of(wind.seconds()).mean();
    }

    static Optional<Figure> figure(WindTest wind, Swatch swatch) {
        double value = wind.reference().value() * ratio(wind);
        if (whyNone(wind).isPresent()) {
            return Optional.empty();
        }
        double least = ratioAt(wind, -1) * wind.reference().low() / FACTOR;
        double most = ratioAt(wind, 1) * wind.reference().high() * FACTOR;
        return Optional.of(MeasuredFigure.of(
                Property.AIR_PERMEABILITY_MM_S,
                value,
                least,
                most,
                swatch,
                "bag emptied beside " + Words.shortened(wind.referenceName())));
    }

    /** The ratio with both times at the end of their interval that makes it lowest (-1) or highest (1). */
    private static double ratioAt(WindTest wind, int end) {
        return time(wind.referenceSeconds(), end) / time(wind.seconds(), -end);
    }

    private static double time(List<Double> seconds, int end) {
        Spread spread = Spread.of(seconds);
        return Math.max(BY_HAND_S, spread.mean() + end * spread.halfWidth(BY_HAND_S));
    }

    private static Optional<String> whyNone(WindTest wind) {
        if (!PRESSURE_PA.contains(wind.pressurePa())) {
            return Optional.of("the bag stands under " + Words.number(wind.pressurePa())
                    + " Pa, and only from 25 to 400 Pa can the times be carried to the 100 Pa of the figure; take another"
                    + " weight");
        }
        if (Basis.DECLARED.beats(wind.reference().basis())) {
            return Optional.of("nobody measured or declared the air permeability of the cloth beside it; take one of"
                    + " which it is known");
        }
        if (!Property.AIR_PERMEABILITY_MM_S.range().contains(wind.reference().value() * ratio(wind))) {
            return Optional.of("it would lie above what such a figure can say");
        }
        return Optional.empty();
    }

    static List<String> notes(WindTest wind) {
        List<String> notes = new ArrayList<>();
        notes.add("Air goes through it " + Words.number(ratio(wind)) + " times as fast as through "
                + Words.shortened(wind.referenceName()) + ".");
        whyNone(wind)
                .ifPresentOrElse(
                        because -> notes.add("That makes no figure: " + because + "."),
                        () -> notes.add(
                                "The interval of the air permeability reaches a factor of " + Words.number(FACTOR)
                                        + " beyond the times and beyond the other cloth's own interval, for the air need not"
                                        + " flow through both in the same way. A test beside another cloth, not a laboratory's."));
        return notes;
    }
}
