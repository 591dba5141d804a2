package campcloth.fire;

/**
 * What fire and rules say of one part of an outfit at an event.
 *
 * @param part the part
 * @param judgement what is said of it
 */
public record PartJudgement(WornPart part, FireJudgement judgement) {}
