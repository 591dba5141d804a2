package campcloth.plan;

import campcloth.cloth.ShippedCatalogue;
import campcloth.figure.Words;
import campcloth.garment.Design;
import campcloth.garment.Designs;
import campcloth.garment.Measurements;
import campcloth.garment.Options;
import campcloth.layout.Effort;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What some garments take of cloths of several widths, beside the rule of thumb: the table that DEVELOPERS.md shows. */
final class BuyingTable {

    static final List<String> DESIGNS = List.of("tunic", "gown", "shirt", "cloak", "gored-skirt", "apron", "trousers");
    static final List<String> SIZES = List.of("W-S", "M-M", "M-L");
    static final List<Integer> WIDTHS_CM = List.of(90, 110, 140, 160);

    private static final Search SEARCH = Search.of(new Effort(0.05, 1));
    private static final double WARP_PERCENT = 5;
    private static final double WEFT_PERCENT = 3;

    /**
     * One plan beside the rule.
     *
     * @param pieced whether the pieces had to be cut narrower, with more seams, to lie on the cloth
     * @param rowsBuyCm what the rule's rows take once they have seams, hems and shrinkage
     */
    record Cell(
            String design,
            String size,
            int widthCm,
            double buyCm,
            double ruleCm,
            double rowsBuyCm,
            boolean pieced,
            boolean lies) {

        boolean ruleHolds() {
            return rowsBuyCm <= ruleCm;
        }

        String words() {
            return lies ? Words.number(buyCm) + " / " + Words.number(ruleCm) + (pieced ? " *" : "") : "too narrow";
        }
    }

    private BuyingTable() {}

    static List<Cell> cells() {
        List<Cell> cells = new ArrayList<>();
        for (String design : DESIGNS) {
            for (String size : SIZES) {
                WIDTHS_CM.forEach(width -> cells.add(cell(design, size, width)));
            }
        }
        return cells;
    }

    private static Cell cell(String key, String size, int widthCm) {
        Design design = Designs.named(key);
        Measurements wearer =
                Measurements.of(Map.of()).ofSize(ShippedCatalogue.get().sizes().named(size));
        CuttingOrder order = CuttingOrder.of(
                Orders.washed(widthCm, WARP_PERCENT, WEFT_PERCENT),
                new CuttingOrder.Line(key, 1, wearer, Options.USUAL));
        CutPieces pieces = CutPieces.of(order);
        boolean pieced = TooNarrow.isTooNarrow(order, pieces)
                && design.narrower(Options.USUAL).isPresent();
        if (pieced) {
            order = TooNarrow.narrower(order).orElseThrow().order();
            pieces = CutPieces.of(order);
        }
        if (TooNarrow.isTooNarrow(order, pieces)) {
            return new Cell(key, size, widthCm, 0, 0, 0, pieced, false);
        }
        RuleOfThumb rule = RuleOfThumb.of(order, pieces);
        double netCm = CuttingPlanner.laid(order, pieces, SEARCH).chosen().lengthCm();
        return new Cell(key, size, widthCm, order.buyLengthCm(netCm), rule.roundedCm(), rule.rowsBuyCm(), pieced, true);
    }

    /** The table in Markdown, without a line end. */
    static String markdown(List<Cell> cells) {
        StringBuilder table = new StringBuilder("| garment, size |");
        WIDTHS_CM.forEach(width -> table.append(' ').append(width).append(" cm |"));
        table.append("\n| --- |").append(" --- |".repeat(WIDTHS_CM.size()));
        for (int i = 0; i < cells.size(); i += WIDTHS_CM.size()) {
            List<Cell> row = cells.subList(i, i + WIDTHS_CM.size());
            table.append("\n| ")
                    .append(row.get(0).design())
                    .append(", ")
                    .append(row.get(0).size());
            table.append(row.stream().map(Cell::words).collect(Collectors.joining(" | ", " | ", " |")));
        }
        return table.toString();
    }

    /** The means, one sentence. */
    static String means(List<Cell> cells) {
        List<Cell> lying = cells.stream().filter(Cell::lies).toList();
        List<Cell> holding = lying.stream().filter(Cell::ruleHolds).toList();
        return "Mean saving against the rule where the rule holds its own rows (" + holding.size() + " of "
                + lying.size()
                + "): " + percent(holding, true) + "; against the rule wherever the pieces lie: " + percent(lying, true)
                + "; against the rule's rows with seams, hems and shrinkage: " + percent(lying, false) + ".";
    }

    private static String percent(List<Cell> cells, boolean againstRule) {
        double share = cells.stream()
                .mapToDouble(c -> againstRule ? 1 - c.buyCm() / c.ruleCm() : 1 - c.buyCm() / c.rowsBuyCm())
                .average()
                .orElse(0);
        return Words.fixed(100 * share, 1) + " %";
    }
}
