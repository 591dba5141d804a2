package campcloth.store;

import campcloth.access.Holding;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.ColumnTransformer;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Persistable;

/** A row of the table {@code event}. */
@Entity
@Table(name = "event")
class EventRow implements Persistable<UUID> {

    @Id
    private UUID id;

    @Version
    @Nullable
    private Long version;

    @Column(columnDefinition = "jsonb")
    @ColumnTransformer(write = "?::jsonb")
    private String body;

    private Instant madeAt;

    private Instant changedAt;

    @Column(updatable = false)
    @Nullable
    private UUID owner;

    @Column(insertable = false, updatable = false)
    @Nullable
    private String shareKey;

    /** For the persistence provider. */
    @SuppressWarnings("NullAway.Init")
    protected EventRow() {}

    EventRow(UUID id, String body, Instant now, Holding holding) {
        this.id = id;
        this.owner = holding.owner().orElse(null);
        this.body = body;
        this.madeAt = now;
        this.changedAt = now;
    }

    void become(String newBody, Instant now) {
        body = newBody;
        changedAt = now;
    }

    @Override
    public UUID getId() {
        return id;
    }

    @Override
    public boolean isNew() {
        return version == null;
    }

    long version() {
        return version == null ? 0 : version;
    }

    Holding holding() {
        return Held.of(owner, shareKey);
    }

    String body() {
        return body;
    }
}
