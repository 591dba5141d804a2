package campcloth.fire;

import campcloth.cloth.Fit;
import campcloth.fibre.FibreFamily;
import campcloth.figure.Words;
import campcloth.fire.FireThreat.Kind;
import campcloth.fire.model.HeatBalance;
import campcloth.fire.model.PointSource;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * How a fire threatens a cloth, one statement for each way that applies. What fat, gusts and sparks do is common practice, no
 * source; a flare-up is counted as twice the heat of the steady fire (project choice).
 */
final class FireThreats {

    private static final double FLARE = 2;

    /** Beyond this most sparks have fallen: common practice, no source. */
    private static final double MOST_SPARKS_M = 3;

    private static final String PRACTICE = " (Common practice, no source.)";

    private FireThreats() {}

    static List<FireThreat> of(WornCloth cloth, Exposure exposure, HeatOnCloth heat) {
        List<FireThreat> threats = new ArrayList<>();
        ExposureClass reach = exposure.reach();
        if (reach == ExposureClass.NONE) {
            return threats;
        }
        threats.add(new FireThreat(Kind.RADIANT_HEAT, radiantHeat(exposure, heat)));
        boolean swings = reach == ExposureClass.RADIANT && cloth.fit() == Fit.LOOSE;
        if (swings || reach.atLeast(ExposureClass.CONTACT)) {
            threats.add(new FireThreat(Kind.FLAME_CONTACT, contact(cloth, exposure)));
        }
        threats.add(new FireThreat(Kind.FLARE_UP, flareUp(exposure, heat)));
        threats.add(new FireThreat(Kind.SPARKS, sparks(cloth, exposure)));
        return threats;
    }

    private static String radiantHeat(Exposure exposure, HeatOnCloth heat) {
        if (heat.usual().isEmpty() || heat.strong().isEmpty()) {
            return exposure.inNearField() ? HeatOnCloth.NEAR_FIELD : HeatOnCloth.NO_DISTANCE;
        }
        RadiantWarming usual = heat.usual().get();
        RadiantWarming strong = heat.strong().get();
        String warms = "The steady fire sends " + Words.fixed(usual.fluxKwM2(), 2) + " to "
                + Words.fixed(strong.fluxKwM2(), 2) + " kW/m2 there. The cloth warms to "
                + span(usual.after1MinC(), strong.after1MinC()) + " degrees Celsius in a minute and settles at "
                + span(usual.steadyC(), strong.steadyC()) + ".";
        String skin = strong.skinHurtsAfterS()
                .map(s -> " Bare skin can hurt after " + Words.fixed(s, 0) + " s.")
                .orElse("");
        return warms + " " + heat.softening().map(s -> softens(s, strong)).orElse("Nothing in it softens.") + skin;
    }

    private static String softens(Softening softening, RadiantWarming strong) {
        String its = "Its " + softening.part() + " softens at " + Words.number(softening.clothC()) + " degrees Celsius";
        return strong.softensAfterS()
                .map(s -> its + ": it can come to that in " + Words.fixed(s, 0) + " s.")
                .orElseGet(() -> its + ", " + Words.fixed(softening.clothC() - strong.steadyC(), 0)
                        + " degrees more than steady heat brings it to.");
    }

    private static String span(double low, double high) {
        return Words.fixed(low, 0) + " to " + Words.fixed(high, 0);
    }

    private static String contact(WornCloth cloth, Exposure exposure) {
        String how;
        if (Exposure.handsAtTheFire(exposure.role())) {
            how = "Hands, sleeves and hems come to the flame there.";
        } else if (exposure.reach().atLeast(ExposureClass.CONTACT)) {
            how = "The place is so near that flames can reach the cloth.";
        } else {
            how = "The cloth hangs loose: a sleeve or hem reaches the flame when the wearer bends or passes.";
        }
        return how + " " + inFlame(cloth)
                + (cloth.fit() == Fit.LOOSE ? " Tie back sleeves and hems." : " Keep sleeves rolled up.");
    }

    private static String inFlame(WornCloth cloth) {
        String melting = melting(cloth);
        if (!melting.isEmpty()) {
            return "In a flame its " + melting + (unnamed(cloth) ? " may melt" : " melts")
                    + (Behaviours.goesOutByItself(cloth) ? " and sticks to skin." : ", sticks to skin and burns on.");
        }
        String plant = FibreWords.named(cloth.blend(), family -> family == FibreFamily.CELLULOSIC);
        if (!plant.isEmpty()) {
            return "In a flame its " + plant + " catches within seconds, the lighter the sooner ("
                    + Words.number(cloth.weightGsm()) + " g/m2), and burns on when the flame is gone.";
        }
        return "In a flame it chars" + (cloth.canFlash() || cloth.isOpen() ? ", and its face can flash over" : "")
                + "; thin or loose parts of it can burn.";
    }

    private static String flareUp(Exposure exposure, HeatOnCloth heat) {
        String cause = switch (exposure.role()) {
            case COOKING -> "Fat that drips into the fire flares up.";
            case TENDING -> "Fresh wood flares up, liquid fuel bursts into flame: never pour it on a fire.";
            case CARRYING -> "A gust turns the flame onto the carrier, spilled lamp fuel spreads it.";
            case NONE, PASSING, SEATED -> "A gust bends the flames over, a log that falls throws them up.";
        };
        return cause + PRACTICE + " " + flareHeat(exposure, heat);
    }

    private static String flareHeat(Exposure exposure, HeatOnCloth heat) {
        if (heat.strong().isEmpty()) {
            return "The heat is then greater than any estimate for a steady fire.";
        }
        if (exposure.distanceOrPresumedM() < PointSource.nearFieldM(FLARE * exposure.fireKwOrPresumed())) {
            return "With twice the heat for a while its flames can reach the cloth there.";
        }
        double flux = FLARE * heat.strong().get().fluxKwM2();
        double steadyC = HeatBalance.ONE_SIDE.steadyC(flux);
        String twice = "Twice the heat for a while would be up to " + Words.fixed(flux, 2)
                + " kW/m2 there, and the cloth up to " + Words.fixed(steadyC, 0) + " degrees Celsius";
        return twice
                + heat.softening()
                        .filter(softening -> softening.clothC() <= steadyC)
                        .map(softening -> ": its " + softening.part() + " softens.")
                        .orElse(".");
    }

    private static String sparks(WornCloth cloth, Exposure exposure) {
        List<String> parts = new ArrayList<>();
        String melting = melting(cloth);
        if (!melting.isEmpty()) {
            parts.add("A spark " + (unnamed(cloth) ? "may melt" : "melts") + " a hole through its " + melting
                    + " at once.");
        }
        String plant = named(cloth, family -> family == FibreFamily.CELLULOSIC);
        if (!plant.isEmpty()) {
            parts.add(
                    cloth.isRaised()
                            ? "Its raised face catches sparks: " + plant + " can smoulder on and flame up in wind."
                            : "A spark chars a hole into its " + plant + " that can smoulder on: look it over after.");
        }
        String animal = named(cloth, family -> family == FibreFamily.PROTEIN);
        if (!animal.isEmpty()) {
            parts.add("Its " + animal + " chars under a spark and mostly goes out.");
        }
        if (parts.isEmpty()) {
            parts.add("Sparks mark it; what lies on or under it can still catch.");
        }
        parts.add(
                exposure.distanceM().filter(m -> m > MOST_SPARKS_M).isPresent()
                        ? "Most fall nearer; downwind some fly so far."
                        : "Stay upwind of the fire.");
        return String.join(" ", parts) + PRACTICE;
    }

    private static String melting(WornCloth cloth) {
        String fibres = named(cloth, FibreFamily::countsAsMeltable);
        return fibres.isEmpty() && cloth.hasFilm() ? "film or wax" : fibres;
    }

    private static boolean unnamed(WornCloth cloth) {
        return cloth.blend().percentOf(FibreFamily.UNNAMED) > 0;
    }

    private static String named(WornCloth cloth, Predicate<FibreFamily> family) {
        return FibreWords.named(cloth.blend(), family);
    }
}
