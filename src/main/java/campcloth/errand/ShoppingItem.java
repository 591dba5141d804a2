package campcloth.errand;

import campcloth.plan.Money;
import java.util.Optional;

/**
 * Something to buy.
 *
 * @param kind what it is
 * @param name what to ask for
 * @param amount how much, with its unit
 * @param because where the amount comes from
 * @param cost what it costs, where that is known
 */
public record ShoppingItem(Kind kind, String name, String amount, String because, Optional<Money> cost) {

    /** What there is to buy. */
    public enum Kind {
        CLOTH,
        /** The longer length, should the cloth shrink as much as its figures allow. */
        CLOTH_AT_MOST,
        THREAD,
        NEEDLE,
        /** Facings, ties, bands: from scrap, or from the same cloth. */
        SCRAP,
        /** Buttons, cords, tapes. */
        NOTION,
        /** What is sewn in besides the cloth. */
        SEWN_IN
    }

    static ShoppingItem of(Kind kind, String name, String amount, String because) {
        return new ShoppingItem(kind, name, amount, because, Optional.empty());
    }
}
