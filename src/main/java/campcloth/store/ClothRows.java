package campcloth.store;

import campcloth.cloth.KeptCloth.Origin;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** The rows of the table {@code cloth}. */
interface ClothRows extends JpaRepository<ClothRow, String> {

    /** Those from the catalogue files, where the origin given is that of users' own; their own may be a great many. */
    List<ClothRow> findByOriginNot(Origin origin);

    /** The tick of the newest change that is committed. */
    @Query(value = "select tick from cloth_clock", nativeQuery = true)
    long newestTick();

    /** Moves the clock on; the row stays locked until the transaction ends, so that ticks are committed in order. */
    @Query(value = "update cloth_clock set tick = tick + 1 returning tick", nativeQuery = true)
    long nextTick();

    /** Keeps all others from changing cloths until the transaction ends; to be taken before looking at what to change. */
    @Query(value = "select tick from cloth_clock for update", nativeQuery = true)
    long lockClock();
}
