package campcloth.pages.shop;

/**
 * A line of the answer.
 *
 * @param key of its text among those of its kind
 * @param value what the text takes, may be empty
 */
public record Said(String key, String value) {}
