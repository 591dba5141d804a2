package campcloth.store;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The rows of the table {@code cloth_swatch}. */
interface SwatchRows extends JpaRepository<SwatchRow, UUID> {

    /** The swatches of a cloth in the order they were told. */
    List<SwatchRow> findByClothIdOrderByNumber(String clothId);
}
