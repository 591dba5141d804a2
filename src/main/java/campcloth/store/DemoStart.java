package campcloth.store;

import campcloth.access.Asker;
import campcloth.access.Askers;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** Has the demo put in at the first start on an empty database, unless it is switched off: by the service itself, so that it belongs to nobody. */
@Component
class DemoStart implements SmartInitializingSingleton {

    private final DemoInPostgres demo;
    private final Askers askers;
    private final boolean wanted;

    DemoStart(DemoInPostgres demo, Askers askers, @Value("${campcloth.demo:true}") boolean wanted) {
        this.demo = demo;
        this.askers = askers;
        this.wanted = wanted;
    }

    @Override
    public void afterSingletonsInstantiated() {
        if (wanted) {
            askers.as(Asker.LOCAL, () -> {
                demo.decide();
                return demo;
            });
        }
    }
}
