package campcloth.browser;

import campcloth.cloth.Cloth;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.Cloths;
import java.util.Map;

/** Cloths that somebody describes by name and fibre alone. */
final class NamedCloth {

    private NamedCloth() {}

    /** Woven as the linen of the catalogue, all of that fibre. */
    static Cloth of(Cloths cloths, String name, String fibre) {
        Cloth known = cloths.byId("linen-plain-185").orElseThrow().cloth();
        return new Cloth(
                name,
                cloths.matching(ClothSearch.EVERYTHING).stream()
                        .map(kept -> kept.cloth().blend())
                        .filter(blend -> blend.percentOf(fibre) == 100)
                        .findFirst()
                        .orElseThrow(),
                known.weave(),
                known.surface(),
                known.finish(),
                false,
                false,
                Map.of(),
                "");
    }
}
