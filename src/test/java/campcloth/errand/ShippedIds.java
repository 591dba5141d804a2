package campcloth.errand;

import campcloth.cloth.Cloth;
import campcloth.cloth.ShippedCatalogue;
import java.util.Map;
import java.util.function.Predicate;

/** Cloths of the catalogue by what they are. */
final class ShippedIds {

    private ShippedIds() {}

    static String first(Predicate<Cloth> wanted) {
        return ShippedCatalogue.get().cloths().entrySet().stream()
                .filter(entry -> wanted.test(entry.getValue()))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }
}
