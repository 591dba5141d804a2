package campcloth.pages.plan;

/**
 * A name with its value, as an address or a form carries it.
 *
 * @param name name of the field
 * @param value as it is written in metric units
 */
public record QueryPart(String name, String value) {}
