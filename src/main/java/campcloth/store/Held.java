package campcloth.store;

import campcloth.access.Holding;
import campcloth.access.ShareKey;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The columns {@code owner} and {@code share_key} of what is kept. */
final class Held {

    private Held() {}

    static Holding of(@Nullable UUID owner, @Nullable String shareKey) {
        return new Holding(
                Optional.ofNullable(owner), Optional.ofNullable(shareKey).map(ShareKey::new));
    }

    static Holding of(ResultSet row) throws SQLException {
        return of(row.getObject("owner", UUID.class), row.getString("share_key"));
    }
}
