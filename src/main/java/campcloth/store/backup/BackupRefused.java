package campcloth.store.backup;

import org.jspecify.annotations.Nullable;

/** A backup that is not made or not put back: what happened, and what to do about it. */
public final class BackupRefused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    BackupRefused(String happened, String remedy) {
        this(happened, remedy, null);
    }

    BackupRefused(String happened, String remedy, @Nullable Throwable cause) {
        super(happened + " " + remedy, cause);
    }
}
