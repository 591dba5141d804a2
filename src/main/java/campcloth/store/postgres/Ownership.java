package campcloth.store.postgres;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.UserPrincipal;

/**
 * Whose a folder is. PostgreSQL insists on owning its data, and a server started by the wrong user fails late and
 * darkly, so this is asked first. Who we are is read from a file we make, which holds for every kind of account.
 */
record Ownership(Path folder) {

    /** Refuses a folder that belongs to another user, or that we cannot write. */
    void check() throws IOException {
        if (!DataFolder.knowsPosix(folder)) {
            return;
        }
        UserPrincipal owner = Files.getOwner(folder);
        UserPrincipal we;
        try {
            we = ourselves();
        } catch (AccessDeniedException refused) {
            throw new DatabaseUnavailable(
                    folder + " belongs to the user " + owner.getName() + ", and " + System.getProperty("user.name")
                            + " may not write there.",
                    remedy(owner),
                    refused);
        }
        if (!owner.equals(we)) {
            throw new DatabaseUnavailable(
                    folder + " belongs to the user " + owner.getName() + ", but Campcloth was started by "
                            + we.getName() + ".",
                    remedy(owner));
        }
    }

    private static String remedy(UserPrincipal owner) {
        return "Start it as " + owner.getName() + ", or choose another folder with CAMPCLOTH_DATA_DIR.";
    }

    private UserPrincipal ourselves() throws IOException {
        Path probe = Files.createTempFile(folder, ".probe", "");
        try {
            return Files.getOwner(probe);
        } finally {
            Files.delete(probe);
        }
    }

    /** Whether the folder, and so the user who passed {@link #check}, is root. */
    boolean isRoot() throws IOException {
        return folder.getFileSystem().supportedFileAttributeViews().contains("unix")
                && Integer.valueOf(0).equals(Files.getAttribute(folder, "unix:uid"));
    }
}
