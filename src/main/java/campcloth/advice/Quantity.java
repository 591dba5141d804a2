package campcloth.advice;

/**
 * A computed quantity with the interval that follows from the figures it was computed from.
 *
 * @param value best value
 * @param low lower end
 * @param high upper end
 */
public record Quantity(double value, double low, double high) {}
