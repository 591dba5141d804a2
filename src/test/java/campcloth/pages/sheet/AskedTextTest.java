package campcloth.pages.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.cloth.OutfitPart.Kind;
import campcloth.figure.Refused;
import campcloth.pages.plan.AskedForm;
import campcloth.pages.plan.PlainCloth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a form carries in one field is what the address told. */
class AskedTextTest {

    @Test
    void whatIsWornIsCarriedOn() {
        AskedForm read = AskedText.read("season=SUMMER&design=tunic&under%5B0%5D.kind=SHIRT&under%5B0%5D.named=a+%26+b"
                + "&over%5B0%5D.kind=CLOAK&over%5B0%5D.cloth=WOOL_HEAVY&over%5B0%5D.when=COOL");
        assertThat(read.under).singleElement().satisfies(row -> {
            assertThat(row.kind).isEqualTo(Kind.SHIRT);
            assertThat(row.named).isEqualTo("a & b");
        });
        assertThat(read.over.get(0).cloth).isEqualTo(PlainCloth.WOOL_HEAVY);
        assertThat(AskedText.read(read.query())).usingRecursiveComparison().isEqualTo(read);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "under%5B2000000000%5D.kind=SHIRT",
                "key%5B2000000000%5D=x",
                "under%5B0%5D.kind=SPACESUIT",
                "over%5B-1%5D.kind=CLOAK",
                "over%5B0%5D.cloth=%3Cscript%3E"
            })
    void whatNoPageWroteIsRefused(String text) {
        assertThatThrownBy(() -> AskedText.read(text)).isInstanceOf(Refused.class);
    }
}
