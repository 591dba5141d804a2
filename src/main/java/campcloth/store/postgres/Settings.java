package campcloth.store.postgres;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * How the server is set, beyond PostgreSQL's defaults. What people entered must survive a power cut, so the three durable
 * settings are written out although they are the defaults; only this machine may connect, and only with the password.
 */
final class Settings {

    static final String SUPERUSER = "postgres";
    static final String USER = "campcloth";
    static final String DATABASE = "campcloth";

    /** Who may connect, from where, how: nobody but with the password, over the loopback address. */
    static final String ACCESS = """
            # Written by Campcloth when the database was made.
            host all all 127.0.0.1/32 scram-sha-256
            """;

    private Settings() {}

    static String on(int port, boolean readOnly) {
        Map<String, String> settings = new LinkedHashMap<>();
        settings.put("fsync", "on");
        settings.put("full_page_writes", "on");
        settings.put("synchronous_commit", "on");
        settings.put("listen_addresses", "127.0.0.1");
        settings.put("port", Integer.toString(port));
        settings.put("unix_socket_directories", "");
        settings.put("password_encryption", "scram-sha-256");
        settings.put("max_connections", "40");
        settings.put("shared_buffers", "64MB");
        settings.put("timezone", "UTC");
        settings.put("log_timezone", "UTC");
        settings.put("default_transaction_read_only", readOnly ? "on" : "off");
        return "# Written by Campcloth at every start.\n"
                + settings.entrySet().stream()
                        .map(setting -> setting.getKey() + " = '" + setting.getValue() + "'\n")
                        .collect(Collectors.joining());
    }
}
