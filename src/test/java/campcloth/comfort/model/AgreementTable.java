package campcloth.comfort.model;

import campcloth.comfort.Reading;
import campcloth.figure.ReferenceTable.Row;
import campcloth.figure.Words;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** How near the models come to each file of check values: the table that DEVELOPERS.md shows. */
final class AgreementTable {

    /**
     * One figure of a file against ours.
     *
     * @param tolerance the most that it may be off
     */
    record Line(
            String what,
            String file,
            double tolerance,
            String unit,
            ToDoubleFunction<Row> theirs,
            ToDoubleFunction<Row> ours) {

        int rows() {
            return CheckRows.of(file).size();
        }

        double worst() {
            return CheckRows.of(file).stream()
                    .mapToDouble(row -> Math.abs(theirs.applyAsDouble(row) - ours.applyAsDouble(row)))
                    .max()
                    .orElseThrow();
        }

        private String markdown() {
            return "| "
                    + String.join(
                            " | ",
                            what,
                            "`" + file + "`",
                            Integer.toString(rows()),
                            (Words.fixed(worst(), 3) + " " + unit).strip(),
                            (Words.number(tolerance) + " " + unit).strip())
                    + " |";
        }
    }

    static final List<Line> LINES = List.of(
            line("PMV, table D.1", "published/pmv-table-d1.csv", 0.01, "", "vote", AgreementTable::vote),
            line("SET", "published/set.csv", 0.3, "K", "setC", AgreementTable::set),
            line("SET, body without wind of its own", "agreement/set-standing-still.csv", 0.3, "K", "setC", row -> {
                TwoNode model = body(row);
                return StandardEnvironment.temperatureC(
                        row.number("met"), StandardEnvironment.STILL_AIR_WM2K, model.after(60));
            }),
            line(
                    "two-node core",
                    "agreement/two-node.csv",
                    0.1,
                    "K",
                    "coreC",
                    row -> theirHour(row).coreC()),
            line(
                    "two-node skin",
                    "agreement/two-node.csv",
                    0.1,
                    "K",
                    "skinC",
                    row -> theirHour(row).skinC()),
            line(
                    "two-node wettedness",
                    "agreement/two-node.csv",
                    0.02,
                    "",
                    "wettedness",
                    row -> theirHour(row).wettedness()),
            line(
                    "IREQ neutral, table F.1",
                    "published/ireq.csv",
                    0.1,
                    "clo",
                    "neutralClo",
                    row -> required(row, ColdCriterion.NEUTRAL)),
            line(
                    "IREQ neutral, equations",
                    "agreement/ireq.csv",
                    0.05,
                    "clo",
                    "neutralClo",
                    row -> required(row, ColdCriterion.NEUTRAL)),
            line(
                    "IREQ minimal, equations",
                    "agreement/ireq.csv",
                    0.05,
                    "clo",
                    "minimalClo",
                    row -> required(row, ColdCriterion.MINIMAL)),
            line(
                    "solar gain, effective field",
                    "published/solar-gain.csv",
                    0.1,
                    "W/m2",
                    "fieldWm2",
                    AgreementTable::sun),
            line(
                    "wind chill",
                    "agreement/wind-chill.csv",
                    0.06,
                    "K",
                    "chillC",
                    row -> value(WindChill.temperatureC(row.number("airC"), row.number("windKmh") / 3.6))),
            line(
                    "heat index",
                    "agreement/heat-index.csv",
                    0.01,
                    "F",
                    "indexF",
                    row -> value(HeatIndex.temperatureC((row.number("airF") - 32) / 1.8, row.number("humidityPercent")))
                                    * 1.8
                            + 32));

    private AgreementTable() {}

    /** The table in Markdown, without a line end. */
    static String markdown() {
        return LINES.stream().map(Line::markdown).collect(Collectors.joining("\n", """
                | what | rows in | how many | off by at most | allowed |
                | --- | --- | --- | --- | --- |
                """, ""));
    }

    private static Line line(
            String what, String file, double tolerance, String unit, String column, ToDoubleFunction<Row> ours) {
        return new Line(what, file, tolerance, unit, row -> row.number(column), ours);
    }

    private static double vote(Row row) {
        return value(Pmv.vote(air(row), row.number("met"), row.number("clo")));
    }

    private static double set(Row row) {
        TwoNode model = body(row);
        return model.standardEffectiveC(model.after(60));
    }

    /** What the other program makes of an hour. */
    private static Body theirHour(Row row) {
        return body(row).after(59);
    }

    private static TwoNode body(Row row) {
        return new TwoNode(air(row), row.number("met"), Worn.ordinary(row.number("clo")), false);
    }

    private static double required(Row row, ColdCriterion criterion) {
        double metabolic = row.number("metabolicWm2");
        Motion motion = Motion.conditioned(row.number("speedMs"), 0, metabolic);
        return value(RequiredInsulation.clo(air(row), metabolic, motion, criterion));
    }

    private static double sun(Row row) {
        RadiantField.Sun sun = new RadiantField.Sun(
                row.number("directWm2"),
                row.number("altitudeDegrees"),
                row.number("transmittance"),
                row.number("skyShare"),
                row.number("sunlitShare"),
                0.6,
                row.number("absorptance"));
        return RadiantField.effectiveFieldWm2(
                sun, row.number("sharpDegrees"), row.text("posture").equals("sitting"));
    }

    private static Air air(Row row) {
        return new Air(
                row.number("airC"), row.number("radiantC"), row.number("speedMs"), row.number("humidityPercent"));
    }

    private static double value(Reading reading) {
        return reading.inRange().orElseThrow().value();
    }
}
