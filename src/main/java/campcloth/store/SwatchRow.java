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

/** A row of the table {@code cloth_swatch}; written once, removed where it was a mistake. */
@Entity
@Table(name = "cloth_swatch")
class SwatchRow implements Persistable<UUID> {

    @Id
    private UUID id;

    private String clothId;

    private long number;

    @Column(columnDefinition = "jsonb")
    @ColumnTransformer(write = "?::jsonb")
    private String body;

    private Instant madeAt;

    @Transient
    private boolean made;

    /** For the persistence provider. */
    @SuppressWarnings("NullAway.Init")
    protected SwatchRow() {}

    SwatchRow(UUID id, String clothId, long number, String body, Instant now) {
        this.id = id;
        this.clothId = clothId;
        this.number = number;
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

    String clothId() {
        return clothId;
    }

    long number() {
        return number;
    }

    String body() {
        return body;
    }

    Instant madeAt() {
        return madeAt;
    }
}
