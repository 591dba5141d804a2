package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.fibre.LabelReading;
import campcloth.fibre.LabelReading.NotRead;
import campcloth.fibre.LabelReading.Part;
import campcloth.fibre.LabelReading.Read;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a bale may be by its label. */
class BaleTest {

    private static final ShippedCatalogue CATALOGUE = ShippedCatalogue.get();
    private static final Fibre UNKNOWN = CATALOGUE.fibres().require(Fibre.UNKNOWN);
    private static final LabelReading NOT_READ =
            new NotRead("no share stands with it", 0, 4, "wool", "write one", List.of());
    private static final LabelReading TWO_PARTS =
            new Read(List.of(new Part("shell", pure("wool")), new Part("lining", pure("polyester"))), List.of());

    @ParameterizedTest
    @EnumSource
    void whatWasNotReadIsUnknownAndRaised(Weave weave) {
        for (Optional<LabelReading> reading : List.of(Optional.<LabelReading>empty(), Optional.of(NOT_READ))) {
            for (Optional<Weave> told : List.of(Optional.<Weave>empty(), Optional.of(weave))) {
                Bale bale = bale(reading, told, Optional.empty());
                assertThat(bale.isRead()).isFalse();
                assertThat(bale.faceIsPresumed()).isFalse();
                assertThat(bale.mayBe(UNKNOWN)).singleElement().satisfies(cloth -> {
                    assertThat(cloth.blend()).isEqualTo(Blend.pure(UNKNOWN));
                    assertThat(cloth.surface()).isEqualTo(Surface.RAISED);
                });
            }
        }
    }

    @Test
    void aFaceThatWasToldStands() {
        Bale bale = bale(Optional.of(NOT_READ), Optional.empty(), Optional.of(Surface.PLAIN));
        assertThat(bale.mayBe(UNKNOWN).get(0).surface()).isEqualTo(Surface.PLAIN);
    }

    @Test
    void everyPartIsAClothOfItsOwn() {
        Bale bale = bale(Optional.of(TWO_PARTS), Optional.empty(), Optional.empty());
        assertThat(bale.mayBe(UNKNOWN)).extracting(Cloth::blend).containsExactly(pure("wool"), pure("polyester"));
        assertThat(bale.faceIsPresumed()).isTrue();
        assertThat(bale.mayBe(UNKNOWN)).extracting(Cloth::surface).containsOnly(Surface.PLAIN);
        assertThat(bale.mayBeRaised(UNKNOWN)).extracting(Cloth::surface).containsOnly(Surface.RAISED);
    }

    @Test
    void aShareThatIsNotNamedIsTakenForRaised() {
        Blend mixed = CATALOGUE.fibres().blend("cotton 90; other 10");
        Bale bale = bale(
                Optional.of(new Read(List.of(new Part(LabelReading.WHOLE, mixed)), List.of())),
                Optional.of(Weave.TWILL),
                Optional.empty());
        assertThat(bale.mayBe(UNKNOWN).get(0).surface()).isEqualTo(Surface.RAISED);
    }

    @Test
    void aLongBlendGivesANameThatCanBeKept() {
        String[] keys =
                CATALOGUE.fibres().all().stream().map(Fibre::key).limit(20).toArray(String[]::new);
        Blend long20 = CATALOGUE
                .fibres()
                .blend(String.join("; ", Stream.of(keys).map(key -> key + " 5").toList()));
        Bale bale = bale(
                Optional.of(new Read(List.of(new Part(LabelReading.WHOLE, long20)), List.of())),
                Optional.empty(),
                Optional.empty());
        assertThat(bale.mayBe(UNKNOWN).get(0).name())
                .hasSizeLessThanOrEqualTo(120)
                .startsWith("5 %");
    }

    private static Bale bale(Optional<LabelReading> reading, Optional<Weave> weave, Optional<Surface> face) {
        return new Bale(
                reading, new ToldMake(weave, face, Optional.empty(), Optional.empty(), Optional.empty()), Map.of());
    }

    private static Blend pure(String fibre) {
        return Blend.pure(CATALOGUE.fibres().require(fibre));
    }
}
