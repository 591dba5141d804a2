package campcloth.store;

import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The rows of the table {@code cutting_plan}. */
interface PlanRows extends JpaRepository<PlanRow, UUID> {}
