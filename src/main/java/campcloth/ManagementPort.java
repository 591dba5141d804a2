package campcloth;

import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.boot.EnvironmentPostProcessor;
import org.springframework.boot.SpringApplication;
import org.springframework.core.Ordered;
import org.springframework.core.env.ConfigurableEnvironment;
import org.springframework.core.env.MapPropertySource;

/**
 * Health and measurements of a hosted service stand on a port of their own, so that what is published to people never shows them;
 * and a port of their own listens on the loopback address. Both are defaults: {@code MANAGEMENT_SERVER_PORT} and
 * {@code MANAGEMENT_SERVER_ADDRESS} say otherwise.
 */
public final class ManagementPort implements EnvironmentPostProcessor, Ordered {

    static final String PORT = "management.server.port";
    static final String ADDRESS = "management.server.address";

    @Override
    public void postProcessEnvironment(ConfigurableEnvironment environment, SpringApplication application) {
        boolean hosted = "hosted".equalsIgnoreCase(environment.getProperty("campcloth.mode", "local"));
        String servicePort = environment.getProperty("server.port", "8080");
        // A service that takes any free port takes another free one for this.
        String hostedPort = servicePort.equals("0") ? "0" : "8081";
        String port = environment.getProperty(PORT, hosted ? hostedPort : "");
        if (port.isEmpty() || (port.equals(servicePort) && !port.equals("0"))) {
            return;
        }
        Map<String, Object> defaults = new LinkedHashMap<>();
        defaults.put(PORT, port);
        defaults.put(ADDRESS, "127.0.0.1");
        environment.getPropertySources().addLast(new MapPropertySource("management port", defaults));
    }

    /** After the files of settings are read. */
    @Override
    public int getOrder() {
        return Ordered.LOWEST_PRECEDENCE - 10;
    }
}
