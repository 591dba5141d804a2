package campcloth.garment.design;

import campcloth.cloth.Layer;
import campcloth.garment.HemEdge;
import campcloth.garment.TapeLine;
import java.util.List;

/**
 * A long gown to the ankle, widened by gores in the sides (or, with {@code sideGores} off, by a flare), sleeves set on flat.
 * With gores of 40 cm it has over 200 cm round the hem at the usual size, more than the 170 cm wanted for a full stride.
 */
public final class Gown extends SleevedBody {

    public Gown() {
        super(
                "Long gown",
                new BodyProfile(
                        "gown",
                        "an easy fit",
                        120,
                        22,
                        10,
                        UpperBody.length(137, "to the ankle"),
                        UpperBody.sleeve(58),
                        UpperBody.sleeveTop(42),
                        UpperBody.cuff(TapeLine.SLEEVE_END, 14, 28, "round the loose opening of the sleeve"),
                        List.of(
                                BodyOptions.sideGores(true),
                                BodyOptions.frontBackGores(),
                                BodyOptions.halvedGores(),
                                BodyOptions.goreWidth(40),
                                BodyOptions.goreHeight(80),
                                BodyOptions.flare(),
                                BodyOptions.sideSplits(false),
                                BodyOptions.splitLength(),
                                BodyOptions.slit(10),
                                BodyOptions.squareNeck(),
                                BodyOptions.centreSeams(),
                                BodyOptions.onePiece(false),
                                BodyOptions.shoulderRise(),
                                BodyOptions.gusset(0),
                                BodyOptions.seam(2),
                                BodyOptions.hem(HemEdge.Kind.BODY.usualAllowanceCm()),
                                BodyOptions.cuff())));
    }

    @Override
    Layer layer(boolean nextToSkin) {
        return Layer.OUTER;
    }
}
