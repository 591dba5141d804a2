package campcloth.plan;

import campcloth.garment.Designs;
import campcloth.garment.Saving;
import java.util.function.Function;

/** Orders with something changed, to try out what that would save. Whether the change is possible shows when it is made up. */
final class Changed {

    private Changed() {}

    /** The order with each of its lines changed. */
    static CuttingOrder each(
            CuttingOrder order, CutPieces pieces, Function<CutPieces.MadeUp, CuttingOrder.Line> change) {
        return order.with(pieces.garments().stream().map(change).toList());
    }

    /** The line with an option at most so great; unchanged where the design does not have it. */
    static CuttingOrder.Line option(CuttingOrder.Line line, String key, double mostCm) {
        return Designs.named(line.design()).options().stream()
                .filter(option -> option.key().equals(key) && line.options().cm(option) > mostCm)
                .findFirst()
                .map(option -> line.with(line.options().with(key, mostCm)))
                .orElse(line);
    }

    /** The line with one size smaller by so much. */
    static CuttingOrder.Line smaller(CuttingOrder.Line line, Saving saving, double byCm) {
        return new CuttingOrder.Line(
                line.design(),
                line.count(),
                line.wearer().with(saving.measurement(), saving.sizeCm() - byCm),
                line.options());
    }
}
