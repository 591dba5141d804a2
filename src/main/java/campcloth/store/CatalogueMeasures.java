package campcloth.store;

import io.micrometer.core.instrument.FunctionTimer;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.MeterBinder;
import java.util.concurrent.TimeUnit;
import org.springframework.stereotype.Component;

/** How large the catalogue in memory is, and what keeping it up to date takes. */
@Component
class CatalogueMeasures implements MeterBinder {

    private final ClothSnapshot snapshot;

    CatalogueMeasures(ClothSnapshot snapshot) {
        this.snapshot = snapshot;
    }

    @Override
    public void bindTo(MeterRegistry registry) {
        Gauge.builder("campcloth.catalogue.cloths", snapshot, ClothSnapshot::held)
                .description("Cloths of the catalogue that are in memory")
                .register(registry);
        FunctionTimer.builder(
                        "campcloth.catalogue.refresh",
                        snapshot,
                        held -> held.refreshes().count(),
                        held -> held.refreshes().nanos(),
                        TimeUnit.NANOSECONDS)
                .description("Times the catalogue in memory was brought up to date")
                .register(registry);
    }
}
