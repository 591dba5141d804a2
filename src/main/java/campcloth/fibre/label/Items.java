package campcloth.fibre.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The numbers and names of one composition in their order; everything else either becomes a note or is refused. */
final class Items {

    private final List<Item> items = new ArrayList<>();
    private final Set<String> notes;
    private Optional<Piece.Known> pure = Optional.empty();
    private StringBuilder signs = new StringBuilder();

    private Items(Set<String> notes) {
        this.notes = notes;
    }

    static Items of(Section section, Set<String> notes) {
        Items items = new Items(notes);
        for (Piece piece : section.content()) {
            items.take(piece);
        }
        if (items.signs.indexOf(Item.OR) >= 0) {
            throw loneOr(section.from(), section.to());
        }
        return items;
    }

    List<Item> inOrder() {
        return List.copyOf(items);
    }

    /** The word that says there is one fibre only, where it stands. */
    Optional<Piece.Known> pure() {
        return pure;
    }

    private void take(Piece piece) {
        if (piece instanceof Piece.Amount amount) {
            if (signs.indexOf(Item.OR) >= 0) {
                throw loneOr(amount.from(), amount.to());
            }
            add(Item.amount(amount, takeSigns()));
        } else if (piece instanceof Piece.Sign sign) {
            signs.append(sign.text());
        } else if (piece instanceof Piece.Known known) {
            word(known);
        }
    }

    private void word(Piece.Known known) {
        switch (known.entry().kind()) {
            case FIBRE, CODE, US_NAME, OTHER, UNKNOWN, PAIR -> name(known);
            case MODIFIER -> notes.add(modifierNote(known.entry()));
            case REMARK -> {
                notes.add(known.entry().note());
                signs.append(';');
            }
            case AND -> signs.append('&');
            case OR -> signs.append(Item.OR);
            case PURE -> pure = Optional.of(known);
            case OF -> {}
            case HEADING -> refuseUnless(items.isEmpty(), known);
            case CLOTH -> refuseUnless(items.isEmpty() || !last().isAmount(), known);
            case PART, PERCENT, LANGUAGE, AMBIGUOUS, IMITATION -> throw misplaced(known);
        }
    }

    private void name(Piece.Known known) {
        Item name = Item.name(known, takeSigns());
        if (!known.entry().note().isEmpty()) {
            notes.add("'" + known.entry().word() + "': " + known.entry().note());
        }
        if (!items.isEmpty() && name.isSynonymOf(last())) {
            items.set(items.size() - 1, name.mergedInto(last()));
            return;
        }
        if (name.signs().contains(Item.OR)) {
            throw items.isEmpty() || last().isAmount() ? loneOr(known.from(), known.to()) : eitherOr(last(), name);
        }
        add(name);
    }

    private void add(Item item) {
        items.add(item);
    }

    private Item last() {
        return items.get(items.size() - 1);
    }

    private String takeSigns() {
        String taken = signs.toString();
        signs = new StringBuilder();
        return taken;
    }

    private static String modifierNote(Entry entry) {
        return "'" + entry.word() + "': "
                + (entry.note().isEmpty() ? "noted; it leaves the shares as they are" : entry.note());
    }

    private static void refuseUnless(boolean inPlace, Piece.Known known) {
        if (!inPlace) {
            throw misplaced(known);
        }
    }

    private static Unreadable misplaced(Piece.Known known) {
        return new Unreadable(
                known.from(),
                known.to(),
                "'" + known.entry().word() + "' says nothing in this place",
                "write each share with its fibre and leave the rest out");
    }

    private static Unreadable loneOr(int from, int to) {
        return new Unreadable(
                from, to, "an 'or' leaves the composition open", "write what the cloth is made of, without 'or'");
    }

    private static Unreadable eitherOr(Item first, Item second) {
        return new Unreadable(
                first.from(),
                second.to(),
                "an 'or' between different fibres leaves the composition open",
                "write which of the two it is",
                List.of(first.fibres().get(0).name(), second.fibres().get(0).name()));
    }
}
