package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What somebody means who was shown a figure and sends it back. */
class ToldFigureTest {

    private static final Figure USUAL = new Figure(190, 180, 200, Basis.TYPICAL, "catalogue-weight");

    @Test
    void aNumberLeftAsItIsKeepsIntervalAndSource() {
        assertThat(ToldFigure.typed(Property.WEIGHT_GSM, Optional.of(190.0), Optional.of(USUAL)))
                .contains(USUAL);
    }

    @Test
    void anotherNumberIsDeclared() {
        assertThat(ToldFigure.typed(Property.WEIGHT_GSM, Optional.of(195.0), Optional.of(USUAL)))
                .contains(Figure.exact(195, Basis.DECLARED, ToldFigure.MAKER));
    }

    @Test
    void aNumberTakenOutLeavesNone() {
        assertThat(ToldFigure.typed(Property.WEIGHT_GSM, Optional.empty(), Optional.of(USUAL)))
                .isEmpty();
    }

    @Test
    void aNumberWhereNoneWasIsDeclared() {
        assertThat(ToldFigure.typed(Property.WEIGHT_GSM, Optional.of(190.0), Optional.empty()))
                .contains(ToldFigure.declared(190));
    }

    @Test
    void whatNoClothCanHaveIsRefusedByItsName() {
        assertThatThrownBy(() -> ToldFigure.typed(Property.WEIGHT_GSM, Optional.of(5.0), Optional.of(USUAL)))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("weightGsm");
    }

    @Test
    void twoNewNumbersThatContradictEachOtherAreRefused() {
        ToldFigure told = new ToldFigure(
                Property.WEIGHT_GSM, Optional.of(210.0), Optional.of(Figure.exact(220, Basis.DECLARED, "label")));
        assertThatThrownBy(() -> told.figure(Optional.of(USUAL))).isInstanceOf(Refused.class);
    }
}
