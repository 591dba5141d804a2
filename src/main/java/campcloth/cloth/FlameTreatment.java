package campcloth.cloth;

/** What was said of a treatment that is meant to slow flame. The fibre's own behaviour is none. */
public enum FlameTreatment {
    NONE,
    /** Nobody can say whether there was one. */
    UNKNOWN,
    /** The seller or maker says that there was one. */
    DECLARED,
    /** The maker declares that it lasts through washing. */
    DECLARED_DURABLE
}
