package campcloth.fire.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.ShippedCatalogue;
import campcloth.figure.Fault;
import campcloth.figure.ReferenceTable;
import campcloth.figure.ReferenceTable.Row;
import campcloth.figure.Refused;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cloth that warms in radiant heat, against what can be worked out by hand, step by step, and by another script. */
class HeatedClothTest {

    /** So little loss that it is none. */
    private static final double NO_FILM = 1e-9;

    @Test
    void withoutLossesTheTimeIsTheHeatTakenUpOverTheHeatThatArrives() {
        HeatedCloth cloth = new HeatedCloth(new HeatBalance(1, 0.8, 0, NO_FILM), 250, 1.4);
        double seconds = 250 * 1.4 * (300 - 20) / (0.8 * 5000);
        assertThat(cloth.secondsTo(300, 5).orElseThrow()).isCloseTo(seconds, within(1e-6 * seconds));
        assertThat(cloth.temperatureC(5, seconds)).isCloseTo(300, within(0.001));
    }

    @ParameterizedTest
    @CsvSource({"1, 10, 1, 150, 1.2, 30", "2, 10, 3, 300, 1.4, 5", "1, 25, 12, 80, 1.0, 20", "2, 5, 0.2, 700, 1.36, 600"
    })
    void withConvectionAloneItFollowsTheExponential(
            int sides, double film, double flux, double weightGsm, double specificHeat, double seconds) {
        HeatedCloth cloth = new HeatedCloth(new HeatBalance(sides, 0.9, 0, film), weightGsm, specificHeat);
        double steadyC = 20 + 900 * flux / (sides * film);
        double expected = steadyC - (steadyC - 20) * Math.exp(-sides * film * seconds / (weightGsm * specificHeat));
        assertThat(cloth.temperatureC(flux, seconds)).isCloseTo(expected, within(0.001));
        assertThat(cloth.secondsTo(expected, flux).orElseThrow()).isCloseTo(seconds, within(1e-6 * seconds));
    }

    /** The balance again, by small steps of the fourth-order rule of Runge and Kutta. */
    @ParameterizedTest
    @CsvSource({
        "150, 1.03, 0.6, 60",
        "150, 1.03, 2.4, 20",
        "60, 1.22, 10, 4",
        "450, 1.36, 20, 40",
        "300, 1.43, 3.2, 300"
    })
    void withBothLossesItFollowsTheBalanceStepByStep(
            double weightGsm, double specificHeat, double flux, double seconds) {
        int steps = 20_000;
        double h = seconds / steps;
        double cloth = 20;
        for (int i = 0; i < steps; i++) {
            double k1 = rate(cloth, flux) / (weightGsm * specificHeat);
            double k2 = rate(cloth + h / 2 * k1, flux) / (weightGsm * specificHeat);
            double k3 = rate(cloth + h / 2 * k2, flux) / (weightGsm * specificHeat);
            double k4 = rate(cloth + h * k3, flux) / (weightGsm * specificHeat);
            cloth += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
        }
        HeatedCloth heated = new HeatedCloth(HeatBalance.ONE_SIDE, weightGsm, specificHeat);
        assertThat(heated.temperatureC(flux, seconds)).isCloseTo(cloth, within(0.001));
    }

    private static double rate(double clothC, double fluxKwM2) {
        double radiated = 0.9 * 5.670374e-8 * (Math.pow(clothC + 273.15, 4) - Math.pow(293.15, 4));
        return 0.9 * fluxKwM2 * 1000 - 10 * (clothC - 20) - radiated;
    }

    @Test
    void afterALongTimeItIsSteadyAndBeforeAnyItIsCold() {
        HeatedCloth cloth = new HeatedCloth(HeatBalance.ONE_SIDE, 200, 1.22);
        assertThat(cloth.temperatureC(2.4, 0)).isEqualTo(20);
        assertThat(cloth.temperatureC(0, 3600)).isEqualTo(20);
        assertThat(cloth.temperatureC(2.4, 3600)).isCloseTo(HeatBalance.ONE_SIDE.steadyC(2.4), within(0.001));
        assertThat(cloth.secondsTo(HeatBalance.ONE_SIDE.steadyC(2.4), 2.4)).isEmpty();
        assertThat(cloth.secondsTo(HeatBalance.ONE_SIDE.steadyC(2.4) - 0.01, 2.4))
                .isPresent();
        assertThat(cloth.secondsTo(20, 0)).hasValue(0.0);
        assertThat(cloth.secondsTo(20.1, 0)).isEmpty();
    }

    @Test
    void whatIsFreeOnBothSidesStaysColder() {
        assertThat(HeatBalance.BOTH_SIDES.steadyC(2.4)).isLessThan(HeatBalance.ONE_SIDE.steadyC(2.4) - 30);
    }

    @Test
    void timesAgreeWithTheWorkedRows() throws IOException {
        each("/agreement/heated-cloth.csv", 13, row -> {
            HeatBalance balance = row.number("sides") == 0
                    ? new HeatBalance(1, 0.9, 0, NO_FILM)
                    : new HeatBalance((int) row.number("sides"), 0.9, 0.9, row.number("filmWM2K"));
            HeatedCloth cloth = new HeatedCloth(balance, row.number("weightGsm"), row.number("specificHeatJGK"));
            var seconds = cloth.secondsTo(row.number("targetC"), row.number("fluxKwM2"));
            var expected = row.optionalNumber("seconds");
            assertThat(seconds.isPresent()).as(row.text("name")).isEqualTo(expected.isPresent());
            expected.ifPresent(e -> assertThat(seconds.orElseThrow())
                    .as(row.text("name"))
                    .isCloseTo(e, within(row.number("toleranceS"))));
        });
    }

    @Test
    void holdingFluxesAgreeWithTheWorkedRows() throws IOException {
        each("/agreement/steady-flux.csv", 12, row -> {
            HeatBalance balance = new HeatBalance((int) row.number("sides"), 0.9, 0.9, row.number("filmWM2K"));
            assertThat(balance.fluxKwM2(row.number("clothC")))
                    .as(row.text("name"))
                    .isCloseTo(row.number("fluxKwM2"), within(row.number("toleranceKwM2")));
        });
    }

    @Test
    void militaryBurnTimesAgreeWithTheWorkedRowsAndAreTheSooner() throws IOException {
        each("/agreement/skin-military.csv", 4, row -> {
            double flux = row.number("fluxKwM2");
            double soonest = SkinTimes.soonestSecondDegreeS(flux).orElseThrow();
            assertThat(soonest).isCloseTo(row.number("seconds"), within(row.number("toleranceS")));
            assertThat(soonest).isLessThan(SkinTimes.secondDegreeS(flux).orElseThrow());
            assertThat(soonest).isGreaterThan(SkinTimes.painS(flux).orElseThrow());
        });
        assertThat(SkinTimes.soonestSecondDegreeS(0.99)).isEmpty();
    }

    @Test
    void specificHeatsAreThoseOfThePublishedTable() throws IOException {
        var fibres = ShippedCatalogue.get().fibres();
        each(
                "/published/specific-heat.csv",
                7,
                row -> assertThat(SpecificHeat.jGK(fibres.blend(row.text("fibre") + " 100")))
                        .as(row.text("fibre"))
                        .isCloseTo(row.number("lowJGK"), within(1e-9)));
        assertThat(SpecificHeat.jGK(fibres.blend("wool 70; polyester 30"))).isCloseTo(1.261, within(1e-9));
    }

    @Test
    void outsideItsRangeItRefuses() {
        HeatedCloth cloth = new HeatedCloth(HeatBalance.ONE_SIDE, 200, 1.22);
        assertThatThrownBy(() -> cloth.temperatureC(20.01, 60)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> cloth.temperatureC(-0.01, 60)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> cloth.temperatureC(1, Double.NaN)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> cloth.secondsTo(Double.POSITIVE_INFINITY, 1)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> new HeatedCloth(HeatBalance.ONE_SIDE, 9, 1.22)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> new HeatedCloth(HeatBalance.ONE_SIDE, 200, 0.1))
                .isInstanceOf(Refused.class);
    }

    private static void each(String path, int rows, Consumer<Row> check) throws IOException {
        List<Fault> faults = new ArrayList<>();
        try (Reader text = new InputStreamReader(
                Objects.requireNonNull(HeatedClothTest.class.getResourceAsStream(path), path),
                StandardCharsets.UTF_8)) {
            List<Row> read = ReferenceTable.read(path, text, List.of(), faults).map(row -> row);
            assertThat(faults).isEmpty();
            assertThat(read).hasSize(rows);
            read.forEach(check);
        }
    }
}
