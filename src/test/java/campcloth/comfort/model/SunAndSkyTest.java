package campcloth.comfort.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SunAndSkyTest {

    /** ASHRAE 55-2017, appendix C, as quoted by the validation tables. */
    @Test
    void theSunsFieldMeetsThePublishedRows() {
        for (var row : CheckRows.of("published/solar-gain.csv")) {
            RadiantField.Sun sun = new RadiantField.Sun(
                    row.number("directWm2"),
                    row.number("altitudeDegrees"),
                    row.number("transmittance"),
                    row.number("skyShare"),
                    row.number("sunlitShare"),
                    0.6,
                    row.number("absorptance"));
            boolean seated = row.text("posture").equals("sitting");
            double field = RadiantField.effectiveFieldWm2(sun, row.number("sharpDegrees"), seated);
            assertThat(field).as("%s", row).isCloseTo(row.number("fieldWm2"), within(0.1));
            assertThat(field / (6 * (seated ? 0.696 : 0.725)))
                    .as("%s", row)
                    .isCloseTo(row.number("riseK"), within(0.1));
        }
    }

    @Test
    void theSunStandsAsHighAsInThePublishedExamples() {
        for (var row : CheckRows.of("published/sun-height.csv")) {
            assertThat(SunHeight.degrees(
                            row.number("latitudeDegrees"), (int) row.number("dayOfYear"), row.number("solarHour")))
                    .as("%s", row)
                    .isCloseTo(row.number("heightDegrees"), within(row.number("tolerance")));
        }
    }

    /** Haurwitz's figure for a sun overhead: 1098 exp(-0.059) = 1035 W/m2; arithmetic. */
    @Test
    void aClearSkyGivesWhatTheFormulaSaysAndCloudTakesThreeQuarters() {
        Daylight clear = Daylight.under(0, 90);
        assertThat(clear.directWm2() + clear.diffuseWm2()).isCloseTo(1035, within(1.0));
        Daylight shut = Daylight.under(1, 90);
        assertThat(shut.directWm2()).isCloseTo(0, within(1e-9));
        assertThat(shut.diffuseWm2()).isCloseTo(1035 * 0.25, within(1.0));
        assertThat(Daylight.under(0, -3)).isEqualTo(new Daylight(0, 0));
    }

    @Test
    void moreCloudNeverLetsMoreSunThroughAndNeverMakesTheSkyColder() {
        for (int height = 1; height <= 90; height++) {
            for (int octas = 0; octas < 8; octas++) {
                Daylight less = Daylight.under(octas / 8.0, height);
                Daylight more = Daylight.under((octas + 1) / 8.0, height);
                double sine = Math.sin(Math.toRadians(height));
                assertThat(more.directWm2() * sine + more.diffuseWm2())
                        .isLessThanOrEqualTo(less.directWm2() * sine + less.diffuseWm2() + 1e-9);
                assertThat(OpenSky.radiantC(10, height, (octas + 1) / 8.0))
                        .isGreaterThanOrEqualTo(OpenSky.radiantC(10, height, octas / 8.0));
            }
        }
    }

    /** By hand: 5 degrees, 85 %: dew point 2.7, e = 0.711 + 0.0151 + 0.0005; (0.5 e + 0.5)^(1/4) of 278.15 K. */
    @Test
    void aClearNightSkyIsTenDegreesColderThanTheAirToTheBody() {
        assertThat(OpenSky.radiantC(5, 85, 0)).isCloseTo(-5.0, within(0.1));
        assertThat(OpenSky.radiantC(5, 85, 1)).isBetween(2.0, 5.0);
        assertThat(OpenSky.radiantC(5, 0, 0)).isLessThan(-5);
    }

    @Test
    void dewPointTurnsSaturationRound() {
        for (double tempC = -40; tempC <= 40; tempC += 5) {
            assertThat(Vapour.dewPointC(Vapour.saturationKpa(tempC))).isCloseTo(tempC, within(1e-9));
        }
    }

    @Test
    void whoTurnsAboutIsLitLessThanFromTheFrontAndMoreThanFromTheSide() {
        assertThat(ProjectedArea.turning(30, false))
                .isBetween(ProjectedArea.at(30, 90, false), ProjectedArea.facing(30, false));
        assertThat(ProjectedArea.at(90, 77, true)).isEqualTo(0.177);
    }
}
