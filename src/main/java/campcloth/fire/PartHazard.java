package campcloth.fire;

/**
 * How one part of an outfit stands in an exposure.
 *
 * @param part the part
 * @param hazard its hazard
 */
public record PartHazard(WornPart part, FireHazard hazard) {}
