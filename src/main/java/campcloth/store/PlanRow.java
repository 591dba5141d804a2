package campcloth.store;

import campcloth.access.Holding;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Transient;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.ColumnTransformer;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Persistable;

/** A row of the table {@code cutting_plan}; written once and never changed but for whose it is and its link. */
@Entity
@Table(name = "cutting_plan")
class PlanRow implements Persistable<UUID> {

    @Id
    private UUID id;

    @Column(columnDefinition = "jsonb")
    @ColumnTransformer(write = "?::jsonb")
    private String body;

    private Instant madeAt;

    @Column(updatable = false)
    @Nullable
    private UUID owner;

    @Column(insertable = false, updatable = false)
    @Nullable
    private String shareKey;

    @Transient
    private boolean made;

    /** For the persistence provider. */
    @SuppressWarnings("NullAway.Init")
    protected PlanRow() {}

    PlanRow(UUID id, String body, Instant now, Holding holding) {
        this.id = id;
        this.owner = holding.owner().orElse(null);
        this.body = body;
        this.madeAt = now;
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

    Holding holding() {
        return Held.of(owner, shareKey);
    }

    String body() {
        return body;
    }
}
