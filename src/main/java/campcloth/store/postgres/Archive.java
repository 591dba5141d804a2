package campcloth.store.postgres;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.apache.commons.compress.compressors.xz.XZCompressorInputStream;

/** Unpacks a {@code .tar.xz} of folders, files and links into a folder, and forces each file to the disk. */
final class Archive {

    private static final int OWNER_MAY_RUN = 0100;

    private Archive() {}

    static void unpack(InputStream packed, Path into) throws IOException {
        try (InputStream buffered = new BufferedInputStream(packed);
                TarArchiveInputStream tar = new TarArchiveInputStream(new XZCompressorInputStream(buffered))) {
            TarArchiveEntry entry = tar.getNextEntry();
            while (entry != null) {
                put(entry, tar, inside(into, entry.getName()), into);
                entry = tar.getNextEntry();
            }
        }
    }

    private static Path inside(Path folder, String name) throws IOException {
        Path target = folder.resolve(name).normalize();
        if (!target.startsWith(folder)) {
            throw new IOException("the archive holds a path that leads out of it: " + name);
        }
        return target;
    }

    private static void put(TarArchiveEntry entry, InputStream content, Path target, Path into) throws IOException {
        if (entry.isDirectory()) {
            Files.createDirectories(target);
            return;
        }
        Files.createDirectories(target.getParent());
        if (entry.isSymbolicLink()) {
            Path pointsAt = Path.of(entry.getLinkName());
            inside(into, into.relativize(target.resolveSibling(pointsAt)).toString());
            Files.createSymbolicLink(target, pointsAt);
            return;
        }
        write(content, target);
        if (DataFolder.knowsPosix(target)) {
            boolean runs = (entry.getMode() & OWNER_MAY_RUN) != 0;
            Files.setPosixFilePermissions(target, PosixFilePermissions.fromString(runs ? "rwx------" : "rw-------"));
        }
    }

    private static void write(InputStream content, Path target) throws IOException {
        try (FileChannel channel = FileChannel.open(target, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
                OutputStream out = Channels.newOutputStream(channel)) {
            content.transferTo(out);
            channel.force(true);
        }
    }
}
