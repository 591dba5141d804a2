package campcloth.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.cloth.Cloth;
import campcloth.cloth.Finish;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rows of suppliers' lists: what they say, and what is refused rather than guessed. */
class ListReaderTest {

    private static final Offset<Double> NEAR = Offset.offset(0.005);

    @Test
    void aListInGermanWithDecimalCommasIsRead() {
        Lists.Read list = Lists.read(
                "\ufeffArtikel-Nr.;Bezeichnung;Zusammensetzung;Gewicht g/m²;Breite cm;Preis €/m;Bindung;Farbe\r\n"
                        + "L-1;Leinen natur;100% linen;185,5;150;12,90;Köper;natur\r\n");
        Cloth cloth = list.good(0).cloth();
        assertThat(list.head().delimiter()).isEqualTo(';');
        assertThat(list.head().ignored()).extracting(ListHead.Ignored::header).containsExactly("Farbe");
        assertThat(list.good(0).key()).isEqualTo("L-1");
        assertThat(cloth.name()).isEqualTo("Leinen natur");
        assertThat(cloth.weave()).isEqualTo(Weave.TWILL);
        assertThat(cloth.figure(Property.WEIGHT_GSM))
                .contains(Figure.exact(185.5, Basis.DECLARED, "list of Wendlow Mill"));
        assertThat(cloth.figure(Property.WIDTH_CM).map(Figure::value)).contains(150.0);
        assertThat(cloth.figure(Property.PRICE_PER_METRE).map(Figure::value)).contains(12.9);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            Weight (oz/yd²)   | 5.3          | 179.70
            Weight oz/sq yd   | 5.3          | 179.70
            Weight            | 8 oz         | 271.25
            Weight (oz/yd2)   | 180 g/m2     | 180
            Weight in g/m2    | 180          | 180
            GSM               | 1.234,5      | 1234.5
            Weight            | 16 momme     | 68.89
            Weight (g/m²)     | 180-200      | 190
            """)
    void weightsComeInTheirUnitAndTheCellGoesBeforeTheHead(String header, String cell, double gsm) {
        assertThat(value(Lists.with(header, cell), Property.WEIGHT_GSM)).isCloseTo(gsm, NEAR);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            Width (inches)    | 59           | 149.86
            Width (")         | 59           | 149.86
            Width             | 150cm / 59"  | 150
            Width in mm       | 1500         | 150
            Breite            | 1,5 m        | 150
            Width             | 58-60 in     | 149.86
            """)
    void widthsToo(String header, String cell, double cm) {
        assertThat(value(Lists.with(header, cell), Property.WIDTH_CM)).isCloseTo(cm, NEAR);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Price per yard (EUR) | 45.72      | 50
            Price /m EUR         | 45.72      | 45.72
            Price per yd (EUR)   | 45.72      | 50
            Price EUR            | 45.72 per yd | 50
            Price                | 10 €/yd    | 10.936
            Preis €/m            | 12,90      | 12.90
            Price per metre      | €12.90     | 12.90
            Price                | EUR 1.234,50 per m | 1234.5
            """)
    void pricesAreForAMetre(String header, String cell, double euros) {
        assertThat(value(Lists.with(header, cell), Property.PRICE_PER_METRE)).isCloseTo(euros, NEAR);
    }

    @Test
    void aPriceInAnotherCurrencyIsKeptInWords() {
        Cloth cloth = Lists.with("Price per yard", "£45.72").good(0).cloth();
        assertThat(cloth.figure(Property.PRICE_PER_METRE)).isEmpty();
        assertThat(cloth.note()).isEqualTo("Price of the list: 50 GBP a metre");
    }

    @Test
    void theIntervalOfAMommeSpansBothWaysToCountIt() {
        Figure weight = Lists.with("Weight (momme)", "100")
                .good(0)
                .cloth()
                .figure(Property.WEIGHT_GSM)
                .orElseThrow();
        assertThat(weight.low()).isCloseTo(430.56, NEAR);
        assertThat(weight.high()).isCloseTo(433.99, NEAR);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            Weight          | 180              | has no unit
            Weight (g/m2)   | 1.234            | may mean thousands or decimals
            Weight (g/m2)   | 180 kg           | is no unit known for it
            Weight (g/m2)   | heavy            | is not a number
            Weight (g/m2)   | 5000             | give a number from 10 to 2000
            Weight (g/m2)   | 9999999999999999999999999999999999999 | is not a number
            Width (cm)      | 150cm / 55"      | says two different things
            Width (cm)      | 160-150          | falls
            Price           | 12.5 EUR         | for which length
            Price per metre | 12.5             | in which currency
            Price per metre | 12.5 pieces      | neither currency nor length
            Weave           | crunchy          | is not a word known for it
            Nap             | perhaps          | neither yes nor no
            """)
    void whatWouldBeGuessedIsRefusedWithAReason(String header, String cell, String reason) {
        assertThat(Lists.with(header, cell).bad(0)).contains(reason);
    }

    @Test
    void whatTheLabelReaderRefusesRefusesTheRowWithThePlace() {
        Lists.Read list = Lists.read("key,name,composition\nA,Cloth,70% moonlight 30% wool\nB,Cloth,100% wool\n");
        assertThat(list.bad(0)).startsWith("composition: ").contains("moonlight");
        assertThat(list.good(1).key()).isEqualTo("B");
    }

    @Test
    void everyReasonOfARowIsTold() {
        assertThat(Lists.read("key,name,composition,weight,width\n,,,heavy,wide\n")
                        .bad(0))
                .contains("key: is empty", "name: is empty", "composition: is empty", "weightGsm: ", "widthCm: ");
    }

    @Test
    void theSecondRowOfAKeyIsRefusedWithItsLine() {
        Lists.Read list = Lists.read("key,name,composition\nA,Cloth,100% wool\n\nA,Cloth,100% wool\n");
        assertThat(list.bad(1)).contains("'A' stands twice");
        assertThat(list.rows().get(1).line()).isEqualTo(4);
    }

    @Test
    void columnsNeededAndColumnsTwiceRefuseTheList() {
        refused("name,composition\nA,100% wool\n", "key: no column");
        refused("key,name\nA,B\n", "composition: no column");
        refused("key,name,composition,weight gsm,gewicht\nA,B,100% wool,180,180\n", "hold the same thing");
    }

    @Test
    void aColumnWhoseUnitIsNotKnownIsNamedAmongTheIgnored() {
        Lists.Read list = Lists.read("key,name,composition,Weight per bolt kg\nA,Cloth,100% wool,18\n");
        assertThat(list.head().ignored())
                .containsExactly(new ListHead.Ignored("Weight per bolt kg", "'per bolt kg' is no unit known for it"));
    }

    @Test
    void bytesThatAreNoUtf8RefuseTheirRowAlone() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes("key,name,composition\nA,K".getBytes(StandardCharsets.UTF_8));
        bytes.write(0xf6);
        bytes.writeBytes("per,100% wool\nB,Cloth,100% wool\n".getBytes(StandardCharsets.UTF_8));
        Lists.Read list = Lists.read(bytes.toByteArray(), order());
        assertThat(list.bad(0)).contains("name: holds bytes that are no UTF-8");
        assertThat(list.good(1).key()).isEqualTo("B");
        assertThatThrownBy(() -> Lists.read("key,name,composition\n".getBytes(StandardCharsets.UTF_16), order()))
                .isInstanceOf(Refused.class);
    }

    @Test
    void aNulRefusesItsRow() {
        assertThat(Lists.read("key,name,composition\nA,Cl\0th,100% wool\n").bad(0))
                .contains("U+0000");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\n\n",
                "key,name,composition\n",
                "key,name,composition\nA,\"Cloth,100% wool\n",
                "1,2,3\n4,5,6\n"
            })
    void whatIsNoListIsRefusedWhole(String text) {
        assertThatThrownBy(() -> Lists.read(text)).isInstanceOf(Refused.class);
    }

    @Test
    void tooManyColumnsAndARowWithoutEndAreRefusedWhole() {
        refused("a,".repeat(10_000) + "\n1\n", "columns");
        refused("key,name,composition\nA,\"" + "x".repeat(2_000_000) + "\",100% wool\n", "is not closed");
    }

    @Test
    void aRowOfAnotherWidthIsRefused() {
        assertThat(Lists.read("key,name,composition\nA,Cloth\n").bad(0)).contains("has 2 cells, the head has 3");
    }

    @Test
    void pileIsRaisedAndWovenAsToldElsewhere() {
        Cloth velvet = Lists.with("weave", "Samt").good(0).cloth();
        assertThat(velvet.surface()).isEqualTo(Surface.RAISED);
        assertThat(velvet.nap()).isTrue();
        assertThat(Lists.with("finish", "sanforised").good(0).cloth().finish()).isEqualTo(Finish.PRESHRUNK);
    }

    @Test
    void theCallsCurrencyServesWhereTheListNamesNone() {
        ListOrder euros = new ListOrder("Wendlow Mill", Optional.of("eur"), Optional.empty());
        Lists.Read list = Lists.read("key,name,composition,price per metre\nA,Cloth,100% wool,12.5\n", euros);
        assertThat(value(list, Property.PRICE_PER_METRE)).isEqualTo(12.5);
    }

    private static double value(Lists.Read list, Property property) {
        return list.good(0).cloth().figure(property).orElseThrow().value();
    }

    private static void refused(String text, String reason) {
        assertThatThrownBy(() -> Lists.read(text)).isInstanceOf(Refused.class).hasMessageContaining(reason);
    }

    private static ListOrder order() {
        return new ListOrder("Wendlow Mill", Optional.empty(), Optional.empty());
    }
}
