package campcloth.garment;

import java.util.List;

/** Where the tape lies for a measurement, and how to hold it. Common practice, no source. */
public enum TapeLine {
    CHEST("Round the chest", Hints.ROUND),
    WAIST("Round the waist", Hints.ROUND),
    HIP("Round hip and seat", Hints.ROUND),
    SHOULDERS("Round both shoulders", Hints.ROUND),
    NECK("Round the neck", Hints.ROUND),
    HEAD("Round the head", Hints.ROUND),
    WRIST("Round the wrist", Hints.ROUND),
    THIGH("Round the thigh", Hints.ROUND),
    CALF("Round the calf", Hints.ROUND),
    ANKLE("Round the ankle", Hints.ROUND),
    HEEL(
            "Round heel and instep",
            "The tape runs slantwise under the heel and over the instep: the leg must pass there."),
    OVER_HEAD("Over the crown of the head", "Let it lie close to the head, not pressed."),
    SHOULDER_TO_HEM("From the shoulder to the hem", Hints.DOWN),
    WAIST_TO_HEM("From the waist to the hem", Hints.DOWN),
    NAPE_TO_HEM("From the nape to the hem", Hints.DOWN),
    NAPE_TO_GROUND("From the nape to the ground", Hints.DOWN),
    WAIST_TO_HIP("From the waist to the fullest hip", Hints.DOWN),
    CAPE("From the neck to the cape's hem", Hints.DOWN),
    SLEEVE("Along the arm", "Let the tape follow the outside of the arm, round the elbow."),
    INSIDE_LEG("Inside of the leg", "Stand upright. It is easier for another to hold the tape."),
    CROTCH_DEPTH("From the waist to the chair", "Sit upright on a flat, hard chair and tie a cord round the waist."),
    ANKLE_TO_KNEE("From the ankle to below the knee", Hints.DOWN),
    BIB("From the waist to the bib's edge", "Hold the tape flat against the front."),
    STRAP("From the bib over the shoulder", "Let the tape hang as loose as the strap is to hang."),
    ACROSS_SHOULDERS("Across front or back", "Hold the tape level and straight, it does not follow the body."),
    GARMENT_ROUND("Round the finished garment", Hints.FLAT),
    NECK_OPENING("Across the neck opening", "Lay a garment that fits flat and measure straight across its neck."),
    SLEEVE_TOP("Round the top of the sleeve", Hints.FLAT),
    SLEEVE_END("Round the end of the sleeve", Hints.FLAT),
    LEG_END("Round the end of the leg", Hints.FLAT);

    private final String title;
    private final String hint;

    TapeLine(String title, String hint) {
        this.title = title;
        this.hint = hint;
    }

    /** What is measured, in a few words. */
    public String title() {
        return title;
    }

    /** How to hold the tape, in sentences. */
    public List<String> hints() {
        return List.of(hint);
    }

    private static final class Hints {
        static final String ROUND =
                "Keep the tape close but not tight: a finger goes under it. Look from the side that it lies level all round.";
        static final String DOWN = "Stand upright and let the tape hang straight; ask another to read it.";
        static final String FLAT =
                "Lay a garment that fits flat, without stretching it, measure from edge to edge and double that.";
    }
}
