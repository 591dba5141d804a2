package campcloth.store.postgres;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * One application at a time in a data folder. Taken before anything in the folder is looked at: otherwise a second
 * application would take the first one's server for a left-over and stop it.
 *
 * <p>The operating system lets go of the lock when the process ends, however it ends. The lock is on a byte far behind
 * the process number that the file holds, so that the number stays readable where locks are mandatory.
 */
final class InstanceLock implements AutoCloseable {

    private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

    /** POSIX drops a process's lock when the process closes any handle on the file, so within it we ask this first. */
    private static final Set<Path> HELD_BY_THIS_PROCESS = ConcurrentHashMap.newKeySet();

    private final Path file;
    private final FileChannel channel;

    private InstanceLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** The lock, or a refusal that names the process that holds it. */
    static InstanceLock take(DataFolder folder) {
        Path file = folder.lock();
        if (!HELD_BY_THIS_PROCESS.add(file)) {
            throw heldBy(folder, Long.toString(ProcessHandle.current().pid()));
        }
        boolean taken = false;
        try {
            FileChannel channel = locked(file);
            if (channel == null) {
                throw heldBy(folder, Files.readString(file).strip());
            }
            taken = true;
            return new InstanceLock(file, channel);
        } catch (IOException failure) {
            throw DatabaseUnavailable.because(failure, file);
        } finally {
            if (!taken) {
                HELD_BY_THIS_PROCESS.remove(file);
            }
        }
    }

    private static @Nullable FileChannel locked(Path file) throws IOException {
        FileChannel channel = FileChannel.open(
                file,
                Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE),
                DataFolder.privately(file, "rw-------"));
        try {
            FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
            if (lock == null) {
                channel.close();
                return null;
            }
            byte[] pid = (ProcessHandle.current().pid() + "\n").getBytes(StandardCharsets.US_ASCII);
            channel.truncate(0);
            channel.write(ByteBuffer.wrap(pid), 0);
            return channel;
        } catch (IOException failure) {
            channel.close();
            throw failure;
        }
    }

    private static DatabaseUnavailable heldBy(DataFolder folder, String pid) {
        return new DatabaseUnavailable(
                "The data folder " + folder.root() + " is in use by another Campcloth (process "
                        + (pid.isEmpty() ? "not known" : pid) + ").",
                "Stop that one, or give this one a folder of its own with CAMPCLOTH_DATA_DIR.");
    }

    @Override
    public void close() throws IOException {
        try {
            channel.close();
        } finally {
            HELD_BY_THIS_PROCESS.remove(file);
        }
    }
}
