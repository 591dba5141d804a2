package campcloth.store;

import campcloth.access.NewIds;
import campcloth.errand.Errand;
import campcloth.errand.Errands;
import campcloth.errand.KeptErrand;
import campcloth.fibre.Fibres;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.data.domain.Limit;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The errands that are kept, over PostgreSQL. */
@Component
class ErrandsInPostgres implements Errands {

    private final ErrandRows rows;
    private final Json json;
    private final Fibres fibres;
    private final JdbcTemplate sql;
    private final NewIds ids;

    ErrandsInPostgres(ErrandRows rows, Json json, Fibres fibres, JdbcTemplate sql, NewIds ids) {
        this.rows = rows;
        this.json = json;
        this.fibres = fibres;
        this.sql = sql;
        this.ids = ids;
    }

    @Override
    @Transactional
    public KeptErrand add(Errand errand) {
        UUID id = ids.next("errand");
        Optional<KeptErrand> there = ids.mayBeThere() ? byId(id.toString()) : Optional.empty();
        if (there.isPresent()) {
            return there.get();
        }
        String body = json.write(ErrandBody.of(errand));
        ErrandRow row = rows.saveAndFlush(new ErrandRow(id, body, errand.createdAt()));
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
    @Transactional(readOnly = true)
    public void each(Consumer<KeptErrand> each) {
        Cursor.each(
                sql,
                "select id, body from errand order by created_at, id",
                row -> each.accept(kept(row.getString("id"), row.getString("body"))));
    }

    @Override
    @Transactional
    public boolean remove(String id) {
        return Ids.uuid(id).map(rows::removeRow).orElse(0) > 0;
    }

    private KeptErrand kept(ErrandRow row) {
        return kept(row.getId().toString(), row.body());
    }

    private KeptErrand kept(String id, String body) {
        return new KeptErrand(id, json.read(body, ErrandBody.class).errand(fibres));
    }
}
