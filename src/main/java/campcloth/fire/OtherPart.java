package campcloth.fire;

import campcloth.cloth.OutfitPart;
import java.util.List;

/**
 * Others in the place of parts that are sewn into the garment, such as another lining. What stands in their place is judged by
 * itself; told is what the garment comes to where that is clear. The outfit is no part of a {@link FireCase}: the case stays.
 *
 * @param parts what to exchange, at least one
 */
record OtherPart(List<OutfitPart> parts) implements Change {

    OtherPart {
        parts = List.copyOf(parts);
    }

    @Override
    public Kind kind() {
        return Kind.OTHER_PART;
    }

    @Override
    public String to() {
        return "other " + names();
    }

    @Override
    public String todo(FireCase before) {
        boolean thread = parts.stream().allMatch(part -> part.kind() == OutfitPart.Kind.THREAD);
        return thread
                ? "Sew it with another thread: cotton, linen or silk."
                : "Take another " + names()
                        + ", of wool, linen or cotton: it is judged by itself, and nothing may be found against it either.";
    }

    @Override
    public FireCase in(FireCase before) {
        return before;
    }

    private String names() {
        return FibreWords.joined(
                parts.stream().map(part -> part.kind().words()).distinct().toList(), "and");
    }
}
