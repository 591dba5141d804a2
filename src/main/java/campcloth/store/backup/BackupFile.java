package campcloth.store.backup;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import tools.jackson.core.JacksonException;

/** A backup that was read through: whole, and as it was written. The digests find damage; they are no signature. */
final class BackupFile implements AutoCloseable {

    static final String MANIFEST = "manifest.json";
    static final String SEAL = "manifest.sha256";

    /** More than any manifest has. */
    private static final int MOST_MANIFEST_BYTES = 16 << 20;

    private final ZipFile zip;
    private final Manifest manifest;

    private BackupFile(ZipFile zip, Manifest manifest) {
        this.zip = zip;
        this.manifest = manifest;
    }

    static String entry(String table) {
        return "tables/" + table;
    }

    /** Reads it through, and refuses what is not whole. */
    static Manifest verified(Path file) throws IOException {
        try (BackupFile backup = open(file)) {
            return backup.manifest;
        }
    }

    static BackupFile open(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new BackupRefused("There is no file " + file + ".", "Name the file of a backup.");
        }
        ZipFile zip;
        try {
            zip = new ZipFile(file.toFile());
        } catch (ZipException | EOFException broken) {
            throw damaged(file, "it is not a whole ZIP file", broken);
        }
        boolean whole = false;
        try {
            BackupFile backup = new BackupFile(zip, manifest(file, zip));
            backup.check(file);
            whole = true;
            return backup;
        } catch (ZipException | EOFException broken) {
            throw damaged(file, String.valueOf(broken.getMessage()), broken);
        } finally {
            if (!whole) {
                zip.close();
            }
        }
    }

    Manifest manifest() {
        return manifest;
    }

    InputStream rows(Manifest.Table table) throws IOException {
        ZipEntry entry = zip.getEntry(entry(table.name()));
        if (entry == null) {
            throw new ZipException("its table " + table.name() + " is missing");
        }
        return zip.getInputStream(entry);
    }

    private static Manifest manifest(Path file, ZipFile zip) throws IOException {
        byte[] text = small(zip, MANIFEST);
        String seal = new String(small(zip, SEAL), StandardCharsets.US_ASCII).strip();
        if (!Hashed.of(text).equals(seal)) {
            throw new ZipException("its list of contents was changed");
        }
        try {
            Manifest manifest = Manifest.read(text);
            if (manifest.format() != Manifest.FORMAT) {
                throw new BackupRefused(
                        file + " has the form " + manifest.format() + " of a backup, made by Campcloth "
                                + manifest.program() + "; this one reads form " + Manifest.FORMAT + ".",
                        "Put it back with the Campcloth that made it.");
            }
            return manifest;
        } catch (JacksonException unreadable) {
            throw damaged(file, "its list of contents cannot be read", unreadable);
        }
    }

    private static byte[] small(ZipFile zip, String name) throws IOException {
        ZipEntry entry = zip.getEntry(name);
        if (entry == null) {
            throw new ZipException("its entry " + name + " is missing");
        }
        try (InputStream in = zip.getInputStream(entry)) {
            return in.readNBytes(MOST_MANIFEST_BYTES);
        }
    }

    private void check(Path file) throws IOException {
        Set<String> there = zip.stream().map(ZipEntry::getName).collect(Collectors.toSet());
        Set<String> told = new HashSet<>(Set.of(MANIFEST, SEAL));
        manifest.tables().forEach(table -> told.add(entry(table.name())));
        if (!there.equals(told)) {
            throw damaged(file, "it does not hold the tables that it tells of", null);
        }
        for (Manifest.Table table : manifest.tables()) {
            Hashed hashed = new Hashed(OutputStream.nullOutputStream());
            try (InputStream rows = rows(table)) {
                rows.transferTo(hashed);
            }
            if (hashed.bytes() != table.bytes() || !hashed.sha256Hex().equals(table.sha256())) {
                throw damaged(file, "its table " + table.name() + " is not as it was written", null);
            }
        }
    }

    private static BackupRefused damaged(Path file, String how, @org.jspecify.annotations.Nullable Exception cause) {
        return new BackupRefused(
                file + " is no whole backup of Campcloth: " + how + ".",
                "Nothing was written. Take another backup.",
                cause);
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
