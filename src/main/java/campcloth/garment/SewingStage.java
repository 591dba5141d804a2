package campcloth.garment;

import java.util.EnumSet;
import java.util.Set;

/**
 * The stages of sewing a garment, each with why it comes where it comes. Stages rest on others: what rests on them is never sewn
 * before them. Common practice, no source.
 */
public enum SewingStage {
    MARKING("Parts that look alike once they are cut are told apart by their marks alone."),
    STAY("An edge off the grain stretches as soon as it is handled; a row of stitches holds it."),
    PIECING("A piece has to be whole, and pressed, before it is joined to another."),
    BODY("What everything else hangs from comes first; all that follows is measured against it."),
    NECK("A neck is faced while the sides are open and the garment still lies flat."),
    SLEEVES("A sleeve that is set on flat, before the sides are closed, needs no easing in the round."),
    INSETS("What stands in a seam goes in while that seam is still open, so that its corners can be reached."),
    EDGES("What runs into a band or a facing is finished first, so that band and facing close over its ends."),
    FULLNESS("Fullness is drawn in or laid before the band is sewn on, so that it lies evenly beneath it."),
    SMALL_PARTS("Ties and straps are made before the seam that catches them in."),
    FITTING("What is too much or too little shows on the body, and is altered before the edges are finished."),
    CLOSING("The long seams close the garment; behind them nothing flat is left to sew."),
    BANDS("A band or a casing closes over the raw ends of all the seams that run into it."),
    HEMS("Cloth drops while it hangs, and every seam that ends in a hem must be sewn before it is folded."),
    LAST("It comes when all that it is fastened to is finished.");

    private final String because;

    SewingStage(String because) {
        this.because = because;
    }

    /** Why it comes where it comes. */
    public String because() {
        return because;
    }

    /** Whether it must come after the other, where a garment has both. */
    public boolean restsOn(SewingStage other) {
        return foundations().contains(other);
    }

    private Set<SewingStage> foundations() {
        return switch (this) {
            case MARKING, STAY, SMALL_PARTS -> EnumSet.noneOf(SewingStage.class);
            case PIECING -> EnumSet.of(MARKING, STAY);
            case BODY, INSETS -> EnumSet.of(MARKING, STAY, PIECING);
            case EDGES -> EnumSet.of(MARKING, STAY, PIECING, BODY);
            case FULLNESS -> EnumSet.of(MARKING, STAY, PIECING, EDGES);
            case NECK, SLEEVES, FITTING -> EnumSet.of(MARKING, STAY, PIECING, BODY);
            case CLOSING -> EnumSet.of(MARKING, STAY, PIECING, BODY, NECK, SLEEVES, INSETS);
            case BANDS -> EnumSet.complementOf(EnumSet.of(NECK, BANDS, HEMS, LAST));
            case HEMS -> EnumSet.complementOf(EnumSet.of(HEMS, LAST));
            case LAST -> EnumSet.complementOf(EnumSet.of(LAST));
        };
    }
}
