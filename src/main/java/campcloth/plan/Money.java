package campcloth.plan;

import campcloth.cloth.Property;
import campcloth.figure.Refused;

/**
 * An amount of money.
 *
 * @param amount how much
 * @param currency three letters of ISO 4217
 */
public record Money(double amount, String currency) {

    public Money {
        if (!currency.matches("[A-Z]{3}")) {
            throw Refused.of("currency", "'" + currency + "' is no currency code", "give three letters such as EUR");
        }
        if (!Double.isFinite(amount) || amount < 0) {
            throw Refused.of(
                    Property.PRICE_PER_METRE.field(), "is not an amount of money", "give a number from 0 upwards");
        }
    }

    /** So many times this amount, to a hundredth. */
    public Money times(double factor) {
        return new Money(Math.round(amount * factor * 100) / 100.0, currency);
    }
}
