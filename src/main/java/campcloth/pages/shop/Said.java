package campcloth.pages.shop;

/**
 * A line of the answer.
 *
 * @param key of its text, behind {@code shop.}
 * @param value what the text takes, may be empty
 */
public record Said(String key, String value) {}
