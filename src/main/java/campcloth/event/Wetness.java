package campcloth.event;

/** How wet the clothes are during a spell. */
public enum Wetness {
    DRY,
    /** They feel damp, nothing can be wrung out: drizzle under a cloak, sweat, dew. */
    DAMP,
    /** Rained through. */
    WET
}
