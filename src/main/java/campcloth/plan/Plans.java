package campcloth.plan;

import java.util.Optional;

/** The plans that are kept. Each method is one unit of work. */
public interface Plans {

    KeptPlan add(CuttingPlan plan);

    Optional<KeptPlan> byId(String id);
}
