package campcloth.store.postgres;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.postgresql.util.PasswordUtil;

/**
 * The way into the server: the address, and the role and database of the application. The role is no superuser, so that
 * the application cannot reach the files of the machine through its database.
 *
 * @param port where the server listens
 * @param secret the password of both roles
 */
record Entry(int port, Secret secret) {

    /** Never gives the password away to what may answer on the port in place of our server. */
    private static final String OPTIONS =
            "?requireAuth=scram-sha-256&sslmode=disable&gssEncMode=disable&ApplicationName=campcloth";

    String url(String database) {
        return "jdbc:postgresql://127.0.0.1:" + port + "/" + database + OPTIONS;
    }

    /** Makes the role and the database if they are missing. */
    void makeIfMissing() {
        try (Connection connection =
                        DriverManager.getConnection(url("postgres"), Settings.SUPERUSER, secret.password());
                Statement statement = connection.createStatement()) {
            if (isMissing(statement, "pg_roles where rolname = '" + Settings.USER + "'")) {
                String hashed = PasswordUtil.encodeScramSha256(secret.password().toCharArray());
                statement.execute("create role " + Settings.USER + " login password '" + hashed + "'");
            }
            if (isMissing(statement, "pg_database where datname = '" + Settings.DATABASE + "'")) {
                statement.execute("create database " + Settings.DATABASE + " owner " + Settings.USER);
            }
        } catch (SQLException failure) {
            throw new DatabaseUnavailable(
                    "PostgreSQL started, but could not be entered: " + failure.getMessage(),
                    "If the file secret was replaced, put the old one back.",
                    failure);
        }
    }

    private static boolean isMissing(Statement statement, String what) throws SQLException {
        try (ResultSet found = statement.executeQuery("select 1 from " + what)) {
            return !found.next();
        }
    }
}
