package campcloth.cloth;

import campcloth.access.Holding;

/**
 * A cloth in the catalogue.
 *
 * @param id how it is named in addresses
 * @param version counts its changes; a change must name the version it is made on
 * @param origin who put it there
 * @param cloth the cloth
 * @param holding to whom it belongs, and by which link it is shared
 */
public record KeptCloth(String id, long version, Origin origin, Cloth cloth, Holding holding) {

    /** Who a cloth in the catalogue comes from. */
    public enum Origin {
        /** From the catalogue files, as it stands there. */
        CATALOGUE,
        /** From the catalogue files, changed by a user since. */
        EDITED,
        /** Added by a user. */
        OWN
    }
}
