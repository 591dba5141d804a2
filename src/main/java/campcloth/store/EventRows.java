package campcloth.store;

import jakarta.persistence.LockModeType;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

/** The rows of the table {@code event}. */
interface EventRows extends JpaRepository<EventRow, UUID> {

    /** The row, kept from others until the transaction ends. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select e from EventRow e where e.id = :id")
    Optional<EventRow> findForChange(UUID id);
}
