package campcloth.plan;

import campcloth.figure.Words;
import campcloth.garment.SewingTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a plan says in words of its making: what it saves, the small pieces, the time. */
final class MakingNotes {

    private MakingNotes() {}

    static List<String> notes(Making making, RuleOfThumb rule, boolean bulky) {
        List<String> notes = new ArrayList<>();
        saving(making.rule(), rule).ifPresent(notes::add);
        making.smallPieces().map(MakingNotes::smallPieces).ifPresent(notes::add);
        if (making.smallPieces().isPresent() && bulky) {
            notes.add(
                    "In cloth so thick facings, bands and ties of the same make lumps: cut them from thin, firm cloth of"
                            + " a fibre no worse near fire, or take tape for the ties.");
        }
        double aloneCm = rule.roundedCm() - making.rule().savedCm();
        making.lengthsAtHand().map(several -> atHand(several, aloneCm)).ifPresent(notes::add);
        making.matched().map(MakingNotes::matched).ifPresent(notes::add);
        notes.add(time(making.garments()));
        return notes;
    }

    private static Optional<String> saving(RuleSaving saving, RuleOfThumb rule) {
        if (saving.savedCm() > 0) {
            return Optional.of("Against the rule of thumb (" + rule.words() + ": " + Words.number(rule.roundedCm())
                    + " cm) the layout saves " + Words.number(saving.savedCm()) + " cm"
                    + saving.saved()
                            .map(money -> ", " + Words.fixed(money.amount(), 2) + " " + money.currency())
                            .orElse("")
                    + ".");
        }
        double overRowsCm = saving.rowsBuyCm() - (rule.roundedCm() - saving.savedCm());
        return overRowsCm > 0
                ? Optional.of("In rows as the rule has them, but with seams, hems and shrinkage, the pieces take "
                        + Words.number(saving.rowsBuyCm()) + " cm to buy: the layout saves "
                        + Words.number(overRowsCm) + " cm of that.")
                : Optional.empty();
    }

    private static String smallPieces(SmallPieces small) {
        String what =
                "Small pieces may come from scrap (" + String.join(", ", small.pieces()) + "). From the same cloth ";
        if (small.inOffcuts()) {
            return what + "they lie in what the layout given leaves over: no more cloth is needed.";
        }
        return small.lengthWithCm()
                .map(with -> what + "they take the layout from " + Words.fixed(small.lengthWithoutCm(), 1) + " to "
                        + Words.fixed(with, 1) + " cm" + ", "
                        + Words.number(small.buyLengthWithCm().orElseThrow()) + " cm to buy.")
                .orElse(what + "it was not tried what they take.");
    }

    private static String atHand(SeveralLengths several, double aloneCm) {
        List<String> lengths = new ArrayList<>();
        for (int i = 0; i < several.lengths().size(); i++) {
            SeveralLengths.OnLength length = several.lengths().get(i);
            lengths.add("length " + (i + 1) + " holds "
                    + (length.pieces().isEmpty()
                            ? "nothing"
                            : length.pieces().stream()
                                    .map(PlacedPiece::piece)
                                    .distinct()
                                    .collect(Collectors.joining(", "))));
        }
        return "Of the lengths at hand, " + String.join("; ", lengths) + ". "
                + (several.boltNetCm() == 0
                        ? "Nothing needs to be bought."
                        : "The rest takes " + Words.fixed(several.boltNetCm(), 1) + " cm, "
                                + Words.number(several.buyLengthCm()) + " cm to buy, " + Words.number(aloneCm)
                                + " without those lengths.")
                + (several.boltNetCm() == 0 ? "" : " Another way to divide the pieces may leave less.");
    }

    private static String matched(Matched matched) {
        return "With the pattern matched at the hem and in the middle of each piece (copies of sleeves and small parts with each other), the pieces take "
                + Words.fixed(matched.lengthCm(), 1) + " cm, " + Words.number(matched.buyLengthCm())
                + " cm to buy: " + Words.number(matched.extraCm()) + " cm more than without"
                + matched.extraCost()
                        .map(money -> ", " + Words.fixed(money.amount(), 2) + " " + money.currency())
                        .orElse("")
                + ". The layout given does not match it; the matched places stand beside. A pattern that is not its own"
                + " mirror image matches on one side only.";
    }

    private static String time(List<GarmentWork> works) {
        double least = works.stream()
                .mapToDouble(work -> work.count() * work.time().leastHours())
                .sum();
        double most = works.stream()
                .mapToDouble(work -> work.count() * work.time().mostHours())
                .sum();
        return "Cutting and sewing " + works.get(0).time().by().words() + " takes about " + Words.fixed(least, 0)
                + " to " + Words.fixed(most, 0) + " hours in all (" + SewingTime.BASIS + ").";
    }
}
