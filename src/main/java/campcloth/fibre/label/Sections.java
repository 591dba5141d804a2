package campcloth.fibre.label;

import campcloth.fibre.LabelReading;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Splits a label into the compositions of its parts. The name of a part stands before its composition; several names joined
 * together share one. A name that follows an unnamed composition must be tied to what comes after it, by a colon or by being
 * set off from what went before, or it might as well name the latter: such a label is refused.
 */
final class Sections {

    private static final String JOINTS = "/&+,";
    private static final String SET_OFF = "\n;.(,*-:";
    private static final String LEADS = ":-(";

    private final List<Piece> pieces;
    private final List<Section> done = new ArrayList<>();
    private List<Section.Name> parts = List.of();
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
        return parts.isEmpty();
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
        Map<String, Section.Name> names = new LinkedHashMap<>();
        for (int i = at; i < next; i += 2) {
            Piece.Known name = (Piece.Known) pieces.get(i);
            String part = name.entry().means().get(0);
            names.putIfAbsent(part, new Section.Name(part, name.from(), name.to()));
        }
        parts = List.copyOf(names.values());
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
                            "no composition stands after '"
                                    + parts.stream().map(Section.Name::part).collect(Collectors.joining(", ")) + "'",
                            "write the part first and then its fibres, such as lining: 100 % cotton");
        }
        List<Section.Name> named = isUnnamed() ? List.of(new Section.Name(LabelReading.WHOLE, from, to)) : parts;
        done.add(new Section(named, from, to, List.copyOf(content)));
    }

    private void refuseUnlessLeading(int at, int next) {
        if (!leads(at, next)) {
            Piece name = pieces.get(at);
            throw new Unreadable(
                    name.from(),
                    name.to(),
                    "it is not clear whether this part goes with the fibres before it or after it",
                    "write each part before its fibres with a colon, such as shell: 100 % cotton; lining: 100 % silk",
                    List.of("it names what stands before it", "it names what stands after it"));
        }
    }

    private boolean leads(int at, int next) {
        int breaksBefore = breaks(at - 1, -1);
        int breaksAfter = breaks(next, 1);
        boolean setOff = isSign(at - 1, SET_OFF);
        boolean tied = next < pieces.size() && (!(pieces.get(next) instanceof Piece.Sign) || isSign(next, LEADS));
        return isSign(next, ":") || (setOff && tied) || (breaksBefore > breaksAfter && breaksAfter > 0);
    }

    private int breaks(int at, int step) {
        int breaks = 0;
        while (isSign(at + breaks * step, "\n")) {
            breaks++;
        }
        return breaks;
    }

    private boolean isSign(int at, String signs) {
        return at >= 0
                && at < pieces.size()
                && pieces.get(at) instanceof Piece.Sign sign
                && signs.contains(sign.text());
    }
}
