package campcloth.fibre.label;

import java.util.List;

/** Numbers and names that do not go together, and the first place where that shows. */
final class Misfit {

    private Misfit() {}

    static Unreadable among(List<Item> items) {
        for (int i = 1; i < items.size(); i++) {
            if (items.get(i).isAmount() && items.get(i - 1).isAmount()) {
                return twoNumbers(items.get(i - 1), items.get(i));
            }
        }
        int nameAfterNumber = items.get(0).isAmount() ? 0 : 1;
        for (int i = 1; i < items.size(); i++) {
            if (!items.get(i).isAmount() && !items.get(i - 1).isAmount()) {
                return nameAlone(items.get(i - nameAfterNumber), items.size());
            }
        }
        Item last = items.get(items.size() - 1);
        return last.isAmount() ? numberAlone(last) : nameAlone(last, items.size());
    }

    static Unreadable pair(Item pair) {
        String first = pair.fibres().get(0).name();
        String second = pair.fibres().get(1).name();
        return new Unreadable(
                pair.from(),
                pair.to(),
                "'" + pair.word() + "' does not say how much of each fibre there is",
                "write both shares, such as 65 % " + first + ", 35 % " + second,
                List.of("more " + first + " than " + second, "more " + second + " than " + first));
    }

    static Unreadable pure(Piece.Known word) {
        return new Unreadable(
                word.from(),
                word.to(),
                "'" + word.entry().word()
                        + "' may only stand with a single fibre (Regulation (EU) No 1007/2011, Article 7)",
                "give every fibre with its share, or the one fibre alone");
    }

    static Unreadable punctuation(Item first, Item second) {
        return new Unreadable(
                first.from(),
                second.to(),
                "the punctuation leaves open which number goes with which fibre",
                "write each share with its fibre, such as 60 % cotton, 40 % polyester");
    }

    private static Unreadable twoNumbers(Item first, Item second) {
        if (second.signs().equals("-")) {
            return new Unreadable(
                    first.from(),
                    second.to(),
                    "a range leaves the share open",
                    "write the shares on the label; a ratio is written with a stroke, such as 65/35");
        }
        return new Unreadable(
                first.from(),
                second.to(),
                "two numbers stand together without a fibre between them",
                "write each share with its fibre; a ratio needs as many fibres as numbers, such as 65/35 polyester/cotton");
    }

    private static Unreadable numberAlone(Item number) {
        return new Unreadable(
                number.from(), number.to(), "no fibre stands with this number", "write the fibre that has this share");
    }

    private static Unreadable nameAlone(Item name, int items) {
        return new Unreadable(
                name.from(),
                name.to(),
                "no share stands with '" + name.word() + "'",
                items == 1
                        ? "write 100 % " + name.word() + " where the cloth is of nothing else"
                        : "write the share of every fibre");
    }
}
