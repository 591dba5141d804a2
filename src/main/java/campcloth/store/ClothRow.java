package campcloth.store;

import campcloth.access.Holding;
import campcloth.cloth.KeptCloth.Origin;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.ColumnTransformer;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Persistable;

/** A row of the table {@code cloth}. */
@Entity
@Table(name = "cloth")
class ClothRow implements Persistable<String> {

    /** Who took a cloth out of the catalogue; the row stays, so that it does not come back by itself. */
    enum RemovedBy {
        USER,
        CATALOGUE
    }

    @Id
    private String id;

    @Version
    @Nullable
    private Long version;

    private long tick;

    @Enumerated(EnumType.STRING)
    private Origin origin;

    @Enumerated(EnumType.STRING)
    @Nullable
    private RemovedBy removedBy;

    @Nullable
    private String catalogueDigest;

    @Column(columnDefinition = "jsonb")
    @ColumnTransformer(write = "?::jsonb")
    private String body;

    private Instant changedAt;

    @Column(updatable = false)
    @Nullable
    private UUID owner;

    @Column(insertable = false, updatable = false)
    @Nullable
    private String shareKey;

    /** For the persistence provider. */
    @SuppressWarnings("NullAway.Init")
    protected ClothRow() {}

    ClothRow(
            String id,
            Origin origin,
            @Nullable String catalogueDigest,
            String body,
            long tick,
            Instant now,
            Holding holding) {
        this.id = id;
        this.owner = holding.owner().orElse(null);
        this.origin = origin;
        this.catalogueDigest = catalogueDigest;
        this.body = body;
        this.tick = tick;
        this.changedAt = now;
    }

    void become(Origin newOrigin, @Nullable String newDigest, String newBody, long newTick, Instant now) {
        origin = newOrigin;
        catalogueDigest = newDigest;
        body = newBody;
        removedBy = null;
        tick = newTick;
        changedAt = now;
    }

    void removeByUser(long newTick, Instant now) {
        remove(RemovedBy.USER, newTick, now);
    }

    /** Takes the row out because its catalogue no longer has it; another catalogue may bring it back. */
    void removeByCatalogue(long newTick, Instant now) {
        remove(RemovedBy.CATALOGUE, newTick, now);
        catalogueDigest = null;
    }

    private void remove(RemovedBy by, long newTick, Instant now) {
        removedBy = by;
        tick = newTick;
        changedAt = now;
    }

    @Override
    public String getId() {
        return id;
    }

    @Override
    public boolean isNew() {
        return version == null;
    }

    long version() {
        return version == null ? 0 : version;
    }

    long tick() {
        return tick;
    }

    Origin origin() {
        return origin;
    }

    boolean isRemoved() {
        return removedBy != null;
    }

    boolean isRemovedByUser() {
        return removedBy == RemovedBy.USER;
    }

    boolean hasDigest(String digest) {
        return digest.equals(catalogueDigest);
    }

    Holding holding() {
        return Held.of(owner, shareKey);
    }

    String body() {
        return body;
    }
}
