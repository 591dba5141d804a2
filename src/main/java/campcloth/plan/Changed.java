package campcloth.plan;

import campcloth.garment.Design;
import campcloth.garment.Designs;
import campcloth.garment.LengthRule;
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

    static CuttingOrder.Line body(CutPieces.MadeUp madeUp, double shorterCm) {
        return measurement(madeUp.line(), "lengthCm", rule(madeUp).lengthCm() - shorterCm);
    }

    static CuttingOrder.Line sleeves(CutPieces.MadeUp madeUp, double shorterCm) {
        return measurement(madeUp.line(), "sleeveLengthCm", rule(madeUp).sleeveLengthCm() - shorterCm);
    }

    static CuttingOrder.Line round(CutPieces.MadeUp madeUp, double narrowerCm) {
        return measurement(madeUp.line(), Design.FINISHED_ROUND, rule(madeUp).roundCm() - narrowerCm);
    }

    private static LengthRule rule(CutPieces.MadeUp madeUp) {
        return madeUp.garment().lengthRule();
    }

    private static CuttingOrder.Line measurement(CuttingOrder.Line line, String key, double cm) {
        return new CuttingOrder.Line(line.design(), line.count(), line.wearer().with(key, cm), line.options());
    }
}
