package campcloth.store;

import campcloth.cloth.Cloth;
import campcloth.cloth.KeptSwatch;
import campcloth.cloth.Swatch;
import campcloth.cloth.SwatchHistory;
import java.util.List;
import org.springframework.stereotype.Component;

/** A cloth with its swatches: what is known with them and without. To be used with the clock of the cloths locked, but for reading. */
@Component
class SwatchedCloth {

    private final SwatchRows rows;
    private final Json json;

    SwatchedCloth(SwatchRows rows, Json json) {
        this.rows = rows;
        this.json = json;
    }

    SwatchHistory history(ClothRow cloth) {
        List<KeptSwatch> swatches = rows.findByClothIdOrderByNumber(cloth.getId()).stream()
                .map(this::kept)
                .toList();
        return SwatchHistory.of(swatches, body(cloth).withoutSwatches());
    }

    ClothBody body(ClothRow cloth) {
        return json.read(cloth.body(), ClothBody.class);
    }

    /** The cloth told, as it is to be kept beside its swatches. */
    ClothBody told(ClothRow row, Cloth cloth) {
        return ClothBody.of(cloth).with(history(row).told(cloth.figures()));
    }

    KeptSwatch kept(SwatchRow row) {
        return new KeptSwatch(
                row.getId().toString(), row.clothId(), row.number(), row.madeAt(), json.read(row.body(), Swatch.class));
    }
}
