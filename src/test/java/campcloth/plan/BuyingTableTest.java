package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sizes, widths and designs against the rule of thumb: never longer where the rule is feasible, and what it saves. */
class BuyingTableTest {

    private static final List<BuyingTable.Cell> CELLS = BuyingTable.cells();

    @Test
    void neverLongerThanTheRuleWhereItIsFeasible() {
        assertThat(CELLS.stream().filter(BuyingTable.Cell::lies)).allSatisfy(cell -> {
            assertThat(cell.buyCm()).as(cell.toString()).isPositive().isLessThanOrEqualTo(cell.rowsBuyCm());
            if (cell.ruleHolds()) {
                assertThat(cell.buyCm()).as(cell.toString()).isLessThanOrEqualTo(cell.ruleCm());
            }
        });
        assertThat(CELLS).filteredOn(BuyingTable.Cell::lies).hasSizeGreaterThan(CELLS.size() * 3 / 4);
    }

    @Test
    void theGuideShowsTheTable() throws IOException {
        String shown = BuyingTable.markdown(CELLS) + "\n\n" + BuyingTable.means(CELLS);
        assertThat(Files.readString(Path.of("DEVELOPERS.md")).contains("\n" + shown + "\n"))
                .as("DEVELOPERS.md should show%n%s%n", shown)
                .isTrue();
    }
}
