package campcloth.cloth;

import campcloth.fibre.Blend;
import campcloth.fibre.FibreFamily;
import campcloth.figure.Figure;
import java.util.Map;
import java.util.Optional;

/**
 * The make of a cloth as somebody told it, with what follows where nothing was said: plain weave as woven; pile is raised and has
 * a nap, knits stretch. Where neither the fibres nor the make are known its face is taken for raised, the worse case: to leave out
 * all that is known makes no cloth better.
 */
public record ToldMake(
        Optional<Weave> weave,
        Optional<Surface> surface,
        Optional<Finish> finish,
        Optional<Boolean> nap,
        Optional<Boolean> stretch) {

    /** The cloth of that make. */
    public Cloth cloth(String name, Blend blend, Map<Property, Figure> figures, String note) {
        Weave woven = weave.orElse(Weave.PLAIN);
        return new Cloth(
                name,
                blend,
                woven,
                face(woven, blend),
                finish.orElse(Finish.NONE),
                nap.orElse(woven.isPile()),
                stretch.orElse(woven.isKnit()),
                figures,
                note);
    }

    private Surface face(Weave woven, Blend blend) {
        boolean nothingKnown = weave.isEmpty() && surface.isEmpty() && blend.percentOf(FibreFamily.UNNAMED) > 0;
        return woven.isPile() || nothingKnown ? Surface.RAISED : surface.orElse(Surface.PLAIN);
    }
}
