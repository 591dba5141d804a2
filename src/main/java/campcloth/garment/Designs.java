package campcloth.garment;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.garment.design.Apron;
import campcloth.garment.design.Cloak;
import campcloth.garment.design.GoredSkirt;
import campcloth.garment.design.Gown;
import campcloth.garment.design.Hood;
import campcloth.garment.design.LegWraps;
import campcloth.garment.design.Shirt;
import campcloth.garment.design.Tabard;
import campcloth.garment.design.Trousers;
import campcloth.garment.design.Tunic;
import campcloth.garment.design.WrappedSkirt;
import java.util.List;

/** The designs known. */
public final class Designs {

    private static final List<Design> ALL = List.of(
            new Tunic(),
            new Gown(),
            new Shirt(),
            new Tabard(),
            new Hood(),
            new Cloak(),
            new GoredSkirt(),
            new WrappedSkirt(),
            new Apron(),
            new Trousers(),
            new LegWraps());

    private Designs() {}

    public static List<Design> all() {
        return ALL;
    }

    /** The design of that key; refuses a key that is not known. */
    public static Design named(String key) {
        return ALL.stream()
                .filter(d -> d.key().equals(key))
                .findFirst()
                .orElseThrow(() -> Refused.of(
                        "design",
                        Words.quoted(key) + " is not a design known here",
                        "use one of "
                                + String.join(
                                        ", ", ALL.stream().map(Design::key).toList())));
    }
}
