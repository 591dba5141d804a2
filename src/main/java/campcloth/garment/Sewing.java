package campcloth.garment;

import java.util.List;

/**
 * How a garment is put together.
 *
 * @param seams seams to sew
 * @param hems edges to hem
 * @param seamAllowanceCm cloth beyond each seam line
 * @param steps what to do, in the order in which it is done; one sentence or a few each
 * @param notions what is needed besides cloth and thread, each with how much
 */
public record Sewing(
        List<Seam> seams, List<Hem> hems, double seamAllowanceCm, List<String> steps, List<String> notions) {

    public Sewing {
        seams = List.copyOf(seams);
        hems = List.copyOf(hems);
        steps = List.copyOf(steps);
        notions = List.copyOf(notions);
    }
}
