package campcloth.outage;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** A small file system in memory, mounted for one trial; needs root on Linux. */
public final class SmallDisk implements AutoCloseable {

    private static final long SECONDS = 20;

    private final Path mount;
    private final Path ballast;

    private SmallDisk(Path mount) {
        this.mount = mount;
        this.ballast = mount.resolve("ballast");
    }

    /** The disk, or nothing where none can be mounted here. */
    public static Optional<SmallDisk> mounted(Path at, int megabytes) throws IOException {
        Files.createDirectories(at);
        return succeeds(
                        "mount",
                        "-t",
                        "tmpfs",
                        "-o",
                        "size=" + megabytes + "m,mode=700",
                        "campcloth-trial",
                        at.toString())
                ? Optional.of(new SmallDisk(at))
                : Optional.empty();
    }

    public Path path() {
        return mount;
    }

    public long freeBytes() throws IOException {
        return Files.getFileStore(mount).getUsableSpace();
    }

    /** Fills it but for so many bytes. */
    public void fill(long leftBytes) throws IOException {
        byte[] some = new byte[16 << 10];
        try (OutputStream out = Files.newOutputStream(ballast)) {
            while (freeBytes() > leftBytes) {
                out.write(some, 0, (int) Math.min(some.length, Math.max(1, freeBytes() - leftBytes)));
            }
        } catch (IOException full) {
            if (!Outage.tellsOfAFullDisk(String.valueOf(full.getMessage()))) {
                throw full;
            }
        }
    }

    public void makeRoom() throws IOException {
        Files.deleteIfExists(ballast);
    }

    private static boolean succeeds(String... command) throws IOException {
        try {
            Process process = new ProcessBuilder(List.of(command))
                    .redirectErrorStream(true)
                    .start();
            return process.waitFor(SECONDS, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return false;
        } catch (IOException noSuchProgram) {
            return false;
        }
    }

    @Override
    public void close() throws IOException {
        if (!succeeds("umount", mount.toString())) {
            succeeds("umount", "-l", mount.toString());
        }
        Files.deleteIfExists(mount);
    }
}
