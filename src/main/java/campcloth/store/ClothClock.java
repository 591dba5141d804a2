package campcloth.store;

import java.util.Objects;
import org.springframework.jdbc.core.JdbcTemplate;

/**
 * How far the changes of the cloths have come in a database.
 *
 * <p>Ticks tell changes apart on one timeline alone. PostgreSQL begins a new one where a copy becomes the first database; what had not
 * come to that copy is lost then, and the ticks of lost changes are given again to others.
 *
 * @param tick of the newest change
 * @param timeline the line of changes that it belongs to; in a copy the one it is known to have come to
 * @param isCopy whether it follows another database and takes no changes of its own
 */
record ClothClock(long tick, int timeline, boolean isCopy) {

    /** Before any change. */
    static final ClothClock NONE = new ClothClock(-1, 0, false);

    /** The name of a file of PostgreSQL's log of changes begins with the timeline; in a copy nothing is written to one. */
    private static final String NOW = """
            select tick, pg_is_in_recovery() as is_copy, case when pg_is_in_recovery()
                then (select greatest(last.timeline_id, least.min_recovery_end_timeline)
                    from pg_control_checkpoint() last, pg_control_recovery() least)
                else cast(cast('x' || left(pg_walfile_name(pg_current_wal_lsn()), 8) as bit(32)) as integer) end as timeline
            from cloth_clock""";

    static ClothClock now(JdbcTemplate sql) {
        return Objects.requireNonNull(sql.queryForObject(
                NOW,
                (row, number) ->
                        new ClothClock(row.getLong("tick"), row.getInt("timeline"), row.getBoolean("is_copy"))));
    }

    boolean isOnTheLineOf(ClothClock other) {
        return timeline == other.timeline;
    }

    /** Whether nothing that the other one tells of is missing here. */
    boolean hasReached(ClothClock other) {
        return isOnTheLineOf(other) && tick >= other.tick;
    }

    /** The same where a newer change was seen. */
    ClothClock atLeast(long seen) {
        return new ClothClock(Math.max(tick, seen), timeline, isCopy);
    }
}
