package campcloth.store;

import campcloth.access.NewIds;
import campcloth.plan.CuttingPlan;
import campcloth.plan.KeptPlan;
import campcloth.plan.Plans;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * The cutting plans that are kept, over PostgreSQL. A plan is never changed nor removed. Whoever may read a sheet may read the plan
 * that it is made from.
 */
@Component
class PlansInPostgres implements Plans {

    private final PlanRows rows;
    private final JdbcTemplate sql;
    private final Guard guard;
    private final Json json;
    private final Clock clock;
    private final NewIds ids;

    PlansInPostgres(PlanRows rows, JdbcTemplate sql, Guard guard, Json json, Clock clock, NewIds ids) {
        this.rows = rows;
        this.sql = sql;
        this.guard = guard;
        this.json = json;
        this.clock = clock;
        this.ids = ids;
    }

    @Override
    @Transactional
    public KeptPlan add(CuttingPlan plan) {
        UUID id = ids.next("plan");
        Optional<KeptPlan> there = ids.mayBeThere() ? byId(id.toString()) : Optional.empty();
        if (there.isPresent()) {
            return there.get();
        }
        PlanRow row = rows.saveAndFlush(new PlanRow(id, json.write(plan), clock.instant(), guard.made()));
        return new KeptPlan(row.getId().toString(), plan);
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<KeptPlan> byId(String id) {
        return Ids.uuid(id)
                .flatMap(rows::findById)
                .filter(row -> guard.mayRead(row.holding()) || standsInASheet(id))
                .map(row -> new KeptPlan(row.getId().toString(), json.read(row.body(), CuttingPlan.class)));
    }

    @Override
    @Transactional(readOnly = true)
    public void each(Consumer<KeptPlan> each) {
        Cursor.each(
                sql,
                "select id, body from cutting_plan where " + guard.listed() + " order by made_at, id",
                row -> each.accept(
                        new KeptPlan(row.getString("id"), json.read(row.getString("body"), CuttingPlan.class))));
    }

    private boolean standsInASheet(String id) {
        return sql
                .query(
                        "select owner, share_key from errand where body ->> 'planId' = ?",
                        (row, number) -> Held.of(row),
                        id)
                .stream()
                .anyMatch(guard::mayRead);
    }
}
