package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import startwater.fish.Species;
import startwater.quantity.OutOfRangeException;

/** Terms that hang on the temperature, and how few of them are worked out. */
class TemperatureTermsTest {
    /** Kept for every 256th of a degree: never further than half of that. */
    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.003, 12.3456, 27, 39.9991})
    void termsAreThoseOfATemperatureCloseBy(double temperatureC) {
        TemperatureTerms terms = TemperatureTerms.near(temperatureC);
        assertThat(terms.temperatureC).isCloseTo(temperatureC, within(1.0 / 512));
        assertThat(terms.temperatureC * 256).isEqualTo(Math.rint(temperatureC * 256));
        assertThat(terms.mineralisation).isEqualTo(TemperatureTerms.at(terms.temperatureC).mineralisation);
    }

    @Test
    void termsAreWorkedOutOnce() {
        TemperatureTerms terms = TemperatureTerms.near(21.5);
        assertThat(TemperatureTerms.near(21.5 + 1.0 / 1024)).isSameAs(terms);
        assertThat(TemperatureTerms.near(21.5 + 1.0 / 256)).isNotSameAs(terms);
    }

    /** No equation of oxygen holds below 0 or over 40 °C, whatever place is kept for it. */
    @ParameterizedTest
    @ValueSource(doubles = {-200, -1, -1.0 / 256, 41, 50, 50 + 1.0 / 256, 51, 1e9})
    void aTemperatureBeyondTheEquationsIsRefusedInWords(double temperatureC) {
        assertThatThrownBy(() -> TemperatureTerms.near(temperatureC))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("temperature");
    }

    /** Breathing per fish, not per kg: a fish twice as heavy takes 2 to this power as much. */
    @Test
    void theBreathingOfAFishGrowsWithThePowerOfItsMassThatIsKept() {
        for (String id : Species.ids()) {
            Species species = Species.byId(id);
            SystemTerms terms = SystemTerms.of(TestTank.plan().species(id).fill().parameters);
            double one = 10 * species.respiration().mgPerKgHour(10, 20);
            double two = 20 * species.respiration().mgPerKgHour(20, 20);
            assertThat(StrictMath.pow(2, terms.massPower())).isCloseTo(two / one, within(1e-6));
            double warmer = species.respiration().mgPerKgHour(10, 21) * 10 / one;
            assertThat(StrictMath.exp(terms.lnBreathing())).isCloseTo(warmer, within(1e-6));
        }
    }

    /** Warm water that flows in pulls beside the room: both rates add up. */
    @Test
    void whatFlowsInHastensTheDriftOfTemperature() {
        TestTank tank = TestTank.plan().temperature(20).fill();
        SourceWater warm = SourceWater.read(30, 7.6, 120, 0, 1, 200, 0, 0);
        Controls c = tank.controls.withInflow(3, 1, warm);
        // Room at 20 °C with 2 per day, inflow at 30 °C with 4: the balance lies at (2 x 20 + 4 x 30) / 6.
        double balance = 160 / 6.0;
        tank.stepper.advance(tank.y, tank.parameters, c, 0.25);
        assertThat(tank.y[TankLayout.TEMPERATURE])
                .isCloseTo(balance + (20 - balance) * StrictMath.exp(-6 * 0.25), within(1e-6));
    }
}
