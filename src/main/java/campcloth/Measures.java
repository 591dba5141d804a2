package campcloth;

import campcloth.advice.RankingWatch;
import campcloth.job.LayoutGate;
import campcloth.job.RankingGate;
import campcloth.supply.ListDesk;
import io.micrometer.core.instrument.DistributionSummary;
import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.FunctionTimer;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import io.micrometer.core.instrument.binder.MeterBinder;
import java.util.concurrent.TimeUnit;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/**
 * What the core says of its work, as meters. The core counts in plain Java and knows nothing of them. No meter here carries a tag,
 * so that their number stays the same whatever people ask.
 */
@Configuration
class Measures {

    @Bean
    RankingWatch rankingWatch(MeterRegistry registry) {
        Timer timer = Timer.builder("campcloth.ranking")
                .description("Ranking cloths for an event and a garment")
                .register(registry);
        DistributionSummary cloths = DistributionSummary.builder("campcloth.ranking.cloths")
                .description("Cloths that a ranking looked at")
                .register(registry);
        return (ranked, took) -> {
            timer.record(took);
            cloths.record(ranked);
        };
    }

    @Bean
    MeterBinder layoutMeasures(LayoutGate gate) {
        return registry -> {
            Gauge.builder("campcloth.layout.searching", gate, g -> g.load().working())
                    .description("Layouts that are being searched")
                    .register(registry);
            Gauge.builder("campcloth.layout.waiting", gate, g -> g.load().waiting())
                    .description("Requests that wait for a place to search a layout")
                    .register(registry);
            FunctionCounter.builder(
                            "campcloth.layout.turned.away", gate, g -> g.load().turnedAway())
                    .description("Requests answered 503 because too many layouts were being searched")
                    .register(registry);
            FunctionTimer.builder(
                            "campcloth.layout.search",
                            gate,
                            g -> g.load().done(),
                            g -> g.load().inAll().toNanos(),
                            TimeUnit.NANOSECONDS)
                    .description("Searches for a layout")
                    .register(registry);
        };
    }

    @Bean
    MeterBinder rankingMeasures(RankingGate gate) {
        return registry -> {
            Gauge.builder("campcloth.ranking.working", gate, g -> g.load().working())
                    .description("Rankings over the catalogue that are being worked out")
                    .register(registry);
            Gauge.builder("campcloth.ranking.waiting", gate, g -> g.load().waiting())
                    .description("Requests that wait for a place to rank")
                    .register(registry);
            FunctionCounter.builder(
                            "campcloth.ranking.turned.away", gate, g -> g.load().turnedAway())
                    .description("Requests answered 503 because too many rankings were being worked out")
                    .register(registry);
        };
    }

    @Bean
    MeterBinder listMeasures(ListDesk desk) {
        return registry -> {
            Gauge.builder("campcloth.lists.waiting", desk, d -> d.load().waiting())
                    .description("Suppliers' lists that wait for their turn")
                    .register(registry);
            FunctionTimer.builder(
                            "campcloth.lists",
                            desk,
                            d -> d.load().lists(),
                            d -> d.load().inAll().toNanos(),
                            TimeUnit.NANOSECONDS)
                    .description("Suppliers' lists taken over or looked at")
                    .register(registry);
        };
    }
}
