package campcloth.store.backup;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes all that is kept into one file, as it stood at one moment, while others go on working. The file has its name only once
 * it is whole and was read through again; it is readable by its owner alone, since it holds everything.
 */
public final class Backup {

    private final Connection connection;
    private final String program;
    private final Instant now;

    /** @param connection of the backup alone; @param program the program's version */
    public Backup(Connection connection, String program, Instant now) {
        this.connection = connection;
        this.program = program;
        this.now = now;
    }

    /** Makes the backup and tells in a sentence what it holds. */
    public String into(Path file) throws SQLException, IOException {
        Path target = file.toAbsolutePath().normalize();
        Path folder = target.getParent();
        if (Files.exists(target) || folder == null || !Files.isDirectory(folder)) {
            throw new BackupRefused(
                    target + (Files.exists(target) ? " is there already." : " lies in no folder."),
                    "Name a new file in a folder that is there; nothing is ever overwritten.");
        }
        Path unfinished = Files.createTempFile(folder, "." + target.getFileName() + ".", ".unfinished");
        try {
            Manifest manifest = written(unfinished);
            BackupFile.verified(unfinished);
            Files.move(unfinished, target, StandardCopyOption.ATOMIC_MOVE);
            return manifest.tables().size() + " tables with " + manifest.rows() + " rows, "
                    + ((Files.size(target) + 1023) >> 10) + " KiB, schema version " + manifest.schemaVersion()
                    + ", are in " + target + ".";
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }

    private Manifest written(Path unfinished) throws SQLException, IOException {
        try (FileChannel channel = FileChannel.open(unfinished, StandardOpenOption.WRITE);
                ZipOutputStream zip = new ZipOutputStream(java.nio.channels.Channels.newOutputStream(channel))) {
            Manifest manifest = tablesIn(zip);
            byte[] text = manifest.written();
            put(zip, BackupFile.MANIFEST, text);
            put(zip, BackupFile.SEAL, Hashed.of(text).getBytes(java.nio.charset.StandardCharsets.US_ASCII));
            zip.finish();
            channel.force(true);
            return manifest;
        }
    }

    private Manifest tablesIn(ZipOutputStream zip) throws SQLException, IOException {
        connection.setAutoCommit(false);
        connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
        connection.setReadOnly(true);
        try {
            Schema schema = new Schema(connection);
            schema.speakPlainly();
            String version = version(schema);
            List<Manifest.Table> tables = new ArrayList<>();
            for (String table : schema.tables()) {
                tables.add(table(schema, table, zip));
            }
            return new Manifest(Manifest.FORMAT, program, version, now.toString(), tables, schema.sequences());
        } finally {
            connection.rollback();
        }
    }

    private static String version(Schema schema) throws SQLException {
        List<String> versions = schema.hasHistory() ? schema.versions() : List.of();
        if (versions.isEmpty()) {
            throw new BackupRefused(
                    "This database holds nothing of Campcloth.",
                    "Name the one that it works with, and start it there once.");
        }
        return versions.get(0);
    }

    private static Manifest.Table table(Schema schema, String table, ZipOutputStream zip)
            throws SQLException, IOException {
        Schema.Columns columns = schema.columns(table);
        zip.putNextEntry(new ZipEntry(BackupFile.entry(table)));
        Hashed hashed = new Hashed(zip);
        long rows = schema.copyOut(table, columns, hashed);
        zip.closeEntry();
        return new Manifest.Table(table, columns.names(), rows, hashed.bytes(), hashed.sha256Hex());
    }

    private static void put(ZipOutputStream zip, String name, byte[] content) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        OutputStream out = zip;
        out.write(content);
        zip.closeEntry();
    }
}
