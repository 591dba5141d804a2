package campcloth.plan;

import java.util.Optional;
import java.util.function.Consumer;

/** The plans that are kept. Each method is one unit of work. */
public interface Plans {

    KeptPlan add(CuttingPlan plan);

    Optional<KeptPlan> byId(String id);

    /** Hands on every one that is kept, the oldest first. */
    void each(Consumer<KeptPlan> each);
}
