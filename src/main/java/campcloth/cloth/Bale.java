package campcloth.cloth;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.fibre.FibreFamily;
import campcloth.fibre.LabelReading;
import campcloth.figure.Figure;
import campcloth.figure.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A bale in a shop, as far as somebody can tell. A label that is not there, or that cannot be read without guessing, names
 * nothing: such cloth is of unknown fibre and, where its face was not told, raised, so that it stands no better than any other.
 *
 * @param reading what came of reading its label; empty where it has none
 * @param make how it looks and feels
 * @param figures what the shop says of it
 */
public record Bale(Optional<LabelReading> reading, ToldMake make, Map<Property, Figure> figures) {

    private static final int LONGEST_NAME = 120;

    /** Whether its label was read from end to end. */
    public boolean isRead() {
        return reading.filter(LabelReading.Read.class::isInstance).isPresent();
    }

    /** Whether its face was not told although that decides how fast it burns: it is taken for plain where the fibres are known. */
    public boolean faceIsPresumed() {
        return isRead()
                && make.surface().isEmpty()
                && make.weave().filter(Weave::isPile).isEmpty();
    }

    /**
     * The cloth it may be, one for each part that the label names: the worst of them stands for the bale.
     *
     * @param unknown the fibre of cloth without a label
     */
    public List<Cloth> mayBe(Fibre unknown) {
        return blends(unknown).stream().map(blend -> of(blend, face(blend))).toList();
    }

    /** The same should its face be raised: fluffy, brushed, napped. */
    public List<Cloth> mayBeRaised(Fibre unknown) {
        return blends(unknown).stream()
                .map(blend -> of(blend, Optional.of(Surface.RAISED)))
                .toList();
    }

    private List<Blend> blends(Fibre unknown) {
        return reading.filter(LabelReading.Read.class::isInstance)
                .map(LabelReading.Read.class::cast)
                .map(read -> read.parts().stream().map(LabelReading.Part::blend).toList())
                .orElseGet(() -> List.of(Blend.pure(unknown)));
    }

    private Optional<Surface> face(Blend blend) {
        boolean named = blend.percentOf(FibreFamily.UNNAMED) == 0;
        return named || make.surface().isPresent() ? make.surface() : Optional.of(Surface.RAISED);
    }

    private Cloth of(Blend blend, Optional<Surface> face) {
        String words = blend.words();
        String name = words.length() > LONGEST_NAME ? words.substring(0, Words.cut(words, LONGEST_NAME)) : words;
        return new ToldMake(make.weave(), face, make.finish(), make.nap(), make.stretch())
                .cloth(name, blend, figures, "");
    }
}
