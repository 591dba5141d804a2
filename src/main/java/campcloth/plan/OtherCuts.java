package campcloth.plan;

import campcloth.garment.Design;
import campcloth.garment.Designs;
import campcloth.garment.Option;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The same order in another cut: each choice of yes or no that a design leaves open, made the other way. */
final class OtherCuts {

    /**
     * The order cut otherwise.
     *
     * @param how what is done
     */
    record Other(CuttingOrder order, String how) {}

    private OtherCuts() {}

    /** Leaves out what {@link TooNarrow#narrower} offers already. */
    static List<Other> of(CuttingOrder order) {
        List<Other> others = new ArrayList<>();
        List<CuttingOrder.Line> lines = order.garments();
        for (int i = 0; i < lines.size(); i++) {
            CuttingOrder.Line line = lines.get(i);
            Design design = Designs.named(line.design());
            Optional<CuttingOrder.Line> narrower =
                    design.narrower(line.options()).map(way -> line.with(way.options()));
            for (Option option : design.options()) {
                if (option.value() instanceof Option.YesNo
                        && narrower.filter(n -> n.options().yes(option)
                                        != line.options().yes(option))
                                .isEmpty()) {
                    others.add(other(order, i, option));
                }
            }
        }
        return others;
    }

    private static Other other(CuttingOrder order, int place, Option option) {
        List<CuttingOrder.Line> lines = new ArrayList<>(order.garments());
        CuttingOrder.Line line = lines.get(place);
        boolean yes = !line.options().yes(option);
        lines.set(place, line.with(line.options().with(option.key(), yes)));
        String whose = lines.size() == 1 ? "" : " of " + line.design() + " " + (place + 1);
        return new Other(
                order.with(lines),
                "take another cut" + whose + ", " + (yes ? "" : "without: ") + option.words() + " (option "
                        + option.key() + " " + yes + ")");
    }
}
