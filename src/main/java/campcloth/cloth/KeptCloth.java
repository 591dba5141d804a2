package campcloth.cloth;

/**
 * A cloth in the catalogue.
 *
 * @param id how it is named in addresses
 * @param version counts its changes; a change must name the version it is made on
 * @param origin who put it there
 * @param cloth the cloth
 */
public record KeptCloth(String id, long version, Origin origin, Cloth cloth) {

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
