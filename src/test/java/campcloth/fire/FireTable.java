package campcloth.fire;

import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.ShippedCatalogue;
import campcloth.cloth.Wear;
import campcloth.event.FireRole;
import campcloth.figure.Words;
import campcloth.fire.FireReason.Factor;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The table of well-known cloths at a camp fire that the README shows, computed by {@link FireGrading}. The fire gives 100 kW; the
 * torch 10 kW.
 */
final class FireTable {

    private static final List<String> CLOTHS = List.of(
            "wool-melton-500",
            "wool-flannel-280",
            "linen-plain-185",
            "cotton-canvas-350",
            "cotton-denim-410",
            "cotton-lawn-80",
            "cotton-flannel-160",
            "cotton-velvet-300",
            "polycotton-65-35-110",
            "polyester-fleece-250",
            "fur-acrylic-500",
            "polyester-satin-90");

    private static final Exposure PASSING = at(FireRole.PASSING, 4, 100);
    private static final Exposure SEATED = at(FireRole.SEATED, 2, 100);
    private static final Exposure COOKING = at(FireRole.COOKING, 1.2, 100);
    private static final Exposure TENDING = at(FireRole.TENDING, 1, 100);
    private static final Exposure CARRYING = at(FireRole.CARRYING, 0.6, 10);

    private FireTable() {}

    /** The table in Markdown, without a line end. */
    static String markdown() {
        return CLOTHS.stream()
                .map(id -> ShippedCatalogue.get().cloth(id))
                .map(FireTable::row)
                .collect(Collectors.joining("\n", """
                        | cloth, g/m2 | passing, 4 m | seated, 2 m | cooking, 1.2 m | tending, 1 m | carrying a torch | cooking, worn close | keep back | what counts |
                        | --- | --- | --- | --- | --- | --- | --- | --- | --- |
                        """, ""));
    }

    private static String row(Cloth cloth) {
        WornCloth loose = worn(cloth, Fit.LOOSE);
        FireHazard seated = FireGrading.grade(loose, SEATED);
        return "| "
                + String.join(
                        " | ",
                        cloth.name() + ", " + Words.number(loose.weightGsm()),
                        cell(loose, PASSING),
                        words(seated),
                        cell(loose, COOKING),
                        cell(loose, TENDING),
                        cell(loose, CARRYING),
                        cell(worn(cloth, Fit.CLOSE), COOKING),
                        Words.fixed(seated.standBackM(), 1) + " m",
                        reasons(seated))
                + " |";
    }

    /** The strongest reason after that of the place, and what its face does. */
    private static String reasons(FireHazard hazard) {
        FireReason strongest = hazard.reasons().get(1);
        return hazard.reasons().stream()
                .filter(reason -> reason.equals(strongest) || reason.factor() == Factor.SURFACE)
                .map(FireReason::sentence)
                .collect(Collectors.joining(" "));
    }

    private static String cell(WornCloth cloth, Exposure exposure) {
        return words(FireGrading.grade(cloth, exposure));
    }

    private static String words(FireHazard hazard) {
        return hazard.grade().words() + (hazard.meltWarning() == MeltWarning.NONE ? "" : "; melts");
    }

    private static WornCloth worn(Cloth cloth, Fit fit) {
        return WornCloth.of(Estimates.complete(cloth), new Wear(false, Layer.OUTER, fit, false, 65, 1.7));
    }

    private static Exposure at(FireRole role, double distanceM, double fireKw) {
        return new Exposure(role, Optional.of(distanceM), Optional.of(fireKw));
    }
}
