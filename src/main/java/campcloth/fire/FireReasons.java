package campcloth.fire;

import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.event.FireRole;
import campcloth.fibre.Blend;
import campcloth.fibre.FibreFamily;
import campcloth.figure.Words;
import campcloth.fire.FireReason.Factor;
import campcloth.fire.model.SkinTimes;
import campcloth.fire.model.Spread;
import campcloth.fire.model.SteadyCloth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Puts into sentences what a grade comes from. */
final class FireReasons {

    private FireReasons() {}

    static List<FireReason> of(WornCloth cloth, Exposure exposure) {
        List<FireReason> reasons = new ArrayList<>();
        ofTheFibres(cloth, reasons);
        ofTheMake(cloth, reasons);
        if (exposure.role() == FireRole.NONE) {
            reasons.add(new FireReason(Factor.EXPOSURE, "There is no open fire here, so there is nothing to grade."));
        } else {
            reasons.add(new FireReason(Factor.EXPOSURE, place(exposure)));
            reasons.add(new FireReason(Factor.HEAT, heat(exposure)));
        }
        return reasons;
    }

    private static void ofTheFibres(WornCloth cloth, List<FireReason> reasons) {
        double fuel = cloth.fuelPercent();
        reasons.add(new FireReason(
                Factor.FIBRE,
                fuel > 0
                        ? Words.number(fuel) + " % of its mass burns readily."
                        : "None of its fibres burns readily: " + named(cloth.blend(), f -> true)
                                + " chars and burns slowly."));
        if (cloth.blend().meltablePercent() > 0) {
            reasons.add(new FireReason(Factor.MELT, melts(cloth)));
        }
        if (cloth.meltablePercent() >= Spread.SCAFFOLD_PERCENT) {
            reasons.add(new FireReason(Factor.BLEND, held(cloth)));
        }
        double unnamed = cloth.blend().percentOf(FibreFamily.UNNAMED);
        if (unnamed > 0) {
            reasons.add(new FireReason(
                    Factor.UNNAMED,
                    Words.number(unnamed)
                            + " % is not named on the label: it is counted as the worst fibre it could be."));
        }
        if (cloth.hasFilm()) {
            reasons.add(new FireReason(
                    Factor.FILM,
                    "It is " + cloth.finish().words() + ": that counts as " + Words.number(WornCloth.FILM_PERCENT)
                            + " % of its mass that melts and burns."));
        }
    }

    private static void ofTheMake(WornCloth cloth, List<FireReason> reasons) {
        reasons.add(new FireReason(Factor.WEIGHT, weight(cloth.weightGsm())));
        if (cloth.isRaised()) {
            reasons.add(new FireReason(
                    Factor.SURFACE,
                    "Its surface is raised: a flash can run over the fibre ends before the base burns."));
        } else if (cloth.isOpen()) {
            reasons.add(new FireReason(Factor.SURFACE, "Its weave is open: air feeds a flame through it."));
        }
        if (cloth.fit() == Fit.LOOSE) {
            reasons.add(new FireReason(
                    Factor.FIT, "It hangs loose: it reaches the flame sooner and draws air up behind it."));
        }
        if (cloth.meltablePercent() > 0 && cloth.layer() == Layer.SKIN) {
            reasons.add(new FireReason(
                    Factor.LAYER, "It touches the skin, where melted fibre sticks and goes on burning."));
        } else if (cloth.meltablePercent() > 0 && cloth.layer() == Layer.MIDDLE) {
            reasons.add(new FireReason(
                    Factor.LAYER, "It lies under another layer: it can melt there and is slow to take off."));
        }
    }

    static String weight(double weightGsm) {
        String grams = Words.number(weightGsm) + " g/m2";
        if (weightGsm >= Spread.HEAVY_GSM) {
            return "At " + grams + " it is heavy: heavy cloth catches slowly.";
        }
        return weightGsm >= Spread.LIGHT_GSM
                ? "At " + grams
                        + " it is of middle weight: lighter cloth would catch faster, heavier cloth more slowly."
                : "At " + grams + " it is light: light cloth catches and burns fast.";
    }

    static String melts(WornCloth cloth) {
        return Words.number(cloth.blend().meltablePercent()) + " % of its fibre melts or may melt ("
                + named(cloth.blend(), FibreFamily::countsAsMeltable)
                + "). Melted fibre sticks to skin and keeps burning it.";
    }

    /** Why what melts does not simply drip away. */
    static String held(WornCloth cloth) {
        String holder = named(cloth.blend(), f -> f == FibreFamily.CELLULOSIC);
        if (holder.isEmpty()) {
            return "It may shrink from a flame, but a cotton thread, lining or layer then holds the melt in the flame.";
        }
        String melting = cloth.blend().meltablePercent() > 0
                ? named(cloth.blend(), FibreFamily::countsAsMeltable)
                : "film or wax";
        return "Charred " + holder + " holds the molten " + melting
                + " like a wick. Such a blend can burn faster than either part alone.";
    }

    /** What the wearer does, where, and at how large a fire. */
    static String place(Exposure exposure) {
        String where = exposure.distanceM()
                .map(m -> Words.number(m) + " m from its centre")
                .orElse("at an unknown distance, presumed near");
        String size = exposure.fireKw()
                .map(kw -> "a fire of " + Words.number(kw) + " kW")
                .orElse("a fire of unknown size, presumed " + Words.number(Exposure.PRESUMED_KW) + " kW");
        return "The wearer is " + role(exposure.role()) + " " + size + ", " + where + ".";
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
                + Words.fixed(SteadyCloth.temperatureC(flux), 0) + " degrees Celsius." + pain;
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

    static String named(Blend blend, Predicate<FibreFamily> family) {
        return blend.shares().stream()
                .filter(share -> family.test(share.fibre().family()))
                .map(share -> share.fibre().family() == FibreFamily.UNNAMED
                        ? "unnamed fibre"
                        : share.fibre().name())
                .distinct()
                .collect(Collectors.joining(", "));
    }
}
