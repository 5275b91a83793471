package startwater.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class UnitsTest {
    /** Factors every handbook of the field prints. */
    @Test
    void nitrogenAndIonFactorsAreThoseOfTheHandbooks() {
        assertThat(Units.nitriteIonFromN(1)).isCloseTo(3.2845, within(2e-4));
        assertThat(Units.nitrateIonFromN(1)).isCloseTo(4.427, within(1e-3));
        assertThat(Units.ammoniaFromN(1)).isCloseTo(1.216, within(2e-4));
        assertThat(Units.ammoniumFromN(1)).isCloseTo(1.288, within(2e-4));
    }

    @Test
    void alkalinityConvertsByHalfTheMassOfCalciumCarbonate() {
        assertThat(Units.caco3FromMeq(2)).isEqualTo(100.08);
        assertThat(Units.MG_CACO3_PER_MEQ).isCloseTo((Molar.CA + Molar.C + 3 * Molar.O) / 2, within(0.005));
    }

    /** Exact by definition: 32 and 212 °F, -40 on both scales, 3.785411784 L, 453.59237 g, 0.3048 m. */
    @Test
    void customaryUnitsAreExact() {
        assertThat(Units.celsiusFromFahrenheit(32)).isZero();
        assertThat(Units.fahrenheitFromCelsius(100)).isEqualTo(212);
        assertThat(Units.celsiusFromFahrenheit(-40)).isEqualTo(-40);
        assertThat(Units.litresFromUsGallons(1000)).isEqualTo(3785.411784);
        assertThat(Units.gramsFromPounds(1)).isEqualTo(453.59237);
        assertThat(Units.gramsFromOunces(16)).isEqualTo(453.59237);
        assertThat(Units.metresFromFeet(10)).isEqualTo(3.048);
        assertThat(Units.kelvinFromCelsius(25)).isEqualTo(298.15);
    }

    @Test
    void everyConversionHasItsInverse() {
        for (double x : new double[] {0, 0.37, 1, 28, 451.5}) {
            assertThat(Units.usGallonsFromLitres(Units.litresFromUsGallons(x))).isCloseTo(x, within(1e-12));
            assertThat(Units.poundsFromGrams(Units.gramsFromPounds(x))).isCloseTo(x, within(1e-12));
            assertThat(Units.ouncesFromGrams(Units.gramsFromOunces(x))).isCloseTo(x, within(1e-12));
            assertThat(Units.feetFromMetres(Units.metresFromFeet(x))).isCloseTo(x, within(1e-12));
            assertThat(Units.fahrenheitFromCelsius(Units.celsiusFromFahrenheit(x)))
                    .isCloseTo(x, within(1e-12));
            assertThat(Units.meqFromCaco3(Units.caco3FromMeq(x))).isCloseTo(x, within(1e-12));
            assertThat(Units.nitriteNFromIon(Units.nitriteIonFromN(x))).isCloseTo(x, within(1e-12));
            assertThat(Units.nitrateNFromIon(Units.nitrateIonFromN(x))).isCloseTo(x, within(1e-12));
            assertThat(Units.nitrogenFromAmmonia(Units.ammoniaFromN(x))).isCloseTo(x, within(1e-12));
            assertThat(Units.nitrogenFromAmmonium(Units.ammoniumFromN(x))).isCloseTo(x, within(1e-12));
        }
    }
}
