package startwater.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.ReferenceTable;
import startwater.quantity.Molar;
import startwater.quantity.OutOfRangeException;
import startwater.quantity.Units;

/** The carbonate system against published constants, published factors and the USGS code PHREEQC. */
@Tag("outside")
class CarbonateReferenceTest {
    private static final double AIR_420_PPM_ATM = 420e-6;

    @Test
    void constantsAgreeWithPlummerAndBusenbergAt25C() {
        ReferenceTable table = ReferenceTable.read("water/carbonate-constants-plummer-busenberg.csv");
        CarbonateConstants at25 = CarbonateConstants.at(25);
        for (ReferenceTable.Row row : table.rows()) {
            table.check(
                    "log10 " + row.text("K"), row.number("25C_check"), StrictMath.log10(constant(row.text("K"), at25)));
        }
    }

    @Test
    void constantsFollowThePublishedFormAtEveryTemperature() {
        for (ReferenceTable.Row row : ReferenceTable.read("water/carbonate-constants-plummer-busenberg.csv")
                .rows()) {
            for (double temperatureC = 0; temperatureC <= 50; temperatureC += 2.5) {
                double kelvin = temperatureC + 273.15;
                double log10 = row.number("A")
                        + row.number("B") * kelvin
                        + row.number("C") / kelvin
                        + row.number("D") * StrictMath.log10(kelvin)
                        + row.number("E") / (kelvin * kelvin);
                assertThat(StrictMath.log10(constant(row.text("K"), CarbonateConstants.at(temperatureC))))
                        .isCloseTo(log10, within(1e-10));
            }
        }
    }

    private static double constant(String name, CarbonateConstants k) {
        return switch (name) {
            case "K1" -> k.k1();
            case "K2" -> k.k2();
            case "Kw" -> k.kw();
            default -> k.kh();
        };
    }

    @Test
    void carbonDioxideFactorsAgreeWithTuckerInAnIdealSolution() {
        ReferenceTable table = ReferenceTable.read("water/co2-factor-tucker.csv");
        for (ReferenceTable.Row row : table.rows()) {
            if (row.number("pH") > 8) {
                continue;
            }
            for (int temperatureC : new int[] {15, 20, 25, 30}) {
                double factor = row.number(temperatureC + "C");
                double computed = co2MgPerL(temperatureC, 100, row.number("pH"), 0) / 100;
                table.check("pH " + row.text("pH") + " at " + temperatureC + " °C", factor, computed, 0.0005);
            }
        }
    }

    /** The example printed with the factors: 25 °C, pH 6.8, alkalinity 50 gives 15.65 mg/L. */
    @Test
    void carbonDioxideAgreesWithTheExamplePrintedWithTheFactors() {
        assertThat(co2MgPerL(25, 50, 6.8, 0)).isCloseTo(15.65, within(0.15));
    }

    @Test
    void carbonDioxideAgreesWithPhreeqc() {
        ReferenceTable table = ReferenceTable.read("water/co2-phreeqc.csv");
        for (ReferenceTable.Row row : table.rows()) {
            double published = row.number("co2_mg_per_l");
            double alkalinity = row.number("alkalinity");
            double ionic = CarbonateSystem.ionicStrength(Units.meqFromCaco3(alkalinity), 0, 0, 0);
            table.check(
                    row.text("temperature_c") + " °C, alkalinity " + row.text("alkalinity") + ", pH " + row.text("ph"),
                    published,
                    co2MgPerL(row.number("temperature_c"), alkalinity, row.number("ph"), ionic),
                    0.005);
        }
    }

    @Test
    void phInBalanceWithAirAgreesWithPhreeqc() {
        ReferenceTable table = ReferenceTable.read("water/carbonate-open-phreeqc.csv");
        for (ReferenceTable.Row row : table.rows()) {
            double alk = Units.meqFromCaco3(row.number("alkalinity"));
            CarbonateSystem system =
                    CarbonateSystem.at(row.number("temperature_c"), CarbonateSystem.ionicStrength(alk, 0, 0, 0));
            double h = system.solveHAtCo2(alk, system.co2InBalanceWith(AIR_420_PPM_ATM), 0);
            table.check(
                    row.text("temperature_c") + " °C, alkalinity " + row.text("alkalinity"),
                    row.number("ph"),
                    -StrictMath.log10(h));
        }
    }

    /** Computed from Henry's constant: 0.72, 0.63, 0.58 and 0.55 mg/L under air of 420 ppm. */
    @Test
    void airAloneLeavesALittleCarbonDioxide() {
        double[][] cases = {{20, 0.72}, {25, 0.63}, {28, 0.58}, {30, 0.55}};
        for (double[] c : cases) {
            double mmol = CarbonateSystem.at(c[0], 0).co2InBalanceWith(AIR_420_PPM_ATM);
            assertThat(mmol * Molar.CO2).isCloseTo(c[1], within(0.006));
        }
    }

    /** Textbook values at 25 °C and 0.1 mol/L: 0.78 for a single charge, 0.37 for a double one (from memory). */
    @Test
    void daviesCoefficientsAreThoseOfTheTextbook() {
        assertThat(StrictMath.pow(10, Davies.log10Gamma(-1, 0.1, 25))).isCloseTo(0.78, within(0.01));
        assertThat(StrictMath.pow(10, Davies.log10Gamma(2, 0.1, 25))).isCloseTo(0.37, within(0.01));
        assertThat(Davies.log10Gamma(1, 0, 25)).isZero();
        assertThat(Davies.log10Gamma(2, 0.01, 25)).isEqualTo(4 * Davies.log10Gamma(1, 0.01, 25));
    }

    @Test
    void daviesRefusesBrine() {
        assertThatThrownBy(() -> Davies.log10Gamma(1, 0.51, 25)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Davies.log10Gamma(1, -0.01, 25)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Davies.log10Gamma(1, 0.01, -1)).isInstanceOf(OutOfRangeException.class);
    }

    private static double co2MgPerL(double temperatureC, double caco3MgPerL, double ph, double ionic) {
        CarbonateSystem system = CarbonateSystem.at(temperatureC, ionic);
        double dic = system.dicFromPh(Units.meqFromCaco3(caco3MgPerL), 0, ph);
        return Molar.CO2 * system.co2(StrictMath.pow(10, -ph), dic);
    }
}
