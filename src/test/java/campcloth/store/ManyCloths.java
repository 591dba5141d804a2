package campcloth.store;

import campcloth.cloth.Cloth;
import campcloth.cloth.Finish;
import campcloth.cloth.ShippedCatalogue;
import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes any number of invented cloths by one statement: six thousand makes on the cloths of the catalogue, with other finishes
 * and with another fibre mixed in; the figures of each cloth differ from those of its make. The same number gives the same.
 */
final class ManyCloths {

    private static final int MAKES = 6_000;

    private static final String WRITE = """
            insert into cloth (id, version, tick, origin, body)
            select cast(cast(md5('cloth ' || i) as uuid) as text), 0, ?, 'OWN', jsonb_set(made.body, '{figures}', (
                select coalesce(jsonb_object_agg(key, case when key in ('widthCm', 'pricePerMetre') or key like 'shrink%'
                    then figure else figure || jsonb_build_object(
                        'value', round(times * cast(figure ->> 'value' as numeric), 4),
                        'low', round(times * cast(figure ->> 'low' as numeric), 4),
                        'high', round(times * cast(figure ->> 'high' as numeric), 4)) end), '{}')
                from jsonb_each(made.body -> 'figures') each (key, figure),
                    lateral (select cast(0.86 + 0.28 * mod(cast(i as bigint) * (7919 + 104729 * length(key)), 100003) / 100003.0 as numeric) as times) t))
            from generate_series(1, ?) i join many_makes made on made.number = mod(i, ?)
            """;

    private final IndexedDatabase database;

    ManyCloths(IndexedDatabase database) {
        this.database = database;
    }

    void write(int count) {
        database.writing(sql -> {
            sql.execute("create table many_makes (number integer primary key, body jsonb not null)");
            List<Object[]> bodies = new ArrayList<>();
            for (int make = 0; make < MAKES; make++) {
                bodies.add(new Object[] {make, database.body(cloth(make))});
            }
            sql.batchUpdate("insert into many_makes values (?, cast(? as jsonb))", bodies);
            sql.update(WRITE, database.nextTick(), count, MAKES);
        });
        database.sql().execute("vacuum analyze cloth");
    }

    private static Cloth cloth(int make) {
        List<Cloth> shipped = List.copyOf(ShippedCatalogue.get().cloths().values());
        List<Fibre> fibres = ShippedCatalogue.get().fibres().all();
        Cloth like = shipped.get(make % shipped.size());
        int round = make / shipped.size();
        Fibre other = fibres.get(make % fibres.size());
        Fibre main = like.blend().shares().get(0).fibre();
        double percent = 3 * round;
        Blend blend = round == 0 || main.equals(other)
                ? like.blend()
                : new Blend(List.of(new Blend.Share(main, 100 - percent), new Blend.Share(other, percent)));
        Finish finish = round % 3 == 0 ? like.finish() : Finish.values()[make % Finish.values().length];
        return new Cloth(
                like.name() + " no. " + make,
                blend,
                like.weave(),
                like.surface(),
                finish,
                like.nap(),
                like.stretch(),
                like.figures(),
                like.note(),
                like.flameTreatment());
    }
}
