package campcloth.errand;

/**
 * Something to have at hand. Common practice, no source.
 *
 * @param name what
 * @param because what for
 */
public record KitItem(String name, String because) {}
