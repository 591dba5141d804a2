package campcloth.errand;

/**
 * An errand that is kept.
 *
 * @param id how it is named in addresses; nobody guesses it
 * @param errand the errand
 */
public record KeptErrand(String id, Errand errand) {}
