package campcloth.comfort.model;

/**
 * What the two-node body carries from one minute to the next and from one spell into the next; all else follows from it and
 * from what surrounds the body.
 *
 * @param skinC mean skin temperature, degrees Celsius
 * @param coreC core temperature, degrees Celsius
 * @param skinShare share of the body's mass that counts as skin, alpha
 * @param bloodFlowLM2H skin blood flow, l/(m2 h)
 * @param sweatCallGM2H sweat that the body calls for, g/(m2 h), whether or not it can evaporate
 */
public record State(double skinC, double coreC, double skinShare, double bloodFlowLM2H, double sweatCallGM2H) {

    /** A body at rest that is neither cool nor warm. */
    public static final State NEUTRAL = new State(
            TwoNode.NEUTRAL_SKIN_C, TwoNode.NEUTRAL_CORE_C, TwoNode.NEUTRAL_SKIN_SHARE, TwoNode.NEUTRAL_BLOOD_FLOW, 0);

    /** Heat in the body above that of a neutral one, Wh/m2; negative where it has cooled. */
    public double storedWhM2() {
        return TwoNode.CAPACITY_WHM2K * (TwoNode.bodyC(skinShare, skinC, coreC) - TwoNode.NEUTRAL_BODY_C);
    }
}
