package campcloth.fire;

import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.fibre.FibreFamily;
import campcloth.figure.Words;
import campcloth.fire.FireWarning.Code;
import campcloth.fire.FireWarning.Severity;
import campcloth.fire.model.HazardMatrix;
import campcloth.fire.model.Melt;
import campcloth.fire.model.Spread;
import java.util.ArrayList;
import java.util.List;

/** What to tell the wearer of a cloth in an exposure; nothing where there is no fire. */
public final class FireWarnings {

    /** Classes of spread from which a warning is given: project choice. */
    private static final int QUICK = 3;

    /** The one fibre that melts and yet is sold for resisting flame. */
    private static final String MODACRYLIC = "modacrylic";

    private static final String DECLARED =
            " Modacrylic is counted as melting; a maker's current declaration of flame resistance may change what the fire"
                    + " marshal says: ask.";

    private static final String SLOWER = " Heavier, plain, close-fitting cloth rich in wool burns more slowly.";

    private FireWarnings() {}

    public static List<FireWarning> of(WornCloth cloth, Exposure exposure) {
        return of(cloth, exposure, FireGrading.grade(cloth, exposure));
    }

    static List<FireWarning> of(WornCloth cloth, Exposure exposure, FireHazard hazard) {
        List<FireWarning> warnings = new ArrayList<>();
        if (hazard.reach() == ExposureClass.NONE) {
            return warnings;
        }
        if (hazard.meltWarning() != MeltWarning.NONE) {
            ofMelting(cloth, exposure, hazard, warnings);
        }
        if (HazardMatrix.axisClass(hazard.spread()) >= QUICK) {
            warnings.add(new FireWarning(Code.SPREAD, severity(hazard.grade()), spread(cloth)));
        }
        if (hazard.reach() == ExposureClass.UNBEARABLE) {
            warnings.add(new FireWarning(
                    Code.HEAT,
                    Severity.STOP,
                    "Radiant heat there hurts bare skin within 5 s. No clothing is meant for that place: step back."));
        }
        ofPresumptions(cloth, exposure, warnings);
        return warnings;
    }

    private static void ofMelting(WornCloth cloth, Exposure exposure, FireHazard hazard, List<FireWarning> warnings) {
        Severity severity = severity(hazard.meltWarning());
        warnings.add(new FireWarning(Code.MELT, severity, melting(cloth, exposure, hazard)));
        if (hazard.meltablePercent() <= Melt.TRACE_PERCENT) {
            warnings.add(new FireWarning(Code.LABEL, Severity.NOTE, FireCautions.LABEL_TOLERANCE));
        }
        if (cloth.layer() != Layer.OUTER) {
            String where = cloth.layer() == Layer.SKIN ? "It touches the skin." : "It lies under another layer.";
            warnings.add(new FireWarning(
                    cloth.layer() == Layer.SKIN ? Code.MELT_ON_SKIN : Code.LAYER,
                    severity,
                    where
                            + " Cloth that melts can melt there under a wool coat too. Choose a cloth that does not melt for "
                            + (cloth.layer() == Layer.SKIN
                                    ? "the layer on the skin."
                                    : "every layer under the outer one.")));
        }
    }

    private static String melting(WornCloth cloth, Exposure exposure, FireHazard hazard) {
        String what = cloth.blend().meltablePercent() > 0
                ? FireReasons.melts(cloth)
                : "Its film or wax melts and feeds a flame.";
        String held = hazard.meltablePercent() >= Spread.SCAFFOLD_PERCENT ? " " + FireReasons.held(cloth) : "";
        String advice = switch (hazard.meltWarning()) {
            case STOP -> " Do not wear it where it can touch flame.";
            case WARN -> careful(cloth, exposure, hazard);
            case NOTE, NONE -> " Sparks burn holes in it. Do not go nearer in it.";
        };
        String declared = cloth.blend().percentOf(MODACRYLIC) > 0 ? DECLARED : "";
        return what + held + " " + FireReasons.place(exposure) + advice + declared;
    }

    private static String careful(WornCloth cloth, Exposure exposure, FireHazard hazard) {
        if (hazard.reach() == ExposureClass.CONTACT) {
            return " Choose another cloth, or keep it out of reach of the flame.";
        }
        double keepM = hazard.standBack().roundedUpM();
        if (exposure.distanceM().filter(m -> m >= hazard.standBackM()).isPresent()) {
            return " Choose another cloth: steady heat does not soften it there, but an ember can, or a flame that reaches it.";
        }
        FireHazard back = FireGrading.grade(cloth, exposure.at(keepM));
        boolean enough = back.meltWarning() != MeltWarning.WARN && back.grade().compareTo(FireGrade.HIGH) < 0;
        String keep = Words.fixed(keepM, 1) + " m away (an estimate)";
        return enough
                ? " Choose another cloth, or keep at least " + keep + "."
                : " Choose another cloth. In this one keep at least " + keep
                        + "; that alone does not better the grade enough.";
    }

    private static String spread(WornCloth cloth) {
        List<String> causes = new ArrayList<>();
        String grams = Words.number(cloth.weightGsm()) + " g/m2";
        if (cloth.weightGsm() < Spread.LIGHT_GSM) {
            causes.add("light (" + (cloth.weight().isWellKnown() ? grams : "counted as " + grams) + ")");
        }
        if (cloth.canFlash()) {
            causes.add("raised on its face");
        }
        if (cloth.isOpen()) {
            causes.add("openly woven");
        }
        if (cloth.fit() == Fit.LOOSE) {
            causes.add("loose");
        }
        String make = FibreWords.joined(causes, "and");
        double fuel = cloth.fuelPercent();
        if (fuel > 0) {
            return "Flame can run over it: " + Words.number(fuel) + " % of its mass "
                    + FireReasons.burnsOrMay(cloth) + " readily."
                    + (make.isEmpty() ? "" : " It is " + make + ".") + SLOWER;
        }
        return "Its fibres do not burn readily" + FibreWords.charring(cloth.blend()) + ". But it is " + make
                + ": such cloth can still catch and burn." + SLOWER;
    }

    private static void ofPresumptions(WornCloth cloth, Exposure exposure, List<FireWarning> warnings) {
        List<String> presumed = new ArrayList<>();
        double unnamed = cloth.blend().percentOf(FibreFamily.UNNAMED);
        if (unnamed > 0) {
            presumed.add(
                    "We assumed the worst likely cloth: " + Words.number(unnamed) + " % of its fibre is not named.");
        }
        if (exposure.distanceM().isEmpty() || exposure.fireKw().isEmpty()) {
            presumed.add("We assumed what was not stated. " + FireReasons.place(exposure));
        }
        if (!presumed.isEmpty()) {
            warnings.add(new FireWarning(Code.ASSUMED, Severity.NOTE, String.join(" ", presumed)));
        }
    }

    private static Severity severity(MeltWarning warning) {
        return switch (warning) {
            case NONE, NOTE -> Severity.NOTE;
            case WARN -> Severity.CAUTION;
            case STOP -> Severity.STOP;
        };
    }

    private static Severity severity(FireGrade grade) {
        return switch (grade) {
            case LOW, RAISED -> Severity.NOTE;
            case HIGH -> Severity.CAUTION;
            case SEVERE -> Severity.STOP;
        };
    }
}
