package campcloth.pages.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class PaperLinesTest {

    @Test
    void printsWhatFitsInItsOrderAndCountsTheRest() {
        PaperLines<String> lines = PaperLines.of(List.of("1234", "56", "789", "0"), text -> text, 6);
        assertThat(lines.lines()).extracting(line -> line.it()).containsExactly("1234", "56", "789", "0");
        assertThat(lines.lines()).extracting(line -> line.printed()).containsExactly(true, true, false, false);
        assertThat(lines.leftOut()).isEqualTo(2);
    }

    @Test
    void theFirstIsPrintedHoweverLongItIs() {
        assertThat(PaperLines.of(List.of("12345678", "9"), text -> text, 6).leftOut())
                .isEqualTo(1);
        assertThat(PaperLines.of(List.<String>of(), text -> text, 6).leftOut()).isZero();
    }
}
