package campcloth.store;

import campcloth.access.NewIds;
import campcloth.access.ThingKind;
import campcloth.errand.Errand;
import campcloth.errand.Errands;
import campcloth.errand.KeptErrand;
import campcloth.fibre.Fibres;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The errands that are kept, over PostgreSQL. An errand is never changed, and removed once, whoever is first. */
@Component
class ErrandsInPostgres implements Errands {

    private final ErrandRows rows;
    private final Guard guard;
    private final Json json;
    private final Fibres fibres;
    private final JdbcTemplate sql;
    private final NewIds ids;

    ErrandsInPostgres(ErrandRows rows, Guard guard, Json json, Fibres fibres, JdbcTemplate sql, NewIds ids) {
        this.rows = rows;
        this.guard = guard;
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
        ErrandRow row = rows.saveAndFlush(new ErrandRow(id, body, errand.createdAt(), guard.made()));
        return new KeptErrand(row.getId().toString(), errand);
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<KeptErrand> byId(String id) {
        return row(id).map(this::kept);
    }

    @Override
    @Transactional(readOnly = true)
    public List<KeptErrand> latest(int most) {
        return sql.query(
                "select id, body from errand where " + guard.listed() + " order by created_at desc, id limit ?",
                (row, number) -> kept(row.getString("id"), row.getString("body")),
                most);
    }

    @Override
    @Transactional(readOnly = true)
    public void each(Consumer<KeptErrand> each) {
        Cursor.each(
                sql,
                "select id, body from errand where " + guard.listed() + " order by created_at, id",
                row -> each.accept(kept(row.getString("id"), row.getString("body"))));
    }

    @Override
    @Transactional
    public boolean remove(String id) {
        Optional<ErrandRow> found = row(id);
        found.ifPresent(row -> guard.checkMayChange(row.holding(), ThingKind.SHEET));
        return found.map(row -> rows.removeRow(row.getId())).orElse(0) > 0;
    }

    private Optional<ErrandRow> row(String id) {
        return Ids.uuid(id).flatMap(rows::findById).filter(row -> guard.mayRead(row.holding()));
    }

    private KeptErrand kept(ErrandRow row) {
        return kept(row.getId().toString(), row.body());
    }

    private KeptErrand kept(String id, String body) {
        return new KeptErrand(id, json.read(body, ErrandBody.class).errand(fibres));
    }
}
