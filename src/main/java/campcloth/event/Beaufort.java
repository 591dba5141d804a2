package campcloth.event;

import java.util.Arrays;

/**
 * Wind by what can be seen of it on land, with the mean speed 10 m above open ground from which each force begins, in m/s. The
 * limits are those that weather services print after the World Meteorological Organization's scale (a national weather service's
 * table, seen second-hand; the WMO's own text was not seen). It stops where the service stops, at 40 m/s.
 */
public enum Beaufort {
    CALM(0, "calm: smoke rises straight up"),
    LIGHT_AIR(0.3, "light air: smoke drifts, a vane stays still"),
    LIGHT_BREEZE(1.6, "light breeze: felt on the face, leaves rustle"),
    GENTLE_BREEZE(3.4, "gentle breeze: leaves and twigs never rest, a light flag flies"),
    MODERATE_BREEZE(5.5, "moderate breeze: dust and paper lift, thin branches move"),
    FRESH_BREEZE(8.0, "fresh breeze: small trees in leaf sway"),
    STRONG_BREEZE(10.8, "strong breeze: thick branches move, wires whistle"),
    NEAR_GALE(13.9, "near gale: whole trees move, walking against it is hard"),
    GALE(17.2, "gale: twigs break off"),
    STRONG_GALE(20.8, "strong gale: tiles come loose"),
    STORM(24.5, "storm: trees are uprooted"),
    VIOLENT_STORM(28.5, "violent storm: damage far and wide"),
    HURRICANE(32.7, "hurricane");

    private final double fromMs;
    private final String words;

    Beaufort(double fromMs, String words) {
        this.fromMs = fromMs;
        this.words = words;
    }

    /** The force of a wind. */
    public static Beaufort of(double windMs) {
        return Arrays.stream(values()).filter(force -> windMs >= force.fromMs).reduce(CALM, (lower, higher) -> higher);
    }

    public int force() {
        return ordinal();
    }

    /** Mean wind from which it begins, m/s. */
    public double fromMs() {
        return fromMs;
    }

    /** Its name and what is seen of it. */
    public String words() {
        return words;
    }
}
