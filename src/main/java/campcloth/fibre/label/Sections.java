package campcloth.fibre.label;

import campcloth.fibre.LabelReading;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Splits a label into the compositions of its parts. The name of a part stands before its composition; several names joined
 * together share one. A name that follows an unnamed composition must be set off before and not after it, or it might as well
 * name what went before: such a label is refused.
 */
final class Sections {

    private static final String JOINTS = "/&+,";
    private static final String SET_OFF = "\n;.(,*-:";
    private static final String LEADS = ":-(";

    private final List<Piece> pieces;
    private final List<Section> done = new ArrayList<>();
    private final Set<String> seen = new HashSet<>();
    private List<String> parts = List.of(LabelReading.WHOLE);
    private List<Piece> content = new ArrayList<>();
    private int from;
    private int to;
    private int headingTo;

    private Sections(List<Piece> pieces, int length) {
        this.pieces = pieces;
        this.to = length;
    }

    static List<Section> of(List<Piece> pieces, int length) {
        Sections sections = new Sections(pieces, length);
        int at = 0;
        while (at < pieces.size()) {
            at = sections.next(at);
        }
        sections.finish();
        return List.copyOf(sections.done);
    }

    private int next(int at) {
        Piece piece = pieces.get(at);
        if (!piece.is(WordKind.PART)) {
            content.add(piece);
            to = piece.to();
            return at + 1;
        }
        int next = pastNames(at);
        if (isUnnamed() && !Section.saysSomething(content)) {
            begin(at, next, content);
            return next;
        }
        if (isUnnamed()) {
            refuseUnlessLeading(at, next);
        }
        finish();
        begin(at, next, List.of());
        return next;
    }

    private boolean isUnnamed() {
        return parts.contains(LabelReading.WHOLE);
    }

    private int pastNames(int at) {
        int next = at + 1;
        while (next + 1 < pieces.size()
                && joins(pieces.get(next))
                && pieces.get(next + 1).is(WordKind.PART)) {
            next += 2;
        }
        return next;
    }

    private static boolean joins(Piece piece) {
        return piece.is(WordKind.AND) || (piece instanceof Piece.Sign sign && JOINTS.contains(sign.text()));
    }

    private void begin(int at, int next, List<Piece> before) {
        List<String> names = new ArrayList<>();
        for (int i = at; i < next; i += 2) {
            Piece.Known name = (Piece.Known) pieces.get(i);
            String part = name.entry().means().get(0);
            if (!seen.add(part)) {
                throw new Unreadable(
                        name.from(),
                        name.to(),
                        "the part '" + part + "' stands twice",
                        "give each part one composition");
            }
            names.add(part);
        }
        parts = names;
        content = new ArrayList<>(before);
        from = pieces.get(at).from();
        to = pieces.get(next - 1).to();
        headingTo = to;
    }

    private void finish() {
        if (!Section.saysSomething(content)) {
            throw isUnnamed()
                    ? new Unreadable(
                            from,
                            to,
                            "no fibre is named",
                            "write what the label says, such as 70 % linen 30 % polyester, or 'no label'")
                    : new Unreadable(
                            from,
                            headingTo,
                            "no composition stands after '" + String.join(", ", parts) + "'",
                            "write the part first and then its fibres, such as lining: 100 % cotton");
        }
        done.add(new Section(parts, from, to, List.copyOf(content)));
    }

    private void refuseUnlessLeading(int at, int next) {
        boolean setOff = isSign(at - 1, SET_OFF);
        boolean leads = next < pieces.size() && (!(pieces.get(next) instanceof Piece.Sign) || isSign(next, LEADS));
        if (!setOff || !leads) {
            Piece name = pieces.get(at);
            throw new Unreadable(
                    name.from(),
                    name.to(),
                    "it is not clear whether this part goes with the fibres before it or after it",
                    "write each part before its fibres with a colon, such as shell: 100 % cotton; lining: 100 % silk",
                    List.of("it names what stands before it", "it names what stands after it"));
        }
    }

    private boolean isSign(int at, String signs) {
        return pieces.get(at) instanceof Piece.Sign sign && signs.contains(sign.text());
    }
}
