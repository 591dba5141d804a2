package campcloth.store;

import campcloth.cloth.Cloth;

/** Cloths under another name, for tests that have to tell one from another. */
final class Renamed {

    private Renamed() {}

    /** The cloth, like it was in all but its name. */
    static Cloth named(String name, Cloth cloth) {
        return cloth.named(name, cloth.note());
    }
}
