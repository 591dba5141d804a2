package campcloth.store.backup;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.configuration.FluentConfiguration;

/**
 * Puts a backup into an empty database: makes the schema as it was then, puts the rows in, reads them out again and compares, and
 * brings the schema up to date. All in one transaction: where anything fails, the database is as empty as before.
 */
public final class Restore {

    private final Connection connection;
    private final Schema schema;
    private final OneTransaction transaction;
    private final String migrations;

    /** @param connection of the restoring alone */
    public Restore(Connection connection) {
        this(connection, "classpath:db/migration");
    }

    /** @param migrations where they lie */
    Restore(Connection connection, String migrations) {
        this.migrations = migrations;
        this.connection = connection;
        this.schema = new Schema(connection);
        this.transaction = new OneTransaction(connection);
    }

    /** Puts the backup back and tells in a sentence what it was. */
    public String from(Path file) throws SQLException, IOException {
        try (BackupFile backup = BackupFile.open(file)) {
            Manifest manifest = backup.manifest();
            MigrationVersion newest = newest();
            if (MigrationVersion.fromVersion(manifest.schemaVersion()).compareTo(newest) > 0) {
                throw new BackupRefused(
                        "The backup was made by a newer Campcloth (" + manifest.program() + ", schema version "
                                + manifest.schemaVersion() + "); this one knows " + newest + ". Nothing was written.",
                        "Put it back with that version or a newer one.");
            }
            connection.setAutoCommit(false);
            try {
                putBack(backup, manifest);
                connection.commit();
            } finally {
                connection.rollback();
            }
            return manifest.tables().size() + " tables with " + manifest.rows() + " rows of " + manifest.takenAt()
                    + " are back; schema version " + manifest.schemaVersion() + " was brought to " + newest + ".";
        }
    }

    private void putBack(BackupFile backup, Manifest manifest) throws SQLException, IOException {
        List<String> there = schema.everything();
        if (!there.isEmpty()) {
            throw new BackupRefused(
                    "The database is not empty: it holds " + there.get(0)
                            + (there.size() > 1 ? " and " + (there.size() - 1) + " more." : "."),
                    "Nothing was written. Name an empty database, or with CAMPCLOTH_DATA_DIR a new folder.");
        }
        migrations().target(manifest.schemaVersion()).load().migrate();
        schema.speakPlainly();
        refuseOtherTables(manifest);
        List<String> linked = unlinked();
        rows(backup, manifest);
        linked(linked);
        compare(manifest);
        migrations().load().migrate();
        schema.execute("analyze");
    }

    private FluentConfiguration migrations() {
        return Flyway.configure().locations(migrations).dataSource(transaction);
    }

    private MigrationVersion newest() {
        MigrationInfo[] known = migrations().load().info().all();
        return Arrays.stream(known)
                .map(MigrationInfo::getVersion)
                .filter(version -> version != null)
                .max(MigrationVersion::compareTo)
                .orElseThrow();
    }

    private void refuseOtherTables(Manifest manifest) throws SQLException {
        List<String> told = manifest.tables().stream().map(Manifest.Table::name).toList();
        if (!schema.tables().equals(told)) {
            throw new BackupRefused(
                    "The backup holds other tables than schema version " + manifest.schemaVersion() + " has: " + told
                            + ".",
                    "Nothing was written. Put it back with the Campcloth that made it (" + manifest.program() + ").");
        }
        for (Manifest.Table table : manifest.tables()) {
            if (!schema.columns(table.name()).names().equals(table.columns())) {
                throw new BackupRefused(
                        "The table " + table.name() + " of the backup has other columns than this version's.",
                        "Nothing was written. Put it back with the Campcloth that made it (" + manifest.program()
                                + ").");
            }
        }
    }

    /**
     * Lets rows that refer to each other come in any order, and keeps triggers from making more of them; answers with what to put
     * right again.
     */
    private List<String> unlinked() throws SQLException {
        List<String> links = schema.texts("""
                select 'alter table ' || quote_ident(t.relname) || ' alter constraint ' || quote_ident(c.conname)
                from pg_constraint c join pg_class t on t.oid = c.conrelid join pg_namespace n on n.oid = t.relnamespace
                where n.nspname = current_schema() and c.contype = 'f' and not c.condeferrable and c.conparentid = 0
                """);
        for (String link : links) {
            schema.execute(link + " deferrable initially deferred");
        }
        for (String table : schema.tables()) {
            schema.execute("alter table " + table + " disable trigger user");
        }
        return links;
    }

    private void linked(List<String> links) throws SQLException {
        schema.execute("set constraints all immediate");
        for (String link : links) {
            schema.execute(link + " not deferrable");
        }
        for (String table : schema.tables()) {
            schema.execute("alter table " + table + " enable trigger user");
        }
    }

    /** What the migrations put in themselves stands in the backup as it was later. */
    private void rows(BackupFile backup, Manifest manifest) throws SQLException, IOException {
        List<String> tables = new ArrayList<>(schema.tables());
        if (!tables.isEmpty()) {
            schema.execute("truncate " + String.join(", ", tables));
        }
        for (Manifest.Table table : manifest.tables()) {
            try (InputStream rows = backup.rows(table)) {
                long came = schema.copyIn(table.name(), table.columns(), rows);
                if (came != table.rows()) {
                    throw different(table);
                }
            }
        }
        for (Manifest.Sequence sequence : manifest.sequences()) {
            schema.execute("select setval('" + sequence.name().replace("'", "''") + "', " + sequence.lastValue() + ")");
        }
    }

    private void compare(Manifest manifest) throws SQLException, IOException {
        for (Manifest.Table table : manifest.tables()) {
            Hashed hashed = new Hashed(OutputStream.nullOutputStream());
            long rows = schema.copyOut(table.name(), schema.columns(table.name()), hashed);
            if (rows != table.rows() || !hashed.sha256Hex().equals(table.sha256())) {
                throw different(table);
            }
        }
    }

    private static BackupRefused different(Manifest.Table table) {
        return new BackupRefused(
                "The table " + table.name() + " did not come back as it was.", "Nothing was written. Tell of it.");
    }
}
