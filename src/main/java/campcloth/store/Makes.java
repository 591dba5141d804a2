package campcloth.store;

import campcloth.cloth.ClothMake;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** The makes of the catalogue by number. Grows only: a make of which no cloth is left keeps its number. One thread writes. */
final class Makes {

    private final Map<ClothMake, Integer> numbers = new HashMap<>();
    private ClothMake[] makes = new ClothMake[256];

    /** As many as there were at a moment; may be read by many threads while others are added. */
    record Seen(ClothMake[] makes, int size) {}

    int number(ClothMake make) {
        Integer known = numbers.get(make);
        if (known != null) {
            return known;
        }
        int number = numbers.size();
        if (number == makes.length) {
            makes = Arrays.copyOf(makes, 2 * number);
        }
        makes[number] = make;
        numbers.put(make, number);
        return number;
    }

    Seen seen() {
        return new Seen(makes, numbers.size());
    }
}
