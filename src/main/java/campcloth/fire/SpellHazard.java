package campcloth.fire;

/**
 * The hazard in one spell of an event.
 *
 * @param spell name of the spell
 * @param exposure the exposure in it
 * @param hazard the hazard in it
 */
public record SpellHazard(String spell, Exposure exposure, FireHazard hazard) {}
