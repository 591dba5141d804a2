package campcloth.store;

import campcloth.access.Holding;
import campcloth.cloth.ClothTable;
import campcloth.cloth.KeptCloth.Origin;
import java.time.Clock;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Brings the cloths of the catalogue files into the database before the service answers anybody. Loading the same files again
 * changes nothing. A newer catalogue replaces what came from an older one; what users added, changed or removed stays as they
 * left it.
 */
@Component
class CatalogueLoading implements SmartInitializingSingleton {

    private static final Logger LOG = LoggerFactory.getLogger(CatalogueLoading.class);

    private final Catalogue catalogue;
    private final ClothRows rows;
    private final Json json;
    private final Clock clock;
    private final TransactionTemplate transaction;

    CatalogueLoading(Catalogue catalogue, ClothRows rows, Json json, Clock clock, TransactionTemplate transaction) {
        this.catalogue = catalogue;
        this.rows = rows;
        this.json = json;
        this.clock = clock;
        this.transaction = transaction;
    }

    @Override
    public void afterSingletonsInstantiated() {
        transaction.executeWithoutResult(status -> load());
    }

    private void load() {
        rows.lockClock();
        Map<String, ClothRow> known = new HashMap<>();
        rows.findByOriginNot(Origin.OWN).forEach(row -> known.put(row.getId(), row));
        Tick tick = new Tick();
        Instant now = clock.instant();
        int changed = 0;
        for (ClothTable.Entry entry : catalogue.cloths()) {
            String body = json.write(ClothBody.of(entry.cloth()));
            String digest = Digest.of(body);
            ClothRow row = known.remove(entry.id());
            if (row == null) {
                rows.save(new ClothRow(entry.id(), Origin.CATALOGUE, digest, body, tick.get(), now, Holding.COMMON));
                changed++;
            } else if (row.origin() == Origin.CATALOGUE && !row.isRemovedByUser() && !row.hasDigest(digest)) {
                row.become(Origin.CATALOGUE, digest, body, tick.get(), now);
                changed++;
            }
        }
        for (ClothRow left : known.values()) {
            if (left.origin() == Origin.CATALOGUE && !left.isRemoved()) {
                left.removeByCatalogue(tick.get(), now);
                changed++;
            }
        }
        LOG.info(
                "The catalogue has {} cloths; {} were new or changed.",
                catalogue.cloths().size(),
                changed);
    }

    /** One tick for the whole loading, taken only if anything changes. */
    private final class Tick {

        private long tick;

        long get() {
            if (tick == 0) {
                tick = rows.nextTick();
            }
            return tick;
        }
    }
}
