package campcloth.store;

import campcloth.cloth.ClothSearch;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.beans.factory.annotation.Autowired;

/** Searches over the catalogue as it comes. */
@CatalogueAlone
abstract class FoundCloths {

    static final long SEED = 20_260_501;

    @Autowired
    Cloths cloths;

    /** In an order that nothing but the catalogue decides, so that a seed draws the same. */
    List<KeptCloth> shipped() {
        return cloths.matching(ClothSearch.EVERYTHING).stream()
                .filter(kept -> kept.origin() == KeptCloth.Origin.CATALOGUE)
                .sorted(Comparator.comparing(KeptCloth::id))
                .toList();
    }

    static Set<String> ids(List<KeptCloth> kept) {
        return kept.stream().map(KeptCloth::id).collect(Collectors.toSet());
    }

    static ClothSearch words(String text) {
        return new ClothSearch(Optional.of(text), Set.of(), Optional.empty(), Optional.empty());
    }
}
