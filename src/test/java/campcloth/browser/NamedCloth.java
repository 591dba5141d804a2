package campcloth.browser;

import campcloth.cloth.Cloth;
import campcloth.cloth.Cloths;
import campcloth.fibre.Blend;
import campcloth.fibre.Fibres;
import java.util.Map;

/** Cloths that somebody describes by name and fibre alone. */
final class NamedCloth {

    private NamedCloth() {}

    /** Woven as the linen of the catalogue, all of that fibre. */
    static Cloth of(Cloths cloths, Fibres fibres, String name, String fibre) {
        Cloth known = cloths.byId("linen-plain-185").orElseThrow().cloth();
        return new Cloth(
                name,
                Blend.pure(fibres.require(fibre)),
                known.weave(),
                known.surface(),
                known.finish(),
                false,
                false,
                Map.of(),
                "");
    }
}
