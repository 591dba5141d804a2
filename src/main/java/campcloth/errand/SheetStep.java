package campcloth.errand;

/**
 * Something to do before cutting.
 *
 * @param what what to do
 * @param because why, with the figure behind it and where that comes from
 */
public record SheetStep(String what, String because) {}
