package campcloth.store.postgres;

import campcloth.outage.Outage;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** There is no database to work with: one sentence says what happened, one says what the reader can do about it. */
final class DatabaseUnavailable extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String happened;
    private final String remedy;

    DatabaseUnavailable(String happened, String remedy) {
        this(happened, remedy, null);
    }

    DatabaseUnavailable(String happened, String remedy, @Nullable Throwable cause) {
        super(happened + " " + remedy, cause);
        this.happened = happened;
        this.remedy = remedy;
    }

    /** What a failed reading or writing under {@code where} means to the person who started the application. */
    static DatabaseUnavailable because(IOException failure, Path where) {
        String said = String.valueOf(failure.getMessage());
        if (Outage.tellsOfAFullDisk(said)) {
            return new DatabaseUnavailable(
                    "The disk that holds " + where + " is full.",
                    "Free at least 200 MB there, or choose a folder on another disk with CAMPCLOTH_DATA_DIR.",
                    failure);
        }
        if (failure instanceof AccessDeniedException
                || said.contains("Read-only file system")
                || said.contains("Permission denied")) {
            return new DatabaseUnavailable(
                    where + " cannot be written by the user " + System.getProperty("user.name") + " (" + said + ").",
                    "Give that user the folder, or choose another one with CAMPCLOTH_DATA_DIR.",
                    failure);
        }
        return new DatabaseUnavailable(
                "The data folder could not be used: " + failure.getClass().getSimpleName() + ", " + said + ".",
                "Put it right, or choose another folder with CAMPCLOTH_DATA_DIR.",
                failure);
    }

    String happened() {
        return happened;
    }

    String remedy() {
        return remedy;
    }
}
