package campcloth.fire;

import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.event.FireKind;
import campcloth.event.FireRole;
import campcloth.fibre.FibreFamily;
import campcloth.figure.Words;
import campcloth.fire.FireReason.Factor;
import campcloth.fire.model.HazardMatrix;
import campcloth.fire.model.HeatBalance;
import campcloth.fire.model.SkinTimes;
import campcloth.fire.model.Spread;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Puts into sentences what a grade comes from: the place at the fire first, then the causes, the strongest first. A cause is as
 * strong as the points or classes it brings; where two bring as many, what melts stands before the mass, the mass before the rest. What
 * speaks for a cloth, great mass or no fibre that burns readily, counts as one point.
 */
final class FireReasons {

    private FireReasons() {}

    /** A reason and how much it counts. */
    private record Cause(double strength, FireReason reason) {

        Cause(double strength, Factor factor, String sentence) {
            this(strength, new FireReason(factor, sentence));
        }
    }

    static List<FireReason> of(WornCloth cloth, Exposure exposure, double melt) {
        List<Cause> causes = new ArrayList<>();
        ofTheFibres(cloth, HazardMatrix.axisClass(melt), causes);
        ofTheMake(cloth, causes);
        Behaviours.of(cloth).forEach(b -> causes.add(new Cause(b.strength(), Factor.BEHAVIOUR, b.sentence())));
        Treated.sentence(cloth, exposure.reach()).ifPresent(s -> causes.add(new Cause(0.95, Factor.TREATMENT, s)));
        List<FireReason> reasons = new ArrayList<>();
        if (exposure.role() == FireRole.NONE) {
            reasons.add(new FireReason(Factor.EXPOSURE, "There is no open fire here, so there is nothing to grade."));
        } else {
            reasons.add(new FireReason(Factor.EXPOSURE, place(exposure)));
            boolean unbearable = exposure.reach() == ExposureClass.UNBEARABLE;
            causes.add(new Cause(unbearable ? 9 : 0, Factor.HEAT, heat(exposure)));
        }
        causes.stream()
                .sorted(Comparator.comparingDouble(Cause::strength).reversed())
                .forEach(cause -> reasons.add(cause.reason));
        return reasons;
    }

    private static void ofTheFibres(WornCloth cloth, int meltClass, List<Cause> causes) {
        double fuel = cloth.fuelPercent();
        causes.add(new Cause(fuel > 0 ? Spread.fuelPoints(fuel) + 0.2 : 1.2, Factor.FIBRE, burns(cloth)));
        double unnamed = cloth.blend().percentOf(FibreFamily.UNNAMED);
        if (unnamed > 0) {
            String counted = Words.number(unnamed) + " % is not named: counted as the worst fibre it could be.";
            causes.add(new Cause(meltClass + 0.6, Factor.UNNAMED, counted));
        }
        if (cloth.blend().meltablePercent() > 0) {
            causes.add(new Cause(meltClass + 0.5, Factor.MELT, melts(cloth)));
        }
        if (cloth.hasFilm()) {
            String film = "It is " + cloth.finish().words() + ": " + Words.number(WornCloth.FILM_PERCENT)
                    + " % of its mass is counted as film or wax that melts and burns.";
            causes.add(new Cause(meltClass + 0.4, Factor.FILM, film));
        }
        if (cloth.meltablePercent() >= Spread.SCAFFOLD_PERCENT) {
            causes.add(new Cause(1.05, Factor.BLEND, held(cloth)));
        }
    }

    private static void ofTheMake(WornCloth cloth, List<Cause> causes) {
        int light = Spread.weightPoints(cloth.weightGsm());
        causes.add(new Cause(Math.max(light, 1) + 0.3, Factor.WEIGHT, weight(cloth.weight())));
        if (cloth.canFlash()) {
            String flash = "Its face is raised: a flash can run over the fibre ends.";
            causes.add(new Cause(1.1, Factor.SURFACE, flash));
        } else if (cloth.isOpen()) {
            causes.add(new Cause(1.1, Factor.SURFACE, "Its weave is open: air feeds a flame through it."));
        } else if (cloth.isRaised()) {
            causes.add(new Cause(0.1, Factor.SURFACE, "Its face is milled dense: no loose fibre ends to flash over."));
        }
        if (cloth.fit() == Fit.LOOSE) {
            String loose = "It hangs loose: it reaches the flame sooner and draws air up behind it.";
            causes.add(new Cause(Spread.loosePoints(cloth.weightGsm()) + 0.15, Factor.FIT, loose));
        }
        if (cloth.meltablePercent() > 0 && cloth.layer() == Layer.SKIN) {
            causes.add(new Cause(1.25, Factor.LAYER, "It touches the skin, where melted fibre sticks and burns on."));
        } else if (cloth.meltablePercent() > 0 && cloth.layer() == Layer.MIDDLE) {
            String under = "It lies under another layer: it can melt there and is slow to take off.";
            causes.add(new Cause(1.25, Factor.LAYER, under));
        }
    }

    static String weight(ClothWeight weight) {
        double graded = weight.gradedGsm();
        String grams = weight.isWellKnown()
                ? "At " + Words.number(graded) + " g/m2"
                : "Given as " + Words.number(weight.givenGsm()) + " g/m2 but not well known, counted as "
                        + Words.number(graded) + " g/m2,";
        return grams
                + switch (Spread.weightPoints(graded)) {
                    case 0 -> " it is heavy: heavy cloth catches slowly.";
                    case 1 -> " it is of middle weight: lighter cloth catches faster.";
                    case 2 -> " it is light: light cloth catches and burns fast.";
                    default -> " it is as light as gauze: so light a cloth flares, whatever its fibre.";
                };
    }

    private static String burns(WornCloth cloth) {
        double fuel = cloth.fuelPercent();
        return fuel > 0
                ? Words.number(fuel) + " % of its mass " + burnsOrMay(cloth) + " readily."
                : "None of its fibres burns readily" + FibreWords.charring(cloth.blend()) + ".";
    }

    /** Whether it is known to burn, or counted so because it is not named or melts. */
    static String burnsOrMay(WornCloth cloth) {
        if (Behaviours.goesOutByItself(cloth)) {
            return "is counted as what burns";
        }
        return cloth.blend().percentOf(FibreFamily.UNNAMED) > 0 ? "burns, or may burn," : "burns";
    }

    static String melts(WornCloth cloth) {
        boolean unnamed = cloth.blend().percentOf(FibreFamily.UNNAMED) > 0;
        return Words.number(cloth.blend().meltablePercent()) + " % of its fibre " + (unnamed ? "may melt" : "melts")
                + " (" + FibreWords.named(cloth.blend(), FibreFamily::countsAsMeltable) + "): "
                + (Behaviours.goesOutByItself(cloth)
                        ? "softened fibre sticks to skin."
                        : "melted fibre sticks to skin and burns on.");
    }

    /** Why what melts does not simply drip away. */
    static String held(WornCloth cloth) {
        String holder = FibreWords.named(cloth.blend(), f -> f == FibreFamily.CELLULOSIC);
        if (holder.isEmpty()) {
            return "It may shrink from a flame, but a cotton thread, lining or layer holds the melt in it.";
        }
        boolean one = FibreWords.count(cloth.blend(), f -> f == FibreFamily.CELLULOSIC) == 1;
        String melting = cloth.blend().meltablePercent() > 0
                ? FibreWords.named(cloth.blend(), FibreFamily::countsAsMeltable)
                : "film or wax";
        return "Charred " + holder + (one ? " holds" : " hold") + " the molten " + melting
                + " like a wick: such cloth can burn faster than either part alone.";
    }

    /** What the wearer does, where, and at how large a fire. */
    static String place(Exposure exposure) {
        String where = exposure.distanceM()
                .map(m -> Words.number(m) + " m from its centre")
                .orElseGet(() -> Exposure.handsAtTheFire(exposure.role())
                        ? "at an unknown distance, presumed at the flame"
                        : "at an unknown distance, presumed " + Words.number(exposure.distanceOrPresumedM())
                                + " m from its centre");
        String size = size(exposure);
        return "The wearer is " + role(exposure.role()) + " " + size + ", " + where + ".";
    }

    private static String size(Exposure exposure) {
        String kw = Words.number(exposure.fireKwOrPresumed()) + " kW";
        String named = exposure.kind().map(FireKind::words).orElse("a fire");
        if (exposure.fireKw().isPresent()) {
            return named + " of " + kw;
        }
        return exposure.kind().isPresent() ? named + ", counted as " + kw : named + " of unknown size, presumed " + kw;
    }

    private static String heat(Exposure exposure) {
        if (exposure.fluxKwM2().isEmpty()) {
            return exposure.inNearField()
                    ? "So near, flames can touch the cloth: no formula for radiant heat holds there."
                    : "Without a distance no radiant heat can be given.";
        }
        double flux = exposure.fluxKwM2().get();
        String pain = SkinTimes.painS(flux)
                .map(s -> " Bare skin hurts after about " + Words.fixed(s, 0) + " s.")
                .orElse("");
        return "Radiant heat there is about " + Words.fixed(flux, 2) + " kW/m2; cloth in it settles near "
                + Words.fixed(HeatBalance.ONE_SIDE.steadyC(flux), 0) + " degrees Celsius." + pain;
    }

    private static String role(FireRole role) {
        return switch (role) {
            case NONE -> "away from";
            case PASSING -> "passing";
            case SEATED -> "seated at";
            case COOKING -> "cooking at";
            case TENDING -> "tending";
            case CARRYING -> "carrying a flame near";
        };
    }
}
