package campcloth.pages.cloths;

import campcloth.cloth.KeptCloth;
import campcloth.supply.ListOrder;

/** Where a cloth comes from, in one word: its origin, or a list where that gave a figure of one's own cloth. */
final class From {

    private static final String A_LIST = "LIST";

    private From() {}

    static String of(KeptCloth kept) {
        boolean listed = kept.origin() == KeptCloth.Origin.OWN
                && kept.cloth().figures().values().stream().anyMatch(figure -> ListOrder.gave(figure.source()));
        return listed ? A_LIST : kept.origin().name();
    }
}
