package campcloth.pages;

/**
 * An entry of a list to choose from.
 *
 * @param value as it is sent; empty for none
 * @param label as it is read
 */
public record Choice(String value, String label) {}
