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

/** A row of the table {@code cutting_plan}; written once and never changed. */
@Entity
@Table(name = "cutting_plan")
class PlanRow implements Persistable<UUID> {

    @Id
    private UUID id;

    @Column(columnDefinition = "jsonb")
    @ColumnTransformer(write = "?::jsonb")
    private String body;

    private Instant madeAt;

    @Transient
    private boolean made;

    /** For the persistence provider. */
    @SuppressWarnings("NullAway.Init")
    protected PlanRow() {}

    PlanRow(UUID id, String body, Instant now) {
        this.id = id;
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

    String body() {
        return body;
    }
}
