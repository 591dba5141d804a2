package campcloth.journey;

import campcloth.plan.CuttingPlanner;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;

/** Plans without a long search for their layout: for tests that ask who may make one and who may read it, not how short it is. */
class QuickPlans {

    private static final double LAYOUT_SECONDS = 0.02;

    @Bean
    @Primary
    CuttingPlanner quickPlanner() {
        return new CuttingPlanner(LAYOUT_SECONDS);
    }
}
