package campcloth.store;

import campcloth.cloth.KeptCloth;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;

/** Whole cloths that somebody asked for lately, so many at most. */
final class LatelyAsked {

    private final Map<String, KeptCloth> cloths;

    LatelyAsked(int most) {
        this.cloths = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<String, KeptCloth> eldest) {
                return size() > most;
            }
        };
    }

    /** Those of the ids that are here and as new as the columns. */
    synchronized Map<String, KeptCloth> known(Collection<String> ids, Columns columns) {
        Map<String, KeptCloth> known = new HashMap<>();
        for (String id : ids) {
            KeptCloth kept = cloths.get(id);
            OptionalInt row = columns.row(id);
            if (kept != null && row.isPresent() && columns.isAsNew(kept, row.getAsInt())) {
                known.put(id, kept);
            }
        }
        return known;
    }

    synchronized void keep(Collection<KeptCloth> read) {
        read.forEach(
                kept -> cloths.merge(kept.id(), kept, (one, other) -> one.version() > other.version() ? one : other));
    }

    synchronized void forget() {
        cloths.clear();
    }
}
