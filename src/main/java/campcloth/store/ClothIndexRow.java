package campcloth.store;

import campcloth.cloth.Cloth;
import campcloth.cloth.ClothTraits;
import campcloth.cloth.Property;
import campcloth.cloth.WeightClass;
import campcloth.figure.Figure;
import java.sql.Types;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.SqlParameterValue;

/** A row of the table {@code cloth_index} before its words are stemmed. */
record ClothIndexRow(String id, Optional<UUID> owner, Cloth cloth, ClothWords words, ClothTraits traits) {

    static final String WRITE = """
            insert into cloth_index
                (cloth_id, name, near, words, fibres, weight_gsm, weight_class, seasons, fire_grade, price_per_metre, owner)
            values (?, ?, ?, cast(? as tsvector), ?, ?, ?, ?, ?, ?, ?)
            on conflict (cloth_id) do update set
                name = excluded.name, near = excluded.near, words = excluded.words, fibres = excluded.fibres,
                weight_gsm = excluded.weight_gsm, weight_class = excluded.weight_class, seasons = excluded.seasons,
                fire_grade = excluded.fire_grade, price_per_metre = excluded.price_per_metre, owner = excluded.owner""";

    /** The values of {@link #WRITE} in their order. */
    Object[] values(String vector) {
        return new Object[] {
            id,
            String.join(" ", words.name()),
            String.join(" ", words.near()),
            vector,
            cloth.blend().shares().stream().map(share -> share.fibre().key()).toArray(String[]::new),
            figure(Property.WEIGHT_GSM),
            new SqlParameterValue(
                    Types.VARCHAR, WeightClass.of(cloth).map(Enum::name).orElse(null)),
            traits.seasons().toArray(String[]::new),
            traits.fireGrade(),
            figure(Property.PRICE_PER_METRE),
            new SqlParameterValue(Types.OTHER, owner.orElse(null))
        };
    }

    private SqlParameterValue figure(Property property) {
        return new SqlParameterValue(
                Types.DOUBLE, cloth.figure(property).map(Figure::value).orElse(null));
    }
}
