package startwater.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import startwater.ReferenceTable;
import startwater.quantity.OutOfRangeException;

@Tag("outside")
class OxygenSaturationTest {
    /** Printed to one decimal there; from 6 to 7 °C it stands 0.05 to 0.06 over the equation. */
    private static final double COARSE_TABLE = 0.07;

    @Test
    void agreesWithTheEuropeanStandard() {
        ReferenceTable table = ReferenceTable.read("water/oxygen-saturation-en25814.csv");
        for (ReferenceTable.Row row : table.rows()) {
            double temperatureC = row.number("temperature_c");
            double printed = row.number("mg_per_l");
            double beside = temperatureC <= 15 ? COARSE_TABLE - table.allowed(printed) : 0;
            table.check(
                    row.text("temperature_c") + " °C",
                    printed,
                    OxygenSaturation.mgPerL(temperatureC, 0, 0),
                    beside + 1e-9);
        }
    }

    @Test
    void agreesWithBoydInFreshAndSaltedWater() {
        ReferenceTable table = ReferenceTable.read("water/oxygen-saturation-boyd.csv");
        for (ReferenceTable.Row row : table.rows()) {
            table.check(
                    row.text("temperature_c") + " °C, " + row.text("salinity_g_per_kg") + " g/kg",
                    row.number("mg_per_l"),
                    OxygenSaturation.mgPerL(row.number("temperature_c"), 0, row.number("salinity_g_per_kg")));
        }
    }

    /** A course note of TU Dresden prints 9.092426 for the equation of Standard Methods. */
    @Test
    void reproducesAPrintedValueToTheLastDigit() {
        assertThat(OxygenSaturation.mgPerL(20, 0, 0)).isCloseTo(9.092426, within(1e-6));
    }

    /** Worked by hand from the same equation with theta in °C; public copies with kelvin there are far off. */
    @ParameterizedTest
    @CsvSource({"20, 500, 8.55", "20, 1000, 8.04", "25, 1500, 6.85", "28, 2000, 6.08", "30, 1000, 6.67"})
    void fallsWithAltitude(double temperatureC, double altitudeM, double mgPerL) {
        assertThat(OxygenSaturation.mgPerL(temperatureC, altitudeM, 0)).isCloseTo(mgPerL, within(0.01));
    }

    @Test
    void theSlopeIsThatOfTheSaturation() {
        double d = 1e-3;
        for (double temperatureC = 1; temperatureC < 40; temperatureC += 1.5) {
            double up = OxygenSaturation.atTemperature(temperatureC + d).freshMgPerL();
            double down = OxygenSaturation.atTemperature(temperatureC - d).freshMgPerL();
            assertThat(OxygenSaturation.logSlope(temperatureC))
                    .isCloseTo(StrictMath.log(up / down) / (2 * d), within(1e-8));
        }
    }

    /** Vapour pressure of water by the handbook, 2.339 and 7.385 kPa (from memory). */
    @ParameterizedTest
    @CsvSource({"20, 2.339", "40, 7.385"})
    void vapourPressureIsThatOfTheHandbook(double temperatureC, double kilopascal) {
        assertThat(101.325 * OxygenSaturation.atTemperature(temperatureC).vapourAtm())
                .isCloseTo(kilopascal, within(0.01));
    }

    /** Oxygen at any pressure over that of 1 atm, where vapour and theta cancel: the factor of an atmosphere is one. */
    @Test
    void anAtmosphereChangesNothingAndSaltWorksAlikeAtEveryPressure() {
        OxygenSaturation.AtTemperature warm = OxygenSaturation.atTemperature(30);
        assertThat(warm.mgPerL(1, 0)).isCloseTo(warm.freshMgPerL(), within(1e-12));
        assertThat(warm.mgPerL(0.7, 10) / warm.mgPerL(0.7, 0))
                .isCloseTo(warm.mgPerL(1, 10) / warm.mgPerL(1, 0), within(1e-12));
    }

    /** The simpler pressure factor of USGS limnology code, (0.0987 P(mbar) - 0.0112)/100. */
    @ParameterizedTest
    @CsvSource({"5, 800", "20, 1600", "30, 3000"})
    void agreesWithTheSimplerPressureFactor(double temperatureC, double altitudeM) {
        double mbar = 1013.25 * OxygenSaturation.pressureAtm(altitudeM);
        double factor = (0.0987 * mbar - 0.0112) / 100;
        assertThat(OxygenSaturation.mgPerL(temperatureC, altitudeM, 0) / OxygenSaturation.mgPerL(temperatureC, 0, 0))
                .isCloseTo(factor, within(0.015));
    }

    @ParameterizedTest
    @CsvSource({"-0.1, 0, 0", "40.1, 0, 0", "20, -1, 0", "20, 4001, 0", "20, 0, -0.1", "20, 0, 40.1", "NaN, 0, 0"})
    void refusesWhatTheEquationDoesNotCover(double temperatureC, double altitudeM, double salinityGPerKg) {
        assertThatThrownBy(() -> OxygenSaturation.mgPerL(temperatureC, altitudeM, salinityGPerKg))
                .isInstanceOf(OutOfRangeException.class);
    }
}
