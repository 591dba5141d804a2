package campcloth.store;

import campcloth.errand.Errand;
import campcloth.errand.Errands;
import campcloth.errand.KeptErrand;
import campcloth.fibre.Fibres;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The errands that are kept, over PostgreSQL. */
@Component
class ErrandsInPostgres implements Errands {

    private final ErrandRows rows;
    private final Json json;
    private final Fibres fibres;

    ErrandsInPostgres(ErrandRows rows, Json json, Fibres fibres) {
        this.rows = rows;
        this.json = json;
        this.fibres = fibres;
    }

    @Override
    @Transactional
    public KeptErrand add(Errand errand) {
        String body = json.write(ErrandBody.of(errand));
        ErrandRow row = rows.saveAndFlush(new ErrandRow(UUID.randomUUID(), body, errand.createdAt()));
        return new KeptErrand(row.getId().toString(), errand);
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<KeptErrand> byId(String id) {
        return Ids.uuid(id).flatMap(rows::findById).map(this::kept);
    }

    @Override
    @Transactional(readOnly = true)
    public List<KeptErrand> latest(int most) {
        return rows.findAllByOrderByCreatedAtDescIdAsc(Limit.of(most)).stream()
                .map(this::kept)
                .toList();
    }

    @Override
    @Transactional
    public boolean remove(String id) {
        return Ids.uuid(id).map(rows::removeRow).orElse(0) > 0;
    }

    private KeptErrand kept(ErrandRow row) {
        return new KeptErrand(
                row.getId().toString(), json.read(row.body(), ErrandBody.class).errand(fibres));
    }
}
