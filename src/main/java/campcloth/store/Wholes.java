package campcloth.store;

import campcloth.cloth.KeptCloth;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The cloths kept whole on the way from one tick to the next, until they are too many. */
final class Wholes {

    private final Map<String, KeptCloth> cloths = new LinkedHashMap<>();
    private final int most;
    private boolean tooMany;

    Wholes(Optional<Map<String, KeptCloth>> before, int most) {
        this.most = most;
        before.ifPresentOrElse(cloths::putAll, () -> tooMany = true);
    }

    void take(ClothReader.Changed changed, int all) {
        if (all > most && !tooMany) {
            tooMany = true;
            cloths.clear();
        }
        if (tooMany) {
            return;
        }
        if (changed.isRemoved()) {
            cloths.remove(changed.id());
        } else {
            cloths.put(changed.id(), changed.kept());
        }
    }

    Optional<Map<String, KeptCloth>> done() {
        return tooMany ? Optional.empty() : Optional.of(Collections.unmodifiableMap(cloths));
    }
}
