package campcloth.fire;

import java.util.List;

/**
 * Clothing that is outside what is advised on. It gets no grade and no score, only whom to ask. Standards are named so that one can
 * ask about them; nothing is concluded from them.
 */
public enum Boundary {
    /** Flame is brought to the body on purpose. */
    FIRE_PERFORMANCE(
            "Clothing for fire performance is not graded: there flame, and often fuel, is brought to the body on purpose. What is"
                    + " worn belongs to the act and its training. A standard to ask about: NFPA 160 (flame effects before an"
                    + " audience).",
            List.of(
                    "the event organiser and the fire marshal",
                    "a trained fire performer who knows the act",
                    "the local fire authority: is a permit needed?")),
    /** Fireworks, stage effects, anything that is let off. */
    PYROTECHNICS(
            "Clothing for pyrotechnics is not graded: what burns there is hotter than wood and throws sparks of its own. A standard"
                    + " to ask about: NFPA 1126 (pyrotechnics before a proximate audience).",
            List.of(
                    "the event organiser and the fire marshal",
                    "a licensed pyrotechnician",
                    "the local fire authority: is a permit needed?")),
    /** Whatever a child is to wear. */
    CHILDRENS_COSTUME(
            "Children's clothing is not graded: a child cannot drop a burning costume, and there are rules of their own for what"
                    + " children wear. Standards to ask about: EN 14878 (children's nightwear), EN 71-2 (toys, dress-up costumes"
                    + " among them).",
            List.of(
                    "the local consumer-protection authority: the rules for children's nightwear and dress-up costumes",
                    "the event organiser and the fire marshal: may children come near the fires?")),
    /** What is to protect its wearer from heat or flame. */
    PROTECTIVE_CLOTHING(
            "Clothing that is to protect from heat or flame is not graded: it is tested and approved as a whole garment. Standards"
                    + " to ask about: EN ISO 11612 (heat and flame), EN ISO 14116 (limited flame spread).",
            List.of(
                    "the employer, or whoever is in charge of the work",
                    "the supplier of protective clothing, and the test body that approved it",
                    "the event organiser and the fire marshal"));

    private final String because;
    private final List<String> ask;

    Boundary(String because, List<String> ask) {
        this.because = because;
        this.ask = ask;
    }

    /** Why it is not graded, in sentences. */
    public String because() {
        return because;
    }

    /** Whom to ask instead. */
    public List<String> ask() {
        return ask;
    }

    /** What holds whatever is worn, and what to do if it burns. */
    public List<String> cautions() {
        return FireCautions.WITHOUT_A_VERDICT;
    }
}
