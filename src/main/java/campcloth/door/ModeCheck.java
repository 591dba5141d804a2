package campcloth.door;

import campcloth.access.Mode;
import java.net.InetAddress;
import java.net.UnknownHostException;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.EnvironmentPostProcessor;
import org.springframework.boot.SpringApplication;
import org.springframework.core.Ordered;
import org.springframework.core.env.ConfigurableEnvironment;

/**
 * Before anything else starts: the mode has to be one there is, and a service without logins has to stay on this machine. Runs as the last of
 * its kind, when all settings are there.
 */
class ModeCheck implements EnvironmentPostProcessor, Ordered {

    private static final String ADDRESS = "server.address";

    @Override
    public int getOrder() {
        return Ordered.LOWEST_PRECEDENCE;
    }

    @Override
    public void postProcessEnvironment(ConfigurableEnvironment environment, SpringApplication application) {
        String setting = environment.getProperty(Mode.SETTING, "");
        Mode mode = Mode.named(setting)
                .orElseThrow(() -> new NotStarted(
                        "CAMPCLOTH_MODE is \"" + setting + "\", which is no mode.",
                        "Set it to local (one person on this machine, no login) or hosted (accounts, over a network), or leave it"
                                + " out for local."));
        String address = environment.getProperty(ADDRESS);
        if (mode == Mode.LOCAL && !isLoopback(address)) {
            throw new NotStarted(
                    "In local mode nobody logs in, so everybody who reaches the address \""
                            + (address == null || address.isBlank() ? "any" : address)
                            + "\" could read and change everything.",
                    "Set SERVER_ADDRESS=127.0.0.1 to stay on this machine, or CAMPCLOTH_MODE=hosted to have accounts and logins.");
        }
    }

    /** An address left empty stands for all of the machine's. */
    private static boolean isLoopback(@Nullable String address) {
        if (address == null || address.isBlank()) {
            return false;
        }
        try {
            for (InetAddress one : InetAddress.getAllByName(address)) {
                if (!one.isLoopbackAddress()) {
                    return false;
                }
            }
            return true;
        } catch (UnknownHostException unknown) {
            return false;
        }
    }
}
