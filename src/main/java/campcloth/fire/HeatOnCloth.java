package campcloth.fire;

import campcloth.event.FireRole;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Radiant heat of a steady fire on a cloth and on bare skin beside it, with the radiative fraction that is usual and the one used
 * for grading. No numbers in the near field, where flames reach, nor without a distance.
 *
 * @param usual at the usual radiative fraction, 0.30
 * @param strong at the one used for grading, 0.40
 * @param softening where the first part of the cloth softens; empty where nothing in it does
 * @param notes what limits the numbers, or why there are none
 */
public record HeatOnCloth(
        Optional<RadiantWarming> usual,
        Optional<RadiantWarming> strong,
        Optional<Softening> softening,
        List<String> notes) {

    static final String NEAR_FIELD =
            "The formula for radiant heat does not hold so near: the place is treated as contact with flame.";

    static final String NO_DISTANCE = "Without a distance no radiant heat can be given.";

    private static final String STEADY =
            "An estimate for a steady fire: gusts, flare-ups and embers are worse. Dry cloth with something warm behind it.";

    public HeatOnCloth {
        notes = List.copyOf(notes);
    }

    static HeatOnCloth of(WornCloth cloth, Exposure exposure) {
        Optional<RadiantWarming> usual = exposure.fluxKwM2().map(flux -> RadiantWarming.of(cloth, flux));
        Optional<RadiantWarming> strong = exposure.strongFluxKwM2().map(flux -> RadiantWarming.of(cloth, flux));
        Optional<Softening> softening = Softening.of(cloth);
        List<String> notes = new ArrayList<>();
        if (strong.isEmpty()) {
            notes.add(absent(exposure));
        } else {
            notes.add(STEADY);
            neverSoftens(strong.get(), softening).ifPresent(notes::add);
            outsideTheTable(usual).or(() -> outsideTheTable(strong)).ifPresent(notes::add);
        }
        return new HeatOnCloth(usual, strong, softening, notes);
    }

    private static Optional<String> neverSoftens(RadiantWarming strong, Optional<Softening> softening) {
        return softening
                .filter(s -> strong.softensAfterS().isEmpty())
                .map(s -> "At that heat it never comes to " + Words.number(s.clothC()) + " degrees Celsius, where its "
                        + s.part() + " softens.");
    }

    private static Optional<String> outsideTheTable(Optional<RadiantWarming> warming) {
        return warming.filter(w -> w.skinHurtsAfterS().isEmpty())
                .map(w -> Words.fixed(w.fluxKwM2(), 2) + " kW/m2 lies outside the table for bare skin, which goes from"
                        + " 1 to 12: no time until it hurts is given.");
    }

    private static String absent(Exposure exposure) {
        if (exposure.role() == FireRole.NONE) {
            return "There is no open fire here.";
        }
        return exposure.inNearField() ? NEAR_FIELD : NO_DISTANCE;
    }
}
