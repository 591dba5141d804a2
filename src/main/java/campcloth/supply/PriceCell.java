package campcloth.supply;

import campcloth.cloth.Property;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.util.Currency;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The price in a cell: a number, beside it the currency and the length it is for. Both may stand in the column's head, the currency
 * also in a column of its own or with the call; the cell goes first. Only euros become a figure, for no rate is known here:
 * another currency is kept in the words of the cloth's note.
 */
final class PriceCell {

    /** A price that was read: a figure, or words where its currency is not ours. */
    record Price(Optional<Figure> figure, Optional<String> words) {}

    private static final String OURS = "EUR";
    private static final Map<String, String> SIGNS =
            Map.of("\u20ac", OURS, "\u00a3", "GBP", "euro", OURS, "euros", OURS);
    private static final Set<String> KNOWN = Currency.getAvailableCurrencies().stream()
            .map(Currency::getCurrencyCode)
            .collect(Collectors.toUnmodifiableSet());
    private static final Pattern CODE = Pattern.compile("[A-Z]{3}");
    private static final Pattern PRICE = Pattern.compile("([^\\d-]*)(" + DecimalText.NUMBER + ")(.*)");
    private static final Pattern AROUND = Pattern.compile("(?i)(.*?)\\s*((?:/|per\\s|pro\\s|au\\s)\\s*.*)?");

    /** {@code /m EUR} instead of {@code EUR/m}. */
    private static final Pattern LENGTH_FIRST =
            Pattern.compile("(?i)^((?:/|per\\s|pro\\s|au\\s)\\s*[\\p{L}]+)[\\s(]+([^\\s()]+)\\)?$");

    /** What a head or the words around a number say. */
    record Terms(Optional<String> currency, Optional<Unit> per) {

        Terms or(Terms other) {
            return new Terms(currency.or(other::currency), per.or(other::per));
        }
    }

    static final Terms UNTOLD = new Terms(Optional.empty(), Optional.empty());

    private final Terms head;
    private final DecimalText decimals;
    private final String source;

    PriceCell(Terms head, DecimalText decimals, String source) {
        this.head = head;
        this.decimals = decimals;
        this.source = source;
    }

    /**
     * The price.
     *
     * @param beside what the row's column of currencies says
     */
    Price read(String cell, Optional<String> beside) {
        Matcher parts = PRICE.matcher(cell.strip());
        if (!parts.matches()) {
            throw refused(Words.quoted(cell) + " is not a price", "write a number, or leave the cell empty");
        }
        String around = parts.group(1).strip() + " " + parts.group(3).strip();
        Terms said = terms(around)
                .orElseThrow(() -> refused(
                        Words.quoted(around.strip()) + " is neither currency nor length",
                        "write as 12.50 EUR/m or 12.50 EUR/yd"));
        Terms terms = said.or(new Terms(beside.map(PriceCell::requiredCurrency), Optional.empty()))
                .or(head);
        double value = decimals.read(field(), parts.group(2));
        Unit per = terms.per()
                .orElseThrow(() -> refused(
                        "nothing says for which length the price is",
                        "head the column price per metre or price per yard"));
        String currency = terms.currency()
                .orElseThrow(() -> refused(
                        "nothing says in which currency",
                        "name it in the head, in a column currency, or with currency=EUR"));
        double perMetre = per.convert(value);
        if (!currency.equals(OURS)) {
            return new Price(
                    Optional.empty(),
                    Optional.of("Price of the list: " + Words.number(perMetre) + " " + currency + " a metre"));
        }
        Property.PRICE_PER_METRE.range().check(perMetre);
        return new Price(Optional.of(Figure.exact(perMetre, Basis.DECLARED, source)), Optional.empty());
    }

    /** Currency and length in words such as {@code EUR/m}; empty where something in them is neither. */
    static Optional<Terms> terms(String words) {
        Matcher parts = AROUND.matcher(LENGTH_FIRST.matcher(words.strip()).replaceFirst("$2 $1"));
        if (!parts.matches()) {
            return Optional.empty();
        }
        String money = parts.group(1).strip();
        Optional<String> currency = currency(money);
        Optional<Unit> per =
                Optional.ofNullable(parts.group(2)).flatMap(length -> Unit.of(Property.PRICE_PER_METRE, metre(length)));
        boolean left = !money.isEmpty() && currency.isEmpty() || parts.group(2) != null && per.isEmpty();
        return left ? Optional.empty() : Optional.of(new Terms(currency, per));
    }

    private static String metre(String length) {
        return length.strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("^(per|pro|au)\\s+", "/")
                .replaceAll("^/\\s+", "/");
    }

    /** The code of a currency, or nothing where the text is none. */
    static Optional<String> currency(String text) {
        String code = SIGNS.getOrDefault(
                text.strip().toLowerCase(Locale.ROOT), text.strip().toUpperCase(Locale.ROOT));
        return CODE.matcher(code).matches() && KNOWN.contains(code) ? Optional.of(code) : Optional.empty();
    }

    static String requiredCurrency(String text) {
        return currency(text)
                .orElseThrow(() -> Refused.of(
                        "currency", Words.quoted(text) + " is no currency", "give its three letters, as EUR"));
    }

    private static String field() {
        return Property.PRICE_PER_METRE.field();
    }

    private static Refused refused(String because, String remedy) {
        return Refused.of(field(), because, remedy);
    }
}
