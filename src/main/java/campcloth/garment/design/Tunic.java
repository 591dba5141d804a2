package campcloth.garment.design;

import campcloth.cloth.Layer;
import campcloth.garment.HemEdge;
import campcloth.garment.TapeLine;
import java.util.List;

/**
 * A straight tunic in two halves with shoulder seams and two sleeves set on flat, a round neck with a slit.
 *
 * <p>The plain tunic is straight, so that front and back can lie side by side; {@code flareCm} widens each half to the hem
 * on both sides (5 cm is usual), which takes that away. To the knee it covers 65 % of the body.
 */
public final class Tunic extends SleevedBody {

    public Tunic() {
        super(
                "Tunic",
                new BodyProfile(
                        "tunic",
                        "a loose fit",
                        126,
                        28,
                        10,
                        UpperBody.length(95, "to the knee"),
                        UpperBody.sleeve(53),
                        UpperBody.sleeveTop(40),
                        UpperBody.cuff(TapeLine.SLEEVE_END, 14, 30, "round the loose opening of the sleeve"),
                        List.of(
                                BodyOptions.sideSplits(false),
                                BodyOptions.splitLength(),
                                BodyOptions.flare(),
                                BodyOptions.slit(8),
                                BodyOptions.centreSeams(),
                                BodyOptions.seam(2),
                                BodyOptions.hem(HemEdge.Kind.BODY.usualAllowanceCm()),
                                BodyOptions.cuff(),
                                BodyOptions.onePiece(false),
                                BodyOptions.shoulderRise(),
                                BodyOptions.sideGores(false),
                                BodyOptions.frontBackGores(),
                                BodyOptions.halvedGores(),
                                BodyOptions.goreWidth(30),
                                BodyOptions.goreHeight(50),
                                BodyOptions.gusset(0))));
    }

    @Override
    Layer layer(boolean nextToSkin) {
        return Layer.OUTER;
    }
}
