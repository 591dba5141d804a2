package campcloth.rest;

import campcloth.cloth.Cloth;
import campcloth.cloth.Finish;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.ToldMake;
import campcloth.cloth.Weave;
import campcloth.fibre.Blend;
import campcloth.figure.Figure;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A cloth as somebody described it in a request; what follows where nothing was said is {@link ToldMake}'s. */
record Described(
        @Nullable Weave weave,
        @Nullable Surface surface,
        @Nullable Finish finish,
        @Nullable Boolean nap,
        @Nullable Boolean stretch) {

    Cloth cloth(String name, Blend blend, Map<Property, Figure> figures, String note) {
        return new ToldMake(
                        Optional.ofNullable(weave),
                        Optional.ofNullable(surface),
                        Optional.ofNullable(finish),
                        Optional.ofNullable(nap),
                        Optional.ofNullable(stretch))
                .cloth(name, blend, figures, note);
    }
}
