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
            warnings.add(
                    new FireWarning(
                            Code.LAYER,
                            severity,
                            where
                                    + " Cloth that melts can melt there under a wool coat too. Wear wool, linen or cotton beneath."));
        }
    }

    private static String melting(WornCloth cloth, Exposure exposure, FireHazard hazard) {
        String what = cloth.blend().meltablePercent() > 0
                ? FireReasons.melts(cloth)
                : "Its film or wax melts and feeds a flame.";
        String held = hazard.meltablePercent() >= Spread.SCAFFOLD_PERCENT ? " " + FireReasons.held(cloth) : "";
        String advice = switch (hazard.meltWarning()) {
            case STOP -> " Do not wear it where it can touch flame.";
            case WARN -> careful(hazard);
            case NOTE, NONE -> " Sparks burn holes in it. Do not go nearer in it.";
        };
        return what + held + " " + FireReasons.place(exposure) + advice;
    }

    private static String careful(FireHazard hazard) {
        return hazard.reach() == ExposureClass.CONTACT
                ? " Choose another cloth, or keep it out of reach of the flame."
                : " Choose another cloth, or keep at least " + Words.fixed(hazard.standBackM(), 1)
                        + " m away (estimate for a steady fire).";
    }

    private static String spread(WornCloth cloth) {
        List<String> causes = new ArrayList<>();
        if (cloth.weightGsm() < Spread.LIGHT_GSM) {
            causes.add("light (" + Words.number(cloth.weightGsm()) + " g/m2)");
        }
        if (cloth.isRaised()) {
            causes.add("raised");
        }
        if (cloth.isOpen()) {
            causes.add("openly woven");
        }
        if (cloth.fit() == Fit.LOOSE) {
            causes.add("loose");
        }
        String why = causes.isEmpty() ? "" : " It is " + String.join(", ", causes) + ".";
        return "Flame can run over it: " + Words.number(cloth.fuelPercent())
                + " % of its mass burns readily, and it weighs " + Words.number(cloth.weightGsm()) + " g/m2." + why
                + " Heavier, plain, close-fitting cloth rich in wool burns more slowly.";
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
