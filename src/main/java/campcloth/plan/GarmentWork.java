package campcloth.plan;

import campcloth.garment.Fitting;
import campcloth.garment.Sewing;
import campcloth.garment.SewingStep;
import campcloth.garment.SewingThread;
import campcloth.garment.SewingTime;
import java.util.List;
import java.util.Optional;

/**
 * How one line of an order is made up; figures are for one garment of it.
 *
 * @param garment what it is called by, empty where it is the only line
 * @param design key of the design
 * @param count how many of them
 * @param steps what to do, in the order in which it is done
 * @param notions what is needed besides cloth and thread
 * @param fitting whether it goes on, and what can be altered at a try-on
 * @param threadM sewing thread, waste included
 * @param time about how long it takes
 * @param order the same steps with the seams and hems of each; empty in plans of old
 * @param scraps small pieces with their sizes; empty in plans of old
 */
public record GarmentWork(
        String garment,
        String design,
        int count,
        List<String> steps,
        List<String> notions,
        Fitting fitting,
        double threadM,
        SewingTime time,
        Optional<List<SewingStep>> order,
        Optional<List<ScrapPiece>> scraps) {

    public GarmentWork {
        steps = List.copyOf(steps);
        notions = List.copyOf(notions);
        order = order.map(List::copyOf);
        scraps = scraps.map(List::copyOf);
    }

    static List<GarmentWork> of(CuttingOrder order, CutPieces pieces) {
        return pieces.garments().stream().map(madeUp -> of(order, madeUp)).toList();
    }

    private static GarmentWork of(CuttingOrder order, CutPieces.MadeUp madeUp) {
        Sewing sewing = madeUp.garment().sewing();
        return new GarmentWork(
                madeUp.label(),
                madeUp.garment().design(),
                madeUp.line().count(),
                sewing.steps().stream().map(SewingStep::what).toList(),
                sewing.notions(),
                madeUp.garment().fitting(),
                SewingThread.metres(
                        sewing, order.cloth().sewn(), order.particulars().sewnBy()),
                SewingTime.of(madeUp.garment(), order.particulars().sewnBy()),
                Optional.of(sewing.steps()),
                Optional.of(madeUp.garment().smallPieces().stream()
                        .map(ScrapPiece::of)
                        .toList()));
    }

    /** Thread for all garments of all lines, whole metres. */
    static double threadM(List<GarmentWork> works) {
        return Math.ceil(works.stream()
                .mapToDouble(work -> work.count() * work.threadM())
                .sum());
    }
}
