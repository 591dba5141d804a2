package campcloth.store;

import java.util.List;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

/** The rows of the table {@code errand}. */
interface ErrandRows extends JpaRepository<ErrandRow, UUID> {

    List<ErrandRow> findAllByOrderByCreatedAtDescIdAsc(Limit most);

    /** How many rows went: one or none. */
    @Modifying
    @Query("delete from ErrandRow e where e.id = :id")
    int removeRow(UUID id);
}
