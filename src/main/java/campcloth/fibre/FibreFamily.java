package campcloth.fibre;

/** What a fibre does in heat; the families that fire hazard is graded by. */
public enum FibreFamily {
    /** Plant fibre and what is regenerated from it: flames, glows on, does not melt. */
    CELLULOSIC,
    /** Wool, hair, silk: chars and swells, does not melt. */
    PROTEIN,
    /** Melts, softens or sticks below about 350 degrees Celsius. */
    MELTABLE,
    /** Chars without melting and goes out by itself. */
    FLAME_RESISTANT,
    /** Glass: neither burns nor melts in a wood fire's reach. */
    MINERAL,
    /** Not named on the label, or no label at all: treated as the worst plausible fibre. */
    UNNAMED;

    /** Whether cloth of this family may melt onto skin, or must be presumed to. */
    public boolean countsAsMeltable() {
        return this == MELTABLE || this == UNNAMED;
    }
}
