package campcloth.errand;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.cloth.Wear;
import campcloth.comfort.Dressing;
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
        assertThat(WornBesides.told(List.of(new Dressing(List.of("noon"), Wardrobe.with(tunic, 20, outfit)))))
                .containsExactly(
                        "Worn besides the garment, through all spells: short drawers (0.04 clo), thin hose (0.15 clo),"
                                + " cloak (0.50 clo, told: with that insulation). Said not to be worn: footwear.");
    }

    @Test
    void whereWardrobesDifferEachIsToldWithItsSpellsAndHowToSayOtherwise() {
        Wear tunic = new Wear(true, Layer.OUTER, Fit.LOOSE, false, 65, 2.6);
        List<String> told = WornBesides.told(List.of(
                new Dressing(List.of("noon", "noon"), Wardrobe.with(tunic, 20, Outfit.UNTOLD)),
                new Dressing(List.of("watch", "fireside"), Wardrobe.with(tunic, 4, Outfit.UNTOLD))));
        assertThat(told).hasSize(3);
        assertThat(told.get(0)).startsWith("Worn besides the garment, in \"noon\": short drawers");
        assertThat(told.get(1))
                .startsWith("Worn besides the garment, in \"watch\", \"fireside\": ")
                .contains("mittens");
        assertThat(told.get(2)).contains("outfit", "in which spells");
    }
}
