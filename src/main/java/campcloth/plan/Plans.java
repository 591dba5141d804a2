package campcloth.plan;

import java.util.Optional;
import java.util.function.Consumer;

/** The plans that are kept. Each method is one unit of work. A plan that the asker may not read is as though it were not there. */
public interface Plans {

    KeptPlan add(CuttingPlan plan);

    Optional<KeptPlan> byId(String id);

    /** Hands on the asker's own and common ones, the oldest first. */
    void each(Consumer<KeptPlan> each);
}
