package campcloth.garment;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/**
 * How a garment is put together. Whoever makes one up says of every seam and every hem in which step it is sewn: each stands in
 * exactly one, and no step stands before what its stage rests on.
 *
 * @param seams seams to sew
 * @param hems edges to hem
 * @param seamAllowanceCm cloth beyond each seam line
 * @param steps what to do, in the order in which it is done
 * @param notions what is needed besides cloth and thread, each with how much
 */
public record Sewing(
        List<Seam> seams, List<Hem> hems, double seamAllowanceCm, List<SewingStep> steps, List<String> notions) {

    public Sewing {
        seams = List.copyOf(seams);
        hems = List.copyOf(hems);
        steps = List.copyOf(steps);
        notions = List.copyOf(notions);
        eachInOneStep("seam", seams.stream().map(Seam::name), steps.stream().map(SewingStep::seams));
        eachInOneStep("hem", hems.stream().map(Hem::edge), steps.stream().map(SewingStep::hems));
        nothingBeforeItsFoundation(steps);
    }

    private static void eachInOneStep(String what, Stream<String> there, Stream<List<String>> inSteps) {
        List<String> sewn = inSteps.flatMap(Collection::stream).sorted().toList();
        List<String> given = there.sorted().toList();
        if (!given.equals(sewn)) {
            throw new IllegalStateException(
                    "each " + what + " belongs to one step: there are " + given + ", in the steps stand " + sewn);
        }
    }

    private static void nothingBeforeItsFoundation(List<SewingStep> steps) {
        for (int later = 1; later < steps.size(); later++) {
            for (SewingStep earlier : steps.subList(0, later)) {
                if (earlier.stage().restsOn(steps.get(later).stage())) {
                    throw new IllegalStateException("'" + earlier.what() + "' stands before '"
                            + steps.get(later).what() + "', which it rests on");
                }
            }
        }
    }
}
