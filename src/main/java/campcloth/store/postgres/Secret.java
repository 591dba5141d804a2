package campcloth.store.postgres;

import static java.nio.file.attribute.PosixFilePermission.OWNER_READ;
import static java.nio.file.attribute.PosixFilePermission.OWNER_WRITE;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Set;

/**
 * The password of the database, 192 random bits made at the first start and readable by the owner of the folder only. It
 * is what keeps other users of the same machine out, since the loopback address is open to all of them.
 */
record Secret(String password) {

    private static final int RANDOM_BYTES = 24;

    /** The stored secret; a new one where the folder has none yet and no cluster that would need the lost one. */
    static Secret of(DataFolder folder, Path cluster) throws IOException {
        Path file = folder.secret();
        if (!Files.exists(file)) {
            refuseToLockOut(file, cluster);
            write(folder, file);
        } else if (DataFolder.knowsPosix(file)) {
            Files.setPosixFilePermissions(file, Set.of(OWNER_READ, OWNER_WRITE));
        }
        String password = Files.readString(file).strip();
        if (password.isEmpty()) {
            throw new DatabaseUnavailable(
                    "The password file " + file + " is empty.", "Put it back from a backup; the data is unharmed.");
        }
        return new Secret(password);
    }

    private static void refuseToLockOut(Path file, Path cluster) {
        if (Files.exists(cluster)) {
            throw new DatabaseUnavailable(
                    "The database in " + cluster + " is there, but its password file " + file + " is missing.",
                    "Put it back from a backup, or start fresh in another folder with CAMPCLOTH_DATA_DIR.");
        }
    }

    private static void write(DataFolder folder, Path file) throws IOException {
        byte[] random = new byte[RANDOM_BYTES];
        new SecureRandom().nextBytes(random);
        String password = Base64.getUrlEncoder().withoutPadding().encodeToString(random);
        Path unfinished = folder.unfinished(file);
        Path draft = Files.createFile(unfinished.resolve("draft"), DataFolder.privately(file, "rw-------"));
        Files.writeString(draft, password + "\n", StandardOpenOption.WRITE, StandardOpenOption.SYNC);
        Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
        Files.delete(unfinished);
    }

    /** Never the password itself: this may end in a log. */
    @Override
    public String toString() {
        return "Secret";
    }
}
