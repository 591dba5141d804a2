package campcloth.rest;

import campcloth.cloth.Cloth;
import campcloth.cloth.Finish;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.fibre.Blend;
import campcloth.fibre.FibreFamily;
import campcloth.figure.Figure;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A cloth as somebody described it, with what follows where nothing was said: plain weave as woven; pile is raised and has a nap,
 * knits stretch. Where neither the fibres nor the make are known its face is taken for raised, the worse case: to leave out all
 * that is known makes no cloth better.
 */
record Described(
        @Nullable Weave weave,
        @Nullable Surface surface,
        @Nullable Finish finish,
        @Nullable Boolean nap,
        @Nullable Boolean stretch) {

    Cloth cloth(String name, Blend blend, Map<Property, Figure> figures, String note) {
        Weave woven = weave == null ? Weave.PLAIN : weave;
        return new Cloth(
                name,
                blend,
                woven,
                face(woven, blend),
                finish == null ? Finish.NONE : finish,
                nap == null ? woven.isPile() : nap,
                stretch == null ? woven.isKnit() : stretch,
                figures,
                note);
    }

    private Surface face(Weave woven, Blend blend) {
        boolean nothingKnown = weave == null && surface == null && blend.percentOf(FibreFamily.UNNAMED) > 0;
        if (woven.isPile() || nothingKnown) {
            return Surface.RAISED;
        }
        return surface == null ? Surface.PLAIN : surface;
    }
}
