package campcloth.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Objects;
import tools.jackson.databind.json.JsonMapper;

/** Puts what stands in people's databases into one, in the forms of its schema's time. */
public final class StoredSamples {

    public static final String EVENT = "fa0c1ba8-9fef-41b6-99f1-25c0402ca007";
    public static final String CLOTH = "remnant-from-the-bin";
    public static final String PLAN = "5d5a3a0e-6f0e-4c0a-8a3b-0d7f1f0a9b01";
    public static final String ERRAND = "0a7c2a54-52c5-4c39-9f6e-7ef8b0f8c3d2";
    public static final String SWATCH = "c1f6b2de-7c53-4f7e-9ed1-2b8a2f6f4e10";

    private StoredSamples() {}

    /** Into a database of that schema version, which has nothing in it but what the migrations put there. */
    public static void fill(Connection connection, int version) throws SQLException, IOException {
        put(connection, "update cloth_clock set tick = 4 where ? is not null", "");
        put(
                connection,
                "insert into cloth (id, version, tick, origin, body) values ('" + CLOTH + "', 3, 4, 'OWN', ?::jsonb)",
                read("v1/cloth"));
        String event = read(version < 3 ? "v1/event" : "v2/event");
        put(
                connection,
                "insert into event (id, version, body, made_at, changed_at) values ('" + EVENT
                        + "', 7, ?::jsonb, '2026-05-01T10:00:00Z', '2026-05-01T10:00:00Z')",
                event);
        put(
                connection,
                "insert into cutting_plan (id, body) values ('" + PLAN + "', ?::jsonb)",
                read("v1/cutting-plan"));
        if (version >= 3) {
            put(
                    connection,
                    "insert into event_rules (event_id, version, rules, kept_at) values ('" + EVENT
                            + "', 7, ?::jsonb, '2026-05-01T10:00:00Z')",
                    JsonMapper.shared().readTree(event).path("rules").toString());
        }
        if (version >= 4) {
            put(
                    connection,
                    "insert into cloth_swatch (id, cloth_id, number, body, made_at) values ('" + SWATCH + "', '" + CLOTH
                            + "', 1, ?::jsonb, '2026-06-01T10:00:00Z')",
                    read("v3/swatch"));
        }
        if (version >= 5) {
            put(
                    connection,
                    "insert into cloth_listing (supplier, supplier_key, cloth_id, said) values ('Wendlow Mill', 'A 7', '"
                            + CLOTH + "', ?::jsonb)",
                    read("v1/cloth"));
        }
        if (version >= 7) {
            put(
                    connection,
                    "insert into errand (id, body, created_at) values ('" + ERRAND
                            + "', ?::jsonb, '2027-05-02T09:30:00Z')",
                    read("v4/errand"));
        }
    }

    private static void put(Connection connection, String command, String value) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(command)) {
            statement.setString(1, value);
            statement.executeUpdate();
        }
    }

    static String read(String name) throws IOException {
        try (var file = StoredSamples.class.getResourceAsStream("/stored/" + name + ".json")) {
            return new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
