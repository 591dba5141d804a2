package campcloth.pages.cloths;

import campcloth.event.FireRole;
import campcloth.fire.Exposure;
import campcloth.pages.TypedIn;
import campcloth.pages.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Which cloths to set side by side, and at which fire; as it stands in the address. */
public final class CompareForm {

    public List<String> cloth = new ArrayList<>();

    /** What the wearer does at the fire; seated where it is left out, as in the search. */
    public @Nullable FireRole role;

    @TypedIn(Units.Measure.DISTANCE_M)
    public @Nullable Double distanceM;

    Exposure exposure() {
        FireRole at = role == null ? FireRole.SEATED : role;
        return new Exposure(at, Optional.ofNullable(distanceM), Optional.empty());
    }

    /** Each id once, as it was asked first. */
    List<String> ids() {
        return cloth.stream().filter(id -> id != null).distinct().toList();
    }

    /** Address of the same comparison without one of them. */
    String without(String id) {
        return address(
                "/cloths/compare",
                ids().stream().filter(other -> !other.equals(id)).toList());
    }

    /** Address of the search, which remembers those that are chosen. */
    String more() {
        return new Address("/cloths").addAll("cloth", ids()).toString();
    }

    private String address(String path, List<String> ids) {
        return new Address(path)
                .addAll("cloth", ids)
                .add("role", role)
                .add("distanceM", distanceM)
                .toString();
    }
}
