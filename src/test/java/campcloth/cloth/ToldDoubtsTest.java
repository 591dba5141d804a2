package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Declared figures that are far from what the rest of the cloth lets expect. */
class ToldDoubtsTest {

    private static final Cloth LINEN = ShippedCatalogue.get().cloth("linen-plain-185");

    @Test
    void aCatalogueIsNotDoubted() {
        assertThat(ShippedCatalogue.get().cloths().values())
                .allSatisfy(cloth -> assertThat(ToldDoubts.of(cloth)).isEmpty());
    }

    @Test
    void ouncesTypedAsGramsAreDoubtedAndNamed() {
        List<String> doubts = ToldDoubts.of(LINEN.with(Property.WIDTH_CM, ToldFigure.declared(15)));
        assertThat(doubts).singleElement().asString().contains("widthCm", "15 cm");
    }

    @Test
    void whatWasMeasuredIsDoubtedElsewhere() {
        Figure measured = Figure.exact(15, Basis.MEASURED, "swatch");
        assertThat(ToldDoubts.of(LINEN.with(Property.WIDTH_CM, measured))).isEmpty();
    }

    @Test
    void aCopyTakesMeasurementsAsEstimatesAndAllElseAsItIs() {
        Figure measured = new Figure(0.5, 0.45, 0.55, Basis.MEASURED, "swatch");
        Cloth copy = LINEN.with(Property.THICKNESS_MM, measured).copied();
        assertThat(copy.figure(Property.THICKNESS_MM).orElseThrow().basis()).isEqualTo(Basis.ESTIMATED);
        assertThat(copy.figure(Property.THICKNESS_MM).orElseThrow().high()).isEqualTo(0.55);
        assertThat(copy.figure(Property.WEIGHT_GSM)).isEqualTo(LINEN.figure(Property.WEIGHT_GSM));
    }
}
