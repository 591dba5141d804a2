package campcloth.comfort;

import campcloth.cloth.Wear;
import campcloth.comfort.model.Motion;

/** The clothing at both ends of the cloth's intervals and at its best figures. */
record ThreeDressed(Ensemble open, Ensemble middle, Ensemble close) {

    static ThreeDressed of(Sheets sheets, Wear wear, Wardrobe wardrobe) {
        return new ThreeDressed(
                Ensemble.of(sheets, wear, wardrobe, End.OPEN),
                Ensemble.of(sheets, wear, wardrobe, End.MIDDLE),
                Ensemble.of(sheets, wear, wardrobe, End.CLOSE));
    }

    ThreeWorn worn(Motion motion) {
        return new ThreeWorn(open.worn(motion), middle.worn(motion), close.worn(motion));
    }
}
