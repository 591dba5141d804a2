package campcloth.store;

import campcloth.event.Seasons;
import campcloth.fibre.Fibres;
import campcloth.fibre.FlameKey;
import campcloth.fibre.LabelVocabulary;
import campcloth.figure.Sources;
import campcloth.garment.Sizes;
import campcloth.supply.ListWords;
import java.io.IOException;
import java.time.Clock;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Reads the catalogue at start and hands its tables to whoever needs them. */
@Configuration
class CatalogueStart {

    @Bean
    Catalogue catalogue(@Value("${campcloth.catalogue-dir:}") String folder) throws IOException {
        return Catalogue.read(CatalogueFiles.in(folder));
    }

    @Bean
    Sources sources(Catalogue catalogue) {
        return catalogue.sources();
    }

    @Bean
    Fibres fibres(Catalogue catalogue) {
        return catalogue.fibres();
    }

    @Bean
    Seasons seasons(Catalogue catalogue) {
        return catalogue.seasons();
    }

    @Bean
    Sizes sizes(Catalogue catalogue) {
        return catalogue.sizes();
    }

    @Bean
    LabelVocabulary labelVocabulary(Catalogue catalogue) {
        return catalogue.labelVocabulary();
    }

    @Bean
    FlameKey flameKey(Catalogue catalogue) {
        return catalogue.flameKey();
    }

    @Bean
    ListWords listWords(Catalogue catalogue) {
        return catalogue.listWords();
    }

    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }
}
