package campcloth.store;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** The rows of the table {@code cloth}. */
interface ClothRows extends JpaRepository<ClothRow, String> {

    List<ClothRow> findByTickGreaterThan(long tick);

    /** The tick of the newest change that is committed. */
    @Query(value = "select tick from cloth_clock", nativeQuery = true)
    long newestTick();

    /** Moves the clock on; the row stays locked until the transaction ends, so that ticks are committed in order. */
    @Query(value = "update cloth_clock set tick = tick + 1 returning tick", nativeQuery = true)
    long nextTick();

    /** Lets one instance at a time load the catalogue; freed when the transaction ends. */
    @Query(value = "select 1 from (select pg_advisory_xact_lock(7203541)) as locked", nativeQuery = true)
    int lockCatalogueLoading();
}
