package campcloth.event;

/** The season of an event. */
public enum Season {
    SPRING(105),
    SUMMER(196),
    AUTUMN(288),
    WINTER(15);

    private static final int DAYS = 365;

    private final int middleDayNorth;

    Season(int middleDayNorth) {
        this.middleDayNorth = middleDayNorth;
    }

    /** Its middle day of the year, with winter in December to February north of the equator; half a year later in the south. */
    public int middleDay(boolean south) {
        return south ? (middleDayNorth + DAYS / 2 - 1) % DAYS + 1 : middleDayNorth;
    }
}
