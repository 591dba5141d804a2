package campcloth.door;

import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.Mode;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;

/** The door of a service for one person: it stands open, and whoever comes is the owner. */
@Configuration
@ConditionalOnProperty(name = Mode.SETTING, havingValue = "local", matchIfMissing = true)
class LocalDoor {

    @Bean
    FilterRegistrationBean<AskerFilter> asker(Askers askers) {
        FilterRegistrationBean<AskerFilter> filter =
                new FilterRegistrationBean<>(new AskerFilter(askers, request -> Asker.LOCAL));
        filter.setOrder(Ordered.LOWEST_PRECEDENCE);
        return filter;
    }
}
