package campcloth.rest;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.cloth.Wear;
import campcloth.comfort.Wardrobe;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WornBesidesTest {

    @Test
    void whatWasToldIsToldApartFromWhatIsPresumedAndFromWhatIsNotWorn() {
        Outfit outfit = new Outfit(List.of(
                new OutfitPart(Kind.CLOAK, Optional.empty(), Optional.of(0.5)),
                new OutfitPart(Kind.FOOTWEAR, Optional.empty(), Optional.of(0.0))));
        Wear tunic = new Wear(true, Layer.OUTER, Fit.LOOSE, false, 65, 2.6);
        assertThat(WornBesides.told(Wardrobe.with(tunic, 20, outfit)))
                .isEqualTo(
                        "Worn besides the garment, through all spells: short drawers (0.04 clo), thin hose (0.15 clo),"
                                + " cloak (0.50 clo, told: with that insulation). Said not to be worn: footwear.");
    }
}
