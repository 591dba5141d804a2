package campcloth.store;

import campcloth.plan.CuttingPlan;
import campcloth.plan.KeptPlan;
import campcloth.plan.Plans;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The cutting plans that are kept, over PostgreSQL. */
@Component
class PlansInPostgres implements Plans {

    private final PlanRows rows;
    private final Json json;
    private final Clock clock;

    PlansInPostgres(PlanRows rows, Json json, Clock clock) {
        this.rows = rows;
        this.json = json;
        this.clock = clock;
    }

    @Override
    @Transactional
    public KeptPlan add(CuttingPlan plan) {
        PlanRow row = rows.saveAndFlush(new PlanRow(UUID.randomUUID(), json.write(plan), clock.instant()));
        return new KeptPlan(row.getId().toString(), plan);
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<KeptPlan> byId(String id) {
        return Ids.uuid(id)
                .flatMap(rows::findById)
                .map(row -> new KeptPlan(row.getId().toString(), json.read(row.body(), CuttingPlan.class)));
    }
}
