package campcloth.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Transient;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.ColumnTransformer;
import org.springframework.data.domain.Persistable;

/** A row of the table {@code errand}; written once and never changed. */
@Entity
@Table(name = "errand")
class ErrandRow implements Persistable<UUID> {

    @Id
    private UUID id;

    @Column(columnDefinition = "jsonb")
    @ColumnTransformer(write = "?::jsonb")
    private String body;

    private Instant createdAt;

    @Transient
    private boolean made;

    /** For the persistence provider. */
    @SuppressWarnings("NullAway.Init")
    protected ErrandRow() {}

    ErrandRow(UUID id, String body, Instant createdAt) {
        this.id = id;
        this.body = body;
        this.createdAt = createdAt;
        this.made = true;
    }

    @Override
    public UUID getId() {
        return id;
    }

    @Override
    public boolean isNew() {
        return made;
    }

    String body() {
        return body;
    }
}
