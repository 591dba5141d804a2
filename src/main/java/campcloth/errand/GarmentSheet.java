package campcloth.errand;

import campcloth.figure.Words;
import campcloth.garment.Designs;
import campcloth.garment.Fitting;
import campcloth.garment.Hem;
import campcloth.garment.Seam;
import campcloth.garment.SewingStep;
import campcloth.garment.SewingTime;
import campcloth.garment.SewnBy;
import campcloth.plan.CuttingPlan;
import campcloth.plan.GarmentWork;
import campcloth.plan.Neatening;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * How one garment of a plan is sewn.
 *
 * @param garment what its pieces are called by; empty where it is the only one
 * @param design name of the design
 * @param count how many alike
 * @param seams its seams
 * @param hems its edges that are hemmed
 * @param seamAllowanceCm cloth beyond each seam line
 * @param throughout what holds for every seam
 * @param order what to do, in the order in which it is done; each seam and hem stands in one step
 * @param fitting whether it goes on, and what can be altered at a try-on
 * @param time about how long one takes
 */
public record GarmentSheet(
        String garment,
        String design,
        int count,
        List<Seam> seams,
        List<Hem> hems,
        double seamAllowanceCm,
        List<String> throughout,
        List<SewingLine> order,
        Fitting fitting,
        SewingTime time) {

    public GarmentSheet {
        seams = List.copyOf(seams);
        hems = List.copyOf(hems);
        throughout = List.copyOf(throughout);
        order = List.copyOf(order);
    }

    /** One for each garment of the plan; none in plans of old, which tell nothing of the making. */
    static List<GarmentSheet> of(CutErrand cut) {
        return cut.works().stream().map(work -> of(work, cut)).toList();
    }

    private static GarmentSheet of(GarmentWork work, CutErrand cut) {
        CuttingPlan plan = cut.plan();
        List<Seam> seams = plan.seams().stream()
                .filter(seam -> seam.garment().equals(work.garment()))
                .map(CuttingPlan.GarmentSeam::seam)
                .toList();
        List<Hem> hems = plan.hems().stream()
                .filter(hem -> hem.garment().equals(work.garment()))
                .map(CuttingPlan.GarmentHem::hem)
                .toList();
        return new GarmentSheet(
                work.garment(),
                designName(work.design()),
                work.count(),
                seams,
                hems,
                plan.seamAllowanceCm(),
                throughout(cut, work.time().by()),
                order(work, seams, hems),
                work.fitting(),
                work.time());
    }

    /** Common practice, no source. */
    private static List<String> throughout(CutErrand cut, SewnBy by) {
        String stitch = switch (by) {
            case MACHINE ->
                "Straight stitch of " + Words.number(cut.plan().stitchLengthMm())
                        + " mm; sew a few stitches back at both ends of a seam.";
            case HAND -> "Backstitch of about 2.5 mm for seams, slanted stitches of about 4 mm for hems.";
        };
        return List.of(
                stitch,
                Neatening.sentence(cut.sewn(), by),
                cut.isClosed()
                        ? "Flatten each seam with a roller before the next crosses it; no iron."
                        : cut.sewn().hasPile()
                                ? "Open each seam with the fingers and steam it from the back before the next crosses it."
                                : "Press each seam before the next crosses it.");
    }

    /** The design's name; its key where a kept plan names one that is no longer known. */
    static String designName(String key) {
        return Designs.all().stream()
                .filter(design -> design.key().equals(key))
                .map(design -> design.name())
                .findFirst()
                .orElse(key);
    }

    private static List<SewingLine> order(GarmentWork work, List<Seam> seams, List<Hem> hems) {
        List<SewingLine> lines = new ArrayList<>();
        if (work.order().isEmpty()) {
            for (String step : work.steps()) {
                lines.add(new SewingLine(lines.size() + 1, step, "", List.of(), List.of()));
            }
            return lines;
        }
        for (SewingStep step : work.order().get()) {
            Stream<Seam> sewn = seams.stream().filter(seam -> step.seams().contains(seam.name()));
            Stream<Hem> hemmed = hems.stream().filter(hem -> step.hems().contains(hem.edge()));
            lines.add(new SewingLine(lines.size() + 1, step.what(), step.because(), sewn.toList(), hemmed.toList()));
        }
        return lines;
    }
}
