package campcloth.store;

import campcloth.access.Inheritance;
import java.util.UUID;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * What was made before there were accounts, over PostgreSQL. What the demo put in stays common, as do cloths of suppliers' lists: they
 * are the shared catalogue, and the next list changes them again.
 */
@Component
class InheritanceInPostgres implements Inheritance {

    private static final String NOT_OF_THE_DEMO =
            " and not exists (select from demo_thing d where d.kind = '%s' and d.thing_id = %s and d.removed_at is null)";

    private final JdbcTemplate sql;
    private final ClothRows cloths;

    InheritanceInPostgres(JdbcTemplate sql, ClothRows cloths) {
        this.sql = sql;
        this.cloths = cloths;
    }

    @Override
    @Transactional
    public void leaveTo(UUID account) {
        cloths.lockClock();
        sql.update(
                "update event set owner = ? where owner is null"
                        + NOT_OF_THE_DEMO.formatted("EVENT", "cast(event.id as text)"),
                account);
        sql.update("update cutting_plan set owner = ? where owner is null", account);
        sql.update("update errand set owner = ? where owner is null", account);
        sql.update(
                "update cloth set owner = ?, tick = ? where owner is null and origin = 'OWN'"
                        + " and not exists (select from cloth_listing l where l.cloth_id = cloth.id)"
                        + NOT_OF_THE_DEMO.formatted("CLOTH", "cloth.id"),
                account,
                cloths.nextTick());
    }
}
