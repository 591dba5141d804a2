package campcloth.store;

import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

/** The rows of the table {@code errand}. */
interface ErrandRows extends JpaRepository<ErrandRow, UUID> {

    /** How many rows went: one or none. */
    @Modifying
    @Query("delete from ErrandRow e where e.id = :id")
    int removeRow(UUID id);
}
