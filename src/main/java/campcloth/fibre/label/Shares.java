package campcloth.fibre.label;

import campcloth.fibre.Fibre;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts each number with its fibre. Three forms are read: number and name side by side, whichever comes first; a ratio with as
 * many names in the same order; one fibre said to be pure. Anything else is refused at the item that does not fit.
 */
final class Shares {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final List<Item> items;

    private Shares(List<Item> items) {
        this.items = items;
    }

    static List<Share> of(Items read) {
        Shares shares = new Shares(read.inOrder());
        if (read.pure().isPresent()) {
            return shares.pure(read.pure().get());
        }
        if (shares.isUnknownAlone()) {
            return List.of(new Share(shares.items.get(0).fibre(), HUNDRED));
        }
        if (shares.items.stream().anyMatch(Item::isPair)) {
            return shares.pairByRatio();
        }
        if (shares.pairsOff()) {
            return shares.inPairs();
        }
        return shares.byRatio();
    }

    private boolean isUnknownAlone() {
        return items.size() == 1
                && items.get(0).kind().filter(k -> k == WordKind.UNKNOWN).isPresent();
    }

    private List<Share> pure(Piece.Known word) {
        List<Item> names = items.stream().filter(i -> !i.isAmount()).toList();
        boolean all = items.stream().allMatch(i -> i.percent().orElse(HUNDRED).compareTo(HUNDRED) == 0);
        boolean oneFibre = names.size() == 1
                && names.get(0)
                        .kind()
                        .filter(k -> k == WordKind.FIBRE || k == WordKind.CODE || k == WordKind.US_NAME)
                        .isPresent();
        if (!oneFibre || !all || items.size() > 2) {
            throw new Unreadable(
                    word.from(),
                    word.to(),
                    "'" + word.entry().word() + "' may only stand with a single fibre (Regulation (EU) No 1007/2011,"
                            + " Article 7)",
                    "give every fibre with its share, or the one fibre alone");
        }
        return List.of(new Share(names.get(0).fibre(), HUNDRED));
    }

    private boolean pairsOff() {
        for (int i = 1; i < items.size(); i += 2) {
            if (items.get(i).isAmount() == items.get(i - 1).isAmount()) {
                return false;
            }
        }
        return items.size() % 2 == 0;
    }

    private List<Share> inPairs() {
        refuseWhereSignsContradict();
        List<Share> shares = new ArrayList<>();
        for (int i = 0; i < items.size(); i += 2) {
            boolean numberFirst = items.get(i).isAmount();
            shares.add(share(items.get(numberFirst ? i + 1 : i), items.get(numberFirst ? i : i + 1)));
        }
        return shares;
    }

    /**
     * Punctuation may not tie a number more closely to the neighbour than to its own name; where the order of number and name
     * changes on the way it must tie the number to its name more closely.
     */
    private void refuseWhereSignsContradict() {
        int closest = Integer.MAX_VALUE;
        boolean inTurns = true;
        for (int i = 2; i < items.size(); i += 2) {
            closest = Math.min(closest, items.get(i).gap());
            inTurns &= items.get(i).isAmount() == items.get(0).isAmount();
        }
        for (int i = 1; i < items.size(); i += 2) {
            if (items.get(i).gap() + (inTurns ? 0 : 1) > closest) {
                throw new Unreadable(
                        items.get(i - 1).from(),
                        items.get(i).to(),
                        "the punctuation leaves open which number goes with which fibre",
                        "write each share with its fibre, such as 60 % cotton, 40 % polyester");
            }
        }
    }

    private List<Share> byRatio() {
        int half = items.size() / 2;
        boolean numbersFirst = items.get(0).isAmount();
        boolean grouped = items.size() % 2 == 0 && half >= 2;
        for (int i = 0; grouped && i < items.size(); i++) {
            grouped = items.get(i).isAmount() == (numbersFirst == i < half);
        }
        int firstNumber = numbersFirst ? 0 : half;
        if (!grouped || !isRatio(items.subList(firstNumber, firstNumber + half))) {
            throw misfit();
        }
        List<Share> shares = new ArrayList<>();
        for (int i = 0; i < half; i++) {
            shares.add(share(items.get(half - firstNumber + i), items.get(firstNumber + i)));
        }
        return shares;
    }

    private static boolean isRatio(List<Item> numbers) {
        for (int i = 1; i < numbers.size(); i++) {
            Item number = numbers.get(i);
            boolean tight = number.from() == numbers.get(i - 1).to() + 1;
            if (!number.signs().equals("/") && !(number.signs().equals(":") && tight)) {
                return false;
            }
        }
        return true;
    }

    private List<Share> pairByRatio() {
        Item pair = items.stream().filter(Item::isPair).findFirst().orElseThrow();
        List<Item> numbers = items.stream().filter(Item::isAmount).toList();
        Fibre first = pair.fibres().get(0);
        Fibre second = pair.fibres().get(1);
        boolean together =
                items.size() == 3 && numbers.size() == 2 && !items.get(1).isPair() && isRatio(numbers);
        if (!together
                || share(pair, numbers.get(0))
                                .percent()
                                .compareTo(share(pair, numbers.get(1)).percent())
                        < 0) {
            throw new Unreadable(
                    pair.from(),
                    pair.to(),
                    "'" + pair.word() + "' does not say how much of each fibre there is",
                    "write both shares, such as 65 % " + first.name() + ", 35 % " + second.name(),
                    List.of(
                            "more " + first.name() + " than " + second.name(),
                            "more " + second.name() + " than " + first.name()));
        }
        return List.of(
                new Share(first, share(pair, numbers.get(0)).percent()),
                new Share(second, share(pair, numbers.get(1)).percent()));
    }

    private static Share share(Item name, Item amount) {
        return new Share(name.fibre(), amount.percent().orElseThrow());
    }

    private Unreadable misfit() {
        for (int i = 1; i < items.size(); i++) {
            if (items.get(i).isAmount() && items.get(i - 1).isAmount()) {
                return twoNumbers(items.get(i - 1), items.get(i));
            }
        }
        boolean numberFirst = items.get(0).isAmount();
        for (int i = 1; i < items.size(); i++) {
            if (!items.get(i).isAmount() && !items.get(i - 1).isAmount()) {
                return nameAlone(items.get(numberFirst ? i : i - 1));
            }
        }
        Item last = items.get(items.size() - 1);
        return last.isAmount() ? numberAlone(last) : nameAlone(last);
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

    private Unreadable nameAlone(Item name) {
        return new Unreadable(
                name.from(),
                name.to(),
                "no share stands with '" + name.word() + "'",
                items.size() == 1
                        ? "write 100 % " + name.word() + " where the cloth is of nothing else"
                        : "write the share of every fibre");
    }
}
