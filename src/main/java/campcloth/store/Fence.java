package campcloth.store;

import campcloth.access.NewIds;
import campcloth.access.TakenOver;
import campcloth.access.Turn;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.TransactionExecution;
import org.springframework.transaction.TransactionExecutionListener;

/**
 * Nobody commits under a claim that somebody else has by now. The last thing in each transaction of work under a claim
 * ({@link NewIds#turn}) is a look at the claim, which keeps whoever would take it over waiting until the commit: so either that one finds
 * all that was written, or nothing of it is ever written. However wrongly an instance was taken for dead, nothing is made twice, and
 * nothing that was removed since comes back.
 */
@Component
class Fence implements TransactionExecutionListener {

    private static final String CALL = "select 1 from keyed_call where seed = ? and claim = ? for share";
    private static final String JOB = "select 1 from job where id = ? and claim = ? for share";

    private final JdbcTemplate sql;
    private final NewIds ids;

    Fence(JdbcTemplate sql, NewIds ids) {
        this.sql = sql;
        this.ids = ids;
    }

    @Override
    public void beforeCommit(TransactionExecution transaction) {
        if (!transaction.isReadOnly() && ids.turn().isPresent()) {
            sql.execute((ConnectionCallback<Boolean>) this::holds);
        }
    }

    /** The same where a transaction is ended by hand; true, or it throws. */
    boolean holds(Connection connection) throws SQLException {
        if (ids.turn().isPresent() && !holds(connection, ids.turn().get())) {
            throw new TakenOver();
        }
        return true;
    }

    private static boolean holds(Connection connection, Turn turn) throws SQLException {
        String claim = switch (turn.of()) {
            case CALL -> CALL;
            case JOB -> JOB;
        };
        try (PreparedStatement look = connection.prepareStatement(claim)) {
            look.setObject(1, turn.seed());
            look.setObject(2, turn.claim());
            try (ResultSet row = look.executeQuery()) {
                return row.next();
            }
        }
    }
}
