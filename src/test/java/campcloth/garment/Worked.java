package campcloth.garment;

import java.util.Map;

/** Garments made up for worked figures, and what is read off them. */
final class Worked {

    static final Map<String, Double> WEARER = Map.of(
            "finishedChestCm", 126.0,
            "lengthCm", 95.0,
            "sleeveLengthCm", 53.0,
            "sleeveTopWidthCm", 40.0,
            "cuffWidthCm", 30.0,
            "neckDiameterCm", 15.0);

    private Worked() {}

    static Garment tunic(Map<String, Double> wearer, Map<String, Object> options) {
        return madeUp("tunic", wearer, options);
    }

    static Garment tunic(Map<String, Double> wearer, Options options) {
        return madeUp("tunic", wearer, options);
    }

    static Garment madeUp(String design, Map<String, Double> wearer, Map<String, Object> options) {
        return madeUp(design, wearer, Options.of(options));
    }

    private static Garment madeUp(String design, Map<String, Double> wearer, Options options) {
        return Designs.named(design).madeUp(Measurements.of(wearer), options, SewnCloth.usual());
    }

    static GarmentPiece piece(Garment garment, String name) {
        return garment.pieces().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    static double seamCm(Garment garment, String name) {
        return garment.sewing().seams().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow()
                .lengthCm();
    }
}
