package campcloth.advice;

import campcloth.cloth.Cloth;

/**
 * A cloth to be judged.
 *
 * @param id its id in the catalogue, or the name under which an unsaved cloth was handed in
 * @param cloth the cloth as known
 */
public record Candidate(String id, Cloth cloth) {}
