package campcloth.store;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** The rows of the table {@code event_rules}. */
interface EventRulesRows extends JpaRepository<EventRulesRow, EventRulesRow.Key> {

    /** One version, without its rules. */
    interface Line {
        long getVersion();

        Instant getKeptAt();

        int getCount();

        boolean getChanged();
    }

    @Query(value = "select count(*) from event_rules where event_id = :eventId", nativeQuery = true)
    long countOf(UUID eventId);

    /** The newest versions, newest first. */
    @Query(value = """
                    select version, kept_at as keptAt, jsonb_array_length(rules) as count,
                           rules is distinct from lag(rules) over (order by version) as changed
                    from event_rules where event_id = :eventId order by version desc limit :most
                    """, nativeQuery = true)
    List<Line> newest(UUID eventId, int most);
}
