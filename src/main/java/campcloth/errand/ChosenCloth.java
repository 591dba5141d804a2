package campcloth.errand;

import campcloth.cloth.Cloth;
import campcloth.cloth.KeptCloth;

/**
 * The cloth of an errand as it was known when the errand was kept.
 *
 * @param id its id in the catalogue, or the name by which one that is not kept was handed in
 * @param cloth what was known of it
 */
public record ChosenCloth(String id, Cloth cloth) {

    public static ChosenCloth of(KeptCloth kept) {
        return new ChosenCloth(kept.id(), kept.cloth());
    }
}
