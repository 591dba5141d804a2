package campcloth.comfort;

import java.util.List;

/**
 * Spells through which the same is worn besides the garment.
 *
 * @param spells their names, in their order
 * @param wardrobe what is worn then
 */
public record Dressing(List<String> spells, Wardrobe wardrobe) {

    public Dressing {
        spells = List.copyOf(spells);
    }
}
