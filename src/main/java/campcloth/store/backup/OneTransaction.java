package campcloth.store.backup;

import java.io.PrintWriter;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/**
 * One connection in one transaction, handed out as though it were as many as are asked for. What its users commit is committed
 * only when the owner of the connection does so: migrations and rows become one piece of work, all of it or nothing. Migrations
 * that forbid a transaction do not go with it.
 */
final class OneTransaction implements DataSource {

    private final Connection connection;

    OneTransaction(Connection connection) {
        this.connection = connection;
    }

    @Override
    public Connection getConnection() {
        AtomicBoolean autoCommit = new AtomicBoolean(true);
        return (Connection) Proxy.newProxyInstance(
                OneTransaction.class.getClassLoader(),
                new Class<?>[] {Connection.class},
                (proxy, method, arguments) -> {
                    switch (method.getName()) {
                        case "commit", "rollback", "close" -> {
                            return null;
                        }
                        case "setAutoCommit" -> {
                            autoCommit.set((Boolean) arguments[0]);
                            return null;
                        }
                        case "getAutoCommit" -> {
                            return autoCommit.get();
                        }
                        default -> {
                            return passed(method, arguments);
                        }
                    }
                });
    }

    private @Nullable Object passed(java.lang.reflect.Method method, Object @Nullable [] arguments) throws Throwable {
        try {
            return method.invoke(connection, arguments);
        } catch (InvocationTargetException failure) {
            throw failure.getTargetException();
        }
    }

    @Override
    public Connection getConnection(String user, String password) {
        return getConnection();
    }

    @Override
    public @Nullable PrintWriter getLogWriter() {
        return null;
    }

    @Override
    public void setLogWriter(@Nullable PrintWriter out) {}

    @Override
    public void setLoginTimeout(int seconds) {}

    @Override
    public int getLoginTimeout() {
        return 0;
    }

    @Override
    public Logger getParentLogger() {
        return Logger.getLogger(Logger.GLOBAL_LOGGER_NAME);
    }

    @Override
    public <T> T unwrap(Class<T> type) throws SQLException {
        throw new SQLException("wraps nothing");
    }

    @Override
    public boolean isWrapperFor(Class<?> type) {
        return false;
    }
}
