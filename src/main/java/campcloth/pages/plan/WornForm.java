package campcloth.pages.plan;

import campcloth.cloth.OutfitPart.Kind;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Something worn over or under the garment: a row of the form. A row with nothing in it says nothing. */
public final class WornForm {

    /** How many rows there are for each: project choice. */
    static final int MOST = 4;

    /** What lies between the garment and the skin, and on the legs. */
    static final List<Kind> UNDER = List.of(Kind.SHIRT, Kind.WARM_UNDERWEAR, Kind.UNDER_TUNIC, Kind.HOSE);

    /** What lies over it, and on head, hands and feet. */
    static final List<Kind> OVER = List.of(Kind.OVERGARMENT, Kind.CLOAK, Kind.HOOD, Kind.MITTENS, Kind.FOOTWEAR);

    /** When it is put on, where it is not worn all the time. */
    public enum When {
        COOL
    }

    public @Nullable Kind kind;
    public @Nullable PlainCloth cloth;

    /** Name of a cloth in the catalogue, in place of {@link #cloth}. */
    public @Nullable String named;

    /** Asked of what lies over the garment alone. */
    public @Nullable When when;

    boolean isEmpty() {
        return kind == null && cloth == null && named == null && when == null;
    }

    /** Those in which something was told, numbered anew. */
    static void write(String side, List<WornForm> rows, QueryText query) {
        int number = 0;
        for (WornForm row : rows) {
            if (!row.isEmpty()) {
                String path = side + "[" + number + "].";
                query.add(path + "kind", row.kind).add(path + "cloth", row.cloth);
                query.add(path + "named", row.named).add(path + "when", row.when);
                number++;
            }
        }
    }
}
