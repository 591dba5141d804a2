package campcloth.fire;

import campcloth.figure.SvgDocument;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The distances around a fire seen from above, true to scale, as an SVG picture in black on white: {@link FirePlan} drawn and in
 * sentences. What lies too far off is told below the plan, not drawn.
 */
public final class StandBackDrawing {

    private StandBackDrawing() {}

    public static String svg(FirePlan plan) {
        StandBackPicture picture = new StandBackPicture(plan);
        return new SvgDocument("Distances around " + plan.fire(), String.join(" ", text(plan)))
                .hatchings(7)
                .of(0, 0, StandBackPicture.WIDTH, picture.height(), picture.drawn());
    }

    /** The same in sentences: the fire, each distance from near to far by kind, what follows, whose word counts. */
    public static List<String> text(FirePlan plan) {
        List<String> sentences = new ArrayList<>();
        String fire = plan.fire();
        String at = plan.spells().isEmpty() ? "" : ", " + String.join(", ", plan.spells());
        sentences.add(fire.substring(0, 1).toUpperCase(Locale.ROOT) + fire.substring(1) + at + ".");
        plan.rings().stream().map(FireRing::sentence).distinct().forEach(sentences::add);
        sentences.addAll(plan.notes());
        sentences.add(FireCautions.RULES_WIN);
        return List.copyOf(sentences);
    }
}
