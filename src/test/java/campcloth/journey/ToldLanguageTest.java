package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A label sent together with its language. */
@WholeService
class ToldLanguageTest {

    @LocalServerPort
    private int port;

    @Test
    void theLanguageSettlesAWordAndAnUnknownOneIsRefused() {
        BareCalls labels = new BareCalls(port, "/api/labels");
        labels.refused("{\"text\": \"100% raion\"}", 422, "text");
        assertThat(labels.answer("{\"text\": \"100% raion\", \"language\": \"pt\"}")
                        .at("/parts/0/blend/0/fibre")
                        .asString())
                .isEqualTo("viscose");
        assertThat(labels.answer("{\"text\": \"100% Wolle\", \"language\": \"fi\"}")
                        .at("/parts/0/blend/0/fibre")
                        .asString())
                .isEqualTo("wool");
        assertThat(labels.answer("{\"text\": \"100% Wolle\", \"language\": null}")
                        .at("/parts/0/part")
                        .asString())
                .isEqualTo("whole");
        assertThat(labels.refused("{\"text\": \"100% Wolle\", \"language\": \"tlh\"}", 422, "language"))
                .contains("tlh", "cs, da, de, en, es, fi, fr, it, nl, no, pl, pt, sv");
    }
}
