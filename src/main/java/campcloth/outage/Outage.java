package campcloth.outage;

import java.io.IOException;
import java.sql.SQLException;
import java.sql.SQLNonTransientConnectionException;
import java.sql.SQLRecoverableException;
import java.sql.SQLTransientConnectionException;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Why a request cannot be answered now although nothing is wrong with it. Told from the codes of PostgreSQL (Appendix A of its
 * manual, "PostgreSQL Error Codes") and from what the operating system says, wherever in the chain of causes they stand, since
 * what lies between wraps them in many ways.
 */
public enum Outage {
    /** The database does not answer, or went away in the middle. */
    DATABASE_AWAY,
    /** Others held what was needed for too long, or it took longer than a request may. */
    CONTENDED,
    /** No room on a disk. What was there before is unharmed and can be read. */
    STORAGE_FULL,
    /** The database takes no changes: it is a copy that only reads, or was told to. */
    READ_ONLY;

    private static final int DEEPEST = 30;

    /**
     * What the pool says, without a code, of a connection that it has given up in the hands of whoever uses it: undoing the work on a
     * broken connection fails so, and hides what broke it.
     */
    private static final String POOL_SAYS_BROKEN = "Connection is closed";

    /** Which outage a failure comes from, if it comes from one; a full disk explains what else is in the chain. */
    public static Optional<Outage> of(Throwable failure) {
        Optional<Outage> found = Optional.empty();
        for (Throwable link : (Iterable<Throwable>) chain(failure)::iterator) {
            Optional<Outage> here = here(link);
            if (here.filter(STORAGE_FULL::equals).isPresent()) {
                return here;
            }
            found = found.or(() -> here);
        }
        return found;
    }

    /** Whether words of the operating system, whichever it is, say that a disk is full. */
    public static boolean tellsOfAFullDisk(String said) {
        String lower = said.toLowerCase(Locale.ROOT);
        return Stream.of("no space left", "disk quota exceeded", "not enough space")
                .anyMatch(lower::contains);
    }

    private static Stream<Throwable> chain(Throwable failure) {
        return Stream.iterate(failure, Outage::next)
                .takeWhile(link -> link != null)
                .limit(DEEPEST)
                .map(link -> (Throwable) link);
    }

    /** The driver hangs what it knows behind a batch's or a pool's failure as the next one, not always as the cause. */
    private static @Nullable Throwable next(@Nullable Throwable link) {
        if (link == null) {
            return null;
        }
        if (link.getCause() != null) {
            return link.getCause();
        }
        return link instanceof SQLException failure ? failure.getNextException() : null;
    }

    private static Optional<Outage> here(Throwable link) {
        if (link instanceof SQLException failure) {
            return ofState(String.valueOf(failure.getSQLState())).or(() -> ofKind(failure));
        }
        if (link instanceof Crowded) {
            return Optional.of(CONTENDED);
        }
        return link instanceof IOException && tellsOfAFullDisk(String.valueOf(link.getMessage()))
                ? Optional.of(STORAGE_FULL)
                : Optional.empty();
    }

    private static Optional<Outage> ofKind(SQLException failure) {
        boolean away = failure instanceof SQLTransientConnectionException
                || failure instanceof SQLNonTransientConnectionException
                || failure instanceof SQLRecoverableException
                || POOL_SAYS_BROKEN.equals(failure.getMessage());
        return away ? Optional.of(DATABASE_AWAY) : Optional.empty();
    }

    private static Optional<Outage> ofState(String state) {
        if (state.startsWith("08")) {
            return Optional.of(DATABASE_AWAY);
        }
        return switch (state) {
            // shut down by its administrator, after a crash, starting up; no place for a connection; idle for too long
            case "57P01", "57P02", "57P03", "57P05", "53300", "25P03" -> Optional.of(DATABASE_AWAY);
            // cancelled for its time limit, lock not to be had, deadlock, order of transactions
            case "57014", "55P03", "40P01", "40001" -> Optional.of(CONTENDED);
            // disk full, out of memory, limit of temporary files, input and output
            case "53100", "53200", "53400", "58030" -> Optional.of(STORAGE_FULL);
            case "25006" -> Optional.of(READ_ONLY);
            default -> Optional.empty();
        };
    }
}
