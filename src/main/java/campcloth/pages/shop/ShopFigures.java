package campcloth.pages.shop;

import campcloth.cloth.Cloth;
import campcloth.cloth.Property;
import campcloth.figure.Figure;
import campcloth.figure.Words;
import campcloth.pages.Units;
import campcloth.plan.Money;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.DoubleFunction;

/** Figures of a cloth as a reader wants them, with their intervals. */
public record ShopFigures(Units units) {

    private static final int FIGURES = 3;

    /** Value and interval, with unit. */
    public String shown(Property property, Figure figure) {
        return switch (property) {
            case WEIGHT_GSM -> shown(figure, units::weight);
            case WIDTH_CM -> shown(figure, units::length);
            case PRICE_PER_METRE ->
                Words.fixed(Units.Measure.PRICE_PER_METRE.fromCore(figure.value(), units), 2) + " "
                        + units.sign(Units.Measure.PRICE_PER_METRE);
            default ->
                rough(figure.value())
                        + (figure.low() == figure.high()
                                ? ""
                                : " (" + rough(figure.low()) + " to " + rough(figure.high()) + ")")
                        + " " + property.unit().replace("m2", "m²").replace("um", "µm");
        };
    }

    /** Three figures are as many as an estimate is worth. */
    private static String rough(double value) {
        return Words.number(new BigDecimal(value)
                .round(new MathContext(FIGURES, RoundingMode.HALF_UP))
                .doubleValue());
    }

    public String weight(Cloth completed) {
        return units.weight(completed.required(Property.WEIGHT_GSM).value());
    }

    public String money(Money money) {
        return Words.fixed(money.amount(), 2) + " " + money.currency();
    }

    private static String shown(Figure figure, DoubleFunction<String> written) {
        return figure.low() == figure.high()
                ? written.apply(figure.value())
                : written.apply(figure.value()) + " (" + written.apply(figure.low()) + " to "
                        + written.apply(figure.high()) + ")";
    }
}
