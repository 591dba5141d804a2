package campcloth.event;

/** The season of an event. */
public enum Season {
    SPRING,
    SUMMER,
    AUTUMN,
    WINTER
}
