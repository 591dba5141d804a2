package campcloth.errand;

import java.time.Instant;
import org.junit.jupiter.api.Test;

class ErrandSheetTest {
    @Test
    void show() {
        ErrandSheet sheet = ErrandSamples.sheet(ErrandSamples.tunic(Instant.EPOCH));
        System.out.println(sheet.toString().replace("], ", "],\n").replace("), ", "),\n"));
    }
}
