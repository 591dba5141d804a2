package campcloth.event;

/**
 * Where and when the sun is to be reckoned for.
 *
 * @param latitudeDeg latitude, north positive
 * @param dayOfYear day, 1 on 1 January
 */
public record Place(double latitudeDeg, int dayOfYear) {}
