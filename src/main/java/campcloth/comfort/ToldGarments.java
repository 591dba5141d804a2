package campcloth.comfort;

import campcloth.cloth.Estimates;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.comfort.Reading.Value;
import campcloth.comfort.WornGarment.Shell;
import campcloth.comfort.WornGarment.Standing;
import java.util.List;
import java.util.Optional;

/**
 * What was said to be worn, as garments with their insulation: the one told; else by its cloth ({@link GarmentRegression}); else
 * that of the list. Told as 0 clo it is not worn.
 */
final class ToldGarments {

    private ToldGarments() {}

    static List<WornGarment> of(Outfit outfit, boolean cold) {
        return outfit.parts().stream()
                .filter(part -> !part.kind().isSewnIn())
                .map(part -> garment(part, cold))
                .toList();
    }

    /** Cloth that is sewn into the garment: lining, wadding and interlining of which the cloth is known. */
    static List<Sheets> sewnIn(Outfit outfit) {
        return outfit.parts().stream()
                .filter(part -> isLayer(part.kind()))
                .flatMap(part -> part.cloth().stream())
                .map(cloth -> Sheets.of(Estimates.complete(cloth)))
                .toList();
    }

    private static boolean isLayer(Kind kind) {
        return kind == Kind.LINING || kind == Kind.WADDING || kind == Kind.INTERLINING;
    }

    private static WornGarment garment(OutfitPart part, boolean cold) {
        Kind kind = part.kind();
        Optional<Shell> shell = part.cloth()
                .filter(cloth -> !isNotWorn(part))
                .map(cloth -> new Shell(GarmentList.coveredPercent(kind), Sheets.of(Estimates.complete(cloth))));
        Value listed = Reading.exact(listedClo(kind, cold));
        Value clo = part.insulationClo()
                .map(Reading::exact)
                .orElseGet(() -> shell.map(ToldGarments::byCloth).orElse(listed));
        return new WornGarment(kind.words(), Optional.of(kind), clo, because(part), Standing.TOLD, shell);
    }

    private static boolean isNotWorn(OutfitPart part) {
        return part.insulationClo().filter(clo -> clo == 0).isPresent();
    }

    private static Value byCloth(Shell shell) {
        double covered = shell.coveredPercent();
        return Value.spanning(
                GarmentRegression.clo(covered, shell.cloth().middle().thicknessMm()),
                GarmentRegression.clo(covered, shell.cloth().open().thicknessMm()),
                GarmentRegression.clo(covered, shell.cloth().close().thicknessMm()));
    }

    private static String because(OutfitPart part) {
        if (isNotWorn(part)) {
            return "said not to be worn";
        }
        if (part.insulationClo().isPresent()) {
            return "with that insulation";
        }
        return part.cloth().isPresent()
                ? "its cloth over the body it covers, by the regression on cover and thickness"
                : "only that it is worn; insulation of the list";
    }

    /** What the list has for a kind, in cold or in mild weather; underwear, hose and footwear differ. */
    static double listedClo(Kind kind, boolean cold) {
        return switch (kind) {
            case SHIRT -> clo(GarmentList.SHIRT);
            case WARM_UNDERWEAR -> clo(GarmentList.WARM_TOP) + clo(GarmentList.WARM_BOTTOMS);
            case HOSE -> clo(cold ? GarmentList.THICK_HOSE : GarmentList.THIN_HOSE);
            case FOOTWEAR ->
                cold
                        ? clo(GarmentList.THICK_SOCKS) + clo(GarmentList.BOOTS)
                        : clo(GarmentList.SOCKS) + clo(GarmentList.SHOES);
            case UNDER_TUNIC -> clo(GarmentList.UNDER_TUNIC);
            case OVERGARMENT -> clo(GarmentList.OVERGARMENT);
            case CLOAK -> clo(GarmentList.CLOAK);
            case HOOD -> clo(GarmentList.HOOD);
            case MITTENS -> clo(GarmentList.MITTENS);
            case LINING, WADDING, INTERLINING, TRIM, THREAD -> 0;
        };
    }

    private static double clo(WornGarment garment) {
        return garment.clo().value();
    }
}
