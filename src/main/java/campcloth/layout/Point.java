package campcloth.layout;

/**
 * A point on the cloth.
 *
 * @param xCm across the cloth's width
 * @param yCm along the cloth's length
 */
public record Point(double xCm, double yCm) {}
