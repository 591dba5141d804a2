package campcloth.cloth;

import campcloth.figure.Figure;
import campcloth.figure.ReferenceTable;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A cloth that a publication measured, and what the estimates say of it when they are told its blend, weave, surface, finish
 * and weight only. The file says how each figure was measured.
 */
record MeasuredCloth(String source, String code, Cloth told, Use use, Map<Property, Double> measured) {

    /** Whether the estimates may have been adjusted to the row. */
    enum Use {
        FITTED,
        HELD_OUT
    }

    /** An estimate against what was measured. */
    record Comparison(MeasuredCloth cloth, Property property, double measured, Figure estimate) {

        double ratio() {
            return estimate.value() / measured;
        }

        boolean inside() {
            return estimate.low() <= measured && measured <= estimate.high();
        }
    }

    private static final String FILE = "/published/measured-cloth.csv";
    /** Of the pressure drops, from memory of the paper, see the file. */
    private static final double FACE_VELOCITY_MM_S = 49;

    private static final double HEAD_PA = 100;

    static List<MeasuredCloth> all() {
        List<MeasuredCloth> cloths = new ArrayList<>();
        Samples.rows(FILE, row -> cloths.add(of(row)));
        return cloths;
    }

    private static MeasuredCloth of(ReferenceTable.Row row) {
        Cloth bare = Samples.cloth(
                ShippedCatalogue.get().fibres().blend(row.text("blend")),
                row.word("weave", Weave.class),
                row.word("surface", Surface.class),
                row.word("finish", Finish.class));
        Map<Property, Double> measured = new EnumMap<>(Property.class);
        row.optionalNumber("thicknessMm").ifPresent(mm -> measured.put(Property.THICKNESS_MM, mm));
        row.optionalNumber("pressureDropPa")
                .ifPresent(pa -> measured.put(Property.AIR_PERMEABILITY_MM_S, FACE_VELOCITY_MM_S * HEAD_PA / pa));
        return new MeasuredCloth(
                row.text("source"),
                row.text("code"),
                bare.with(Property.WEIGHT_GSM, Samples.known(row.number("weightGsm"))),
                row.word("use", Use.class),
                measured);
    }

    /** Every row that measured the property. */
    static List<Comparison> comparisons(Property property) {
        return all().stream()
                .filter(cloth -> cloth.measured.containsKey(property))
                .map(cloth -> new Comparison(
                        cloth,
                        property,
                        cloth.measured.getOrDefault(property, 0.0),
                        Estimates.complete(cloth.told).required(property)))
                .toList();
    }
}
