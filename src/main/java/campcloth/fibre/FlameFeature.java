package campcloth.fibre;

import java.util.Locale;

/**
 * What is looked for when a single thread is held to a flame, in the order of the test. The answers of each stand in {@code
 * burn-test-answers.csv}; they exclude each other.
 */
public enum FlameFeature {
    APPROACH(
            FlameFeature.SAID_AGAIN,
            "What does the thread do as the flame comes near?",
            "Bring it slowly to the side of a small flame and stop before they touch."),
    FLAME(
            FlameFeature.SAID_AGAIN,
            "How does it burn in the flame?",
            "Hold it in the edge of the flame for about a second."),
    MOLTEN(FlameFeature.SAID_AGAIN, "Does anything run or drip?", "Keep the dish below it. Drops burn skin and table."),
    REMOVED(1, "What does it do when it is taken out of the flame?", "Let it catch first, then take it out."),
    EMBER(1, "Does an ember glow on after the flame is out?", "Blow the flame out and look at the end in shade."),
    SMOKE(FlameFeature.SAID_AGAIN, "What smoke does it give?", "Look at it against something pale."),
    ODOUR(
            1,
            "What does the smoke smell of?",
            "Waft a little towards you with the hand and never breathe it in: some fibres give poisonous gas."),
    RESIDUE(
            1,
            "What is left when it is cold?",
            "Wait until it is cold, a minute at least, then press it with the tweezers and after that between the"
                    + " fingers.");

    /** For what mostly tells again what the residue tells: chosen by the project. */
    private static final double SAID_AGAIN = 0.5;

    private final double weight;
    private final String question;
    private final String look;

    FlameFeature(double weight, String question, String look) {
        this.weight = weight;
        this.question = question;
        this.look = look;
    }

    /** As tables and answers name it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Exponent of its likelihoods, above 0 and at most 1: below 1 where others tell the same thing again. */
    public double weight() {
        return weight;
    }

    public String question() {
        return question;
    }

    /** How to look at it. */
    public String look() {
        return look;
    }
}
