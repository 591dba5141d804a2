package campcloth.supply;

import campcloth.cloth.Cloth;
import java.util.Optional;
import java.util.Set;

/**
 * What a row of a list says.
 *
 * @param key the supplier's own key of the article
 * @param clothId the cloth kept here that the row means, where an export of ours is read back
 * @param cloth the cloth as the row tells it, with what follows where it says nothing
 * @param unsaid the traits of which the row says nothing
 */
public record Listed(String key, Optional<String> clothId, Cloth cloth, Set<Trait> unsaid) {

    public Listed {
        unsaid = Set.copyOf(unsaid);
    }
}
