package campcloth.garment.design;

import campcloth.cloth.Layer;
import campcloth.garment.TapeLine;
import java.util.List;

/**
 * A shirt of rectangles: the body folded over the shoulder, straight sleeves gathered into bands, squares under the arms,
 * narrow hems, short splits. Often worn next to the skin, beneath other clothes.
 */
public final class Shirt extends SleevedBody {

    public Shirt() {
        super(
                "Shirt of rectangles",
                new BodyProfile(
                        "shirt",
                        "an easy shirt",
                        120,
                        22,
                        10,
                        UpperBody.length(85, "to the middle of the thigh"),
                        UpperBody.sleeve(60),
                        UpperBody.sleeveTop(42),
                        UpperBody.cuff(TapeLine.WRIST, 14, 22, "round the wrist with room for the hand's edge, closed"),
                        List.of(
                                BodyOptions.onePiece(true),
                                BodyOptions.shoulderRise(),
                                BodyOptions.gusset(12),
                                BodyOptions.cuffBand(),
                                BodyOptions.squareNeck(),
                                BodyOptions.slit(14),
                                BodyOptions.sideSplits(true),
                                BodyOptions.splitLength(),
                                BodyOptions.centreSeams(),
                                BodyOptions.seam(1.5),
                                BodyOptions.hem(2),
                                BodyOptions.cuff())));
    }

    /** Under other clothes where it touches the skin. */
    @Override
    Layer layer(boolean nextToSkin) {
        return nextToSkin ? Layer.SKIN : Layer.OUTER;
    }
}
