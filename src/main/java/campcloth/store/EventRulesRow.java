package campcloth.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Transient;
import java.io.Serializable;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.ColumnTransformer;
import org.springframework.data.domain.Persistable;

/** A row of the table {@code event_rules}; written once and never changed. */
@Entity
@Table(name = "event_rules")
class EventRulesRow implements Persistable<EventRulesRow.Key> {

    /** Which version of which event. */
    @Embeddable
    record Key(UUID eventId, long version) implements Serializable {}

    @EmbeddedId
    private Key id;

    @Column(columnDefinition = "jsonb")
    @ColumnTransformer(write = "?::jsonb")
    private String rules;

    private Instant keptAt;

    @Transient
    private boolean made;

    /** For the persistence provider. */
    @SuppressWarnings("NullAway.Init")
    protected EventRulesRow() {}

    EventRulesRow(Key id, String rules, Instant now) {
        this.id = id;
        this.rules = rules;
        this.keptAt = now;
        this.made = true;
    }

    @Override
    public Key getId() {
        return id;
    }

    @Override
    public boolean isNew() {
        return made;
    }

    String rules() {
        return rules;
    }

    Instant keptAt() {
        return keptAt;
    }
}
