package campcloth.cloth;

/** Where a garment lies between the skin and the weather. */
public enum Layer {
    SKIN,
    MIDDLE,
    OUTER
}
