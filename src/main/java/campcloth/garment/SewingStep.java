package campcloth.garment;

import java.util.ArrayList;
import java.util.List;

/**
 * A step of sewing.
 *
 * @param stage where it belongs
 * @param what what to do, one sentence or a few
 * @param seams names of the seams that are sewn in it
 * @param hems edges that are hemmed in it
 */
public record SewingStep(SewingStage stage, String what, List<String> seams, List<String> hems) {

    public SewingStep {
        seams = List.copyOf(seams);
        hems = List.copyOf(hems);
    }

    /** A step in which nothing is sewn for good. */
    public static SewingStep of(SewingStage stage, String what) {
        return new SewingStep(stage, what, List.of(), List.of());
    }

    /** A step in which seams are sewn. */
    public static SewingStep seams(SewingStage stage, String what, String... seams) {
        return new SewingStep(stage, what, List.of(seams), List.of());
    }

    /** A step in which edges are hemmed. */
    public static SewingStep hems(SewingStage stage, String what, HemEdge.Kind... edges) {
        return seams(stage, what).hemming(edges);
    }

    /** The same, with edges that are hemmed in it. */
    public SewingStep hemming(HemEdge.Kind... edges) {
        return new SewingStep(
                stage,
                what,
                seams,
                List.of(edges).stream().map(HemEdge.Kind::words).toList());
    }

    /** The same, with one more seam. */
    public SewingStep sewing(String seam) {
        List<String> more = new ArrayList<>(seams);
        more.add(seam);
        return new SewingStep(stage, what, more, hems);
    }

    /** Why it comes where it comes; common practice, no source. */
    public String because() {
        return stage.because();
    }
}
