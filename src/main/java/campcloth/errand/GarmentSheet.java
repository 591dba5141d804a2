package campcloth.errand;

import campcloth.garment.Designs;
import campcloth.garment.Fitting;
import campcloth.garment.Hem;
import campcloth.garment.Seam;
import campcloth.garment.SewingStep;
import campcloth.garment.SewingTime;
import campcloth.plan.CuttingPlan;
import campcloth.plan.GarmentWork;
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
        List<SewingLine> order,
        Fitting fitting,
        SewingTime time) {

    public GarmentSheet {
        seams = List.copyOf(seams);
        hems = List.copyOf(hems);
        order = List.copyOf(order);
    }

    /** One for each garment of the plan; none in plans of old, which tell nothing of the making. */
    static List<GarmentSheet> of(CuttingPlan plan) {
        return plan.making().stream()
                .flatMap(making -> making.garments().stream())
                .map(work -> of(work, plan))
                .toList();
    }

    private static GarmentSheet of(GarmentWork work, CuttingPlan plan) {
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
                order(work, seams, hems),
                work.fitting(),
                work.time());
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
