package campcloth.event;

/**
 * What the wearer does. Metabolic rates in met (1 met = 58.2 W/m2): low for judging cold, high for judging heat.
 * Sources: ISO 7730 and ASHRAE 55 tables of activities, 2011 Compendium of Physical Activities (the fighting spell and camp
 * work as spell averages with rests: project choice).
 */
public enum Activity {
    SLEEPING(0.7, 0.9, 0),
    RESTING(0.8, 1.0, 0),
    SEATED(1.0, 1.3, 0),
    STANDING(1.2, 1.6, 0),
    COOKING(1.6, 2.0, 0.3),
    WALKING(2.0, 2.6, 0.9),
    WORKING(2.2, 3.5, 0.5),
    FIGHTING(2.5, 4.0, 0.7);

    private final double lowMet;
    private final double highMet;
    private final double walkingMs;

    Activity(double lowMet, double highMet, double walkingMs) {
        this.lowMet = lowMet;
        this.highMet = highMet;
        this.walkingMs = walkingMs;
    }

    /** Metabolic rate to judge cold by, met. */
    public double lowMet() {
        return lowMet;
    }

    /** Metabolic rate to judge heat by, met. */
    public double highMet() {
        return highMet;
    }

    /** Speed of the body through the air, m/s. */
    public double walkingMs() {
        return walkingMs;
    }
}
