package campcloth.supply;

import campcloth.cloth.Cloth;
import java.util.function.Function;

/** What a cloth is besides its figures, each of which a list may or may not say. */
public enum Trait {
    NAME("name", Cloth::name),
    BLEND("composition", Cloth::blend),
    WEAVE("weave", Cloth::weave),
    SURFACE("surface", Cloth::surface),
    FINISH("finish", Cloth::finish),
    NAP("nap", Cloth::nap),
    STRETCH("stretch", Cloth::stretch),
    NOTE("note", Cloth::note),
    FLAME_TREATMENT("flameTreatment", Cloth::flameTreatment);

    private final String field;
    private final Function<Cloth, Object> value;

    Trait(String field, Function<Cloth, Object> value) {
        this.field = field;
        this.value = value;
    }

    String field() {
        return field;
    }

    Object of(Cloth cloth) {
        return value.apply(cloth);
    }
}
