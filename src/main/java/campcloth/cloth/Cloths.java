package campcloth.cloth;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * The catalogue: cloths from the catalogue files and those that users added. Each method is one unit of work. A cloth that the asker
 * may not read is as though it were not there; what is only shared with them is read by its id, never found; changing what they may
 * only read is {@link campcloth.access.NotAllowed}.
 */
public interface Cloths {

    Optional<KeptCloth> byId(String id);

    /** Those of the ids that are there, in the order of the ids. */
    List<KeptCloth> byIds(Collection<String> ids);

    /**
     * Every cloth that matches; cloths that are only nearly named so are left out. Only for where they are few: a great many are
     * looked over by {@link #columns}.
     */
    List<KeptCloth> matching(ClothSearch search);

    /** The same in columns, however many they are. */
    ClothColumns columns(ClothSearch search);

    /**
     * One page of the cloths that match: as the words of the search tell, the best first, else by name. Where no cloth has all of
     * the words, those whose names look alike.
     */
    Page page(ClothSearch search, int page, int size);

    KeptCloth add(Cloth cloth);

    /**
     * Replaces a cloth if it still has the version expected. What its swatches measured stays; a weaker figure in its place is
     * kept for when they are removed ({@link SwatchHistory#told}).
     */
    Change replace(String id, long expectedVersion, Cloth cloth);

    /** Removes a cloth if it still has the version expected; a newer catalogue does not bring it back. */
    Change remove(String id, long expectedVersion);

    /**
     * A page of cloths.
     *
     * @param cloths the cloths
     * @param total how many match in all
     * @param nearMatches whether no cloth has all of the words, and these are only the nearest of those named much alike
     * @param facets by what to narrow the search
     */
    record Page(List<KeptCloth> cloths, long total, boolean nearMatches, ClothFacets facets) {}

    /** How a change went. */
    sealed interface Change {
        /** Done; the cloth as it stands now (as it last stood where it was removed). */
        record Done(KeptCloth cloth) implements Change {}

        /** Somebody changed it in between. */
        record Stale(long actualVersion) implements Change {}

        /** There is no such cloth. */
        record Missing() implements Change {}
    }
}
