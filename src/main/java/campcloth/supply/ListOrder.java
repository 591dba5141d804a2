package campcloth.supply;

import campcloth.figure.Refused;
import java.text.Normalizer;
import java.util.Optional;

/**
 * What whoever sends a list says of it.
 *
 * @param supplier who sells by it, 1 to 100 characters; part of the key of each article
 * @param currency of its prices, where neither head nor cell names one
 * @param delimiter the sign between its cells; recognised where it is left out
 */
public record ListOrder(String supplier, Optional<String> currency, Optional<Character> delimiter) {

    /** How the source of every figure that a list gives bare begins. */
    static final String SOURCE = "list of ";

    private static final int LONGEST = 100;

    public ListOrder {
        supplier = Normalizer.normalize(supplier.strip(), Normalizer.Form.NFC);
        if (supplier.isEmpty()
                || supplier.length() > LONGEST
                || supplier.chars().anyMatch(Character::isISOControl)) {
            throw Refused.of(
                    "supplier",
                    "is no name of 1 to " + LONGEST + " printable characters",
                    "name who sells by the list");
        }
        currency = currency.map(PriceCell::requiredCurrency);
        delimiter.filter(sign -> ",;\t".indexOf(sign) < 0).ifPresent(sign -> {
            throw Refused.of(
                    "delimiter", "is none that is read", "give a comma, a semicolon or a tab, or leave it out");
        });
    }

    /** Whether a figure's source says that a list gave it. */
    public static boolean gave(String source) {
        return source.startsWith(SOURCE);
    }

    /** The source of its figures: the same each time the list is read. */
    String source() {
        return SOURCE + supplier;
    }
}
