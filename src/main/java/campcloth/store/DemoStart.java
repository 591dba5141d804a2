package campcloth.store;

import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** Has the demo put in at the first start on an empty database, unless it is switched off. */
@Component
class DemoStart implements SmartInitializingSingleton {

    private final DemoInPostgres demo;
    private final boolean wanted;

    DemoStart(DemoInPostgres demo, @Value("${campcloth.demo:true}") boolean wanted) {
        this.demo = demo;
        this.wanted = wanted;
    }

    @Override
    public void afterSingletonsInstantiated() {
        if (wanted) {
            demo.decide();
        }
    }
}
