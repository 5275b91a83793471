package startwater.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import startwater.quantity.Molar;
import startwater.quantity.OutOfRangeException;
import startwater.quantity.Units;

/** What salt does to a water's ions, and the forms of carbon against each other. */
@Tag("outside")
class SaltAndIonsTest {
    /** A gram of table salt holds 607 mg of chloride, and a litre with it 0.0171 mol/L (formula masses). */
    @Test
    void ionicStrengthCountsEachAnionWithItsCation() {
        assertThat(CarbonateSystem.ionicStrength(0, 606.6, 0, 0)).isCloseTo(1 / 58.44, within(1e-5));
        assertThat(CarbonateSystem.ionicStrength(2, 0, 0, 0)).isCloseTo(0.002, within(1e-12));
        assertThat(CarbonateSystem.ionicStrength(-2, 0, 0, 0)).isZero();
        assertThat(CarbonateSystem.ionicStrength(0, 0, Molar.N, 0)).isCloseTo(0.001, within(1e-12));
        assertThat(CarbonateSystem.ionicStrength(0, 0, 0, Molar.N)).isCloseTo(0.001, within(1e-12));
        assertThat(CarbonateSystem.ionicStrength(1, Molar.CL, Molar.N, Molar.N)).isCloseTo(0.004, within(1e-12));
    }

    /** Dielectric constant of water by Malmberg and Maryott 1956, their table (values from memory). */
    @ParameterizedTest
    @CsvSource({"0, 87.740", "10, 83.832", "20, 80.103", "30, 76.546", "40, 73.151", "50, 69.910"})
    void theSlopeOfDaviesComesFromTheDielectricConstant(double temperatureC, double dielectric) {
        double product = StrictMath.pow(1.82e6 / Davies.slope(temperatureC), 2.0 / 3);
        assertThat(product / Units.kelvinFromCelsius(temperatureC)).isCloseTo(dielectric, within(0.003));
    }

    /** At 0.1 mol/L a single charge counts 0.78 (textbook, from memory), so more ions carry the same activity. */
    @Test
    void saltLetsMoreAcidAndBaseHideBehindOnePh() {
        CarbonateSystem salted = CarbonateSystem.at(25, 0.1);
        assertThat(salted.alkalinity(1e-10, 0, 0)).isCloseTo(0.1 / 0.78, within(0.003));
        assertThat(salted.alkalinity(1e-4, 0, 0)).isCloseTo(-0.1 / 0.78, within(0.003));
    }

    /** Textbook: pH 7.00 at 25 °C; by Kw of 10^-14.94, 7.47 at 0 °C (from memory). */
    @Test
    void pureWaterIsNeutral() {
        assertThat(-StrictMath.log10(CarbonateSystem.at(25, 0).solveH(0, 0, 0))).isCloseTo(7.00, within(0.01));
        assertThat(-StrictMath.log10(CarbonateSystem.at(0, 0).solveH(0, 0, 0))).isCloseTo(7.47, within(0.01));
    }

    /** Plummer and Busenberg 1982: log10 of Henry's constant at 25 °C is -1.468. */
    @Test
    void carbonDioxideDissolvesAsHenrySays() {
        CarbonateSystem system = CarbonateSystem.at(25, 0.01);
        assertThat(StrictMath.log10(system.kh())).isCloseTo(-1.468, within(0.002));
        assertThat(system.co2InBalanceWith(1)).isCloseTo(1000 * system.kh(), within(1e-9));
    }

    @Test
    void theAcidConstantIsThatOfAmmonium() {
        for (double temperatureC : new double[] {2, 15, 25, 33}) {
            double constant = CarbonateSystem.AtTemperature.of(temperatureC).ammoniumAcidConstant();
            assertThat(-StrictMath.log10(constant)).isCloseTo(UnionisedAmmonia.pKa(temperatureC), within(1e-12));
        }
    }

    /** Carbon is CO2, bicarbonate and carbonate; its share of the alkalinity is bicarbonate and twice carbonate. */
    @Test
    void theFormsOfCarbonAddUp() {
        Random random = new Random(11);
        for (int i = 0; i < 1000; i++) {
            CarbonateSystem system = CarbonateSystem.at(1 + 40 * random.nextDouble(), 0.05 * random.nextDouble());
            double h = StrictMath.pow(10, -(4.5 + 6 * random.nextDouble()));
            double dic = 8 * random.nextDouble();
            double charges = system.alkalinity(h, dic, 0) - system.alkalinity(h, 0, 0);
            double charged = dic - system.co2(h, dic);
            assertThat(system.co3(h, dic)).isCloseTo(charges - charged, within(1e-9));
        }
    }

    /** At pH 10.33, the second constant at 25 °C, there is as much carbonate as bicarbonate (textbook). */
    @Test
    void carbonateAndBicarbonateAreEqualAtTheSecondConstant() {
        CarbonateSystem pure = CarbonateSystem.at(25, 0);
        double h = StrictMath.pow(10, -10.33);
        assertThat(pure.co3(h, 2)).isCloseTo(1, within(0.01));
    }

    @Test
    void theLeastAlkalinityOfAPhHoldsNoCarbon() {
        CarbonateSystem system = CarbonateSystem.at(20, 0.005);
        double least = system.alkalinity(startwater.quantity.Powers.ten(-9), 0, 3);
        assertThat(system.dicFromPh(least, 3, 9)).isZero();
        assertThatThrownBy(() -> system.dicFromPh(least - 1e-9, 3, 9)).isInstanceOf(OutOfRangeException.class);
    }
}
