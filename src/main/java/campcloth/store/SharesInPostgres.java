package campcloth.store;

import campcloth.access.AuditLog;
import campcloth.access.Holding;
import campcloth.access.NotAllowed;
import campcloth.access.ShareKey;
import campcloth.access.Shares;
import campcloth.access.Standing;
import campcloth.access.ThingKind;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Owners and links over PostgreSQL. Each change keeps the row from others until it is done; one of a cloth takes the lock of the
 * cloths and moves their clock on, so that snapshot and index hear of it like of any other.
 */
@Component
class SharesInPostgres implements Shares {

    private final JdbcTemplate sql;
    private final ClothRows cloths;
    private final Guard guard;
    private final ObjectProvider<AuditLog> audit;
    private final SecureRandom random = new SecureRandom();

    SharesInPostgres(JdbcTemplate sql, ClothRows cloths, Guard guard, ObjectProvider<AuditLog> audit) {
        this.sql = sql;
        this.cloths = cloths;
        this.guard = guard;
        this.audit = audit;
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Standing> of(ThingKind kind, String id) {
        return holding(kind, id, "").map(holding -> Standing.of(holding, kind, guard.asker()));
    }

    @Override
    @Transactional(readOnly = true)
    public Set<String> changeable(ThingKind kind, Collection<String> ids) {
        Set<String> changeable = new HashSet<>();
        sql.query(
                "select cast(id as text) as id, owner, share_key from " + table(kind) + " where id = any (cast(? as "
                        + (kind == ThingKind.CLOTH ? "text" : "uuid") + "[]))",
                row -> {
                    Holding holding = Held.of(row);
                    if (guard.mayRead(holding) && holding.mayChange(guard.asker(), kind.keeper())) {
                        changeable.add(row.getString("id"));
                    }
                },
                (Object) ids.toArray(String[]::new));
        return changeable;
    }

    @Override
    @Transactional
    public Optional<ShareKey> share(ThingKind kind, String id) {
        return forChange(kind, id)
                .map(holding -> holding.key().orElseGet(() -> {
                    ShareKey key = ShareKey.random(random);
                    set(kind, id, "share_key = ?", key.text());
                    note("share", kind, id);
                    return key;
                }));
    }

    @Override
    @Transactional
    public boolean unshare(ThingKind kind, String id) {
        Optional<Holding> found = forChange(kind, id);
        if (found.flatMap(Holding::key).isPresent()) {
            set(kind, id, "share_key = null");
            note("stop sharing", kind, id);
        }
        return found.isPresent();
    }

    @Override
    @Transactional
    public boolean handOver(ThingKind kind, String id) {
        Optional<Holding> found = locked(kind, id);
        if (found.flatMap(Holding::owner).isPresent()) {
            if (!Standing.of(found.get(), kind, guard.asker()).mayHandOver()) {
                throw new NotAllowed(
                        "A cloth is handed over by a keeper, an event by a marshal, and only one of their own."
                                + " Ask an administrator for that role, or share it by a link.");
            }
            set(kind, id, "owner = null");
            note("hand over", kind, id);
        }
        return found.isPresent();
    }

    private Optional<Holding> forChange(ThingKind kind, String id) {
        Optional<Holding> found = locked(kind, id);
        found.ifPresent(holding -> guard.checkMayChange(holding, kind));
        return found;
    }

    private Optional<Holding> locked(ThingKind kind, String id) {
        if (kind == ThingKind.CLOTH) {
            cloths.lockClock();
        }
        return holding(kind, id, " for update");
    }

    private Optional<Holding> holding(ThingKind kind, String id, String lock) {
        Optional<Object> key = key(kind, id);
        if (key.isEmpty()) {
            return Optional.empty();
        }
        String there = kind == ThingKind.CLOTH ? " and removed_by is null" : "";
        List<Holding> found = sql.query(
                "select owner, share_key from " + table(kind) + " where id = ?" + there + lock,
                (row, number) -> Held.of(row),
                key.get());
        return found.stream().filter(guard::mayRead).findFirst();
    }

    private void set(ThingKind kind, String id, String column, Object... values) {
        String tick = kind == ThingKind.CLOTH ? ", tick = " + cloths.nextTick() : "";
        Object[] all =
                Stream.concat(Arrays.stream(values), key(kind, id).stream()).toArray();
        sql.update("update " + table(kind) + " set " + column + tick + " where id = ?", all);
    }

    private void note(String action, ThingKind kind, String id) {
        audit.ifAvailable(log -> log.note(action, kind.words(), id, ""));
    }

    private static Optional<Object> key(ThingKind kind, String id) {
        return kind == ThingKind.CLOTH
                ? Optional.<Object>of(id).filter(text -> id.indexOf(0) < 0)
                : Ids.uuid(id).map(uuid -> uuid);
    }

    private static String table(ThingKind kind) {
        return switch (kind) {
            case CLOTH -> "cloth";
            case EVENT -> "event";
            case CUTTING_PLAN -> "cutting_plan";
            case SHEET -> "errand";
        };
    }
}
