package campcloth.fire;

/**
 * One thing that makes the hazard what it is.
 *
 * @param factor what it is about
 * @param sentence what it is here, with its numbers
 */
public record FireReason(Factor factor, String sentence) {

    /** What hazard depends on. */
    public enum Factor {
        WEIGHT,
        FIBRE,
        MELT,
        BLEND,
        /** What this fibre or blend does in a flame that its shares alone do not tell. */
        BEHAVIOUR,
        TREATMENT,
        UNNAMED,
        FILM,
        SURFACE,
        FIT,
        LAYER,
        EXPOSURE,
        HEAT
    }
}
