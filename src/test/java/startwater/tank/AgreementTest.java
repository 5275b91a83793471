package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static startwater.tank.TankLayout.*;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import startwater.fish.Stressor;

/** How far two states lie apart, and what a sensitivity is. */
class AgreementTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private final TestTank tank =
            TestTank.plan().species("nile-tilapia").volume(1000).temperature(20).stock(1, 10);

    /** The places as in {@link TankLayout}: each by its value, or by its floor where it lies under it. */
    @ParameterizedTest
    @CsvSource({
        "TAN, 2, 2.1, 0.05",
        "TAN, 0.02, 0.03, 0.1",
        "NITRITE, 0.01, 0.04, 0.3",
        "ALKALINITY, 2, 2.04, 0.02",
        "DIC, 2, 1.9, 0.05",
        "OXYGEN, 8, 7.6, 0.05",
        "OXYGEN, 0.5, 0.7, 0.2",
        "TEMPERATURE, 20, 21, 0.05",
        "ORGANIC_N, 0.2, 0.3, 0.1",
        "ORGANIC_N, 4, 5, 0.25",
        "NITRATE, 0.2, 0.25, 0.05",
        "NITRATE, 40, 44, 0.1",
        "AOB, 500, 510, 0.02",
        "NOB, 20, 30, 0.1",
        "GUT_1, 300, 350, 0.05",
        "GUT_2, 2000, 2200, 0.1"
    })
    void anErrorIsRelativeAboveItsFloor(String place, double reference, double value, double error) {
        int at =
                switch (place) {
                    case "TAN" -> TAN;
                    case "NITRITE" -> NITRITE;
                    case "ALKALINITY" -> ALKALINITY;
                    case "DIC" -> DIC;
                    case "OXYGEN" -> OXYGEN;
                    case "TEMPERATURE" -> TEMPERATURE;
                    case "ORGANIC_N" -> ORGANIC_N;
                    case "NITRATE" -> NITRATE;
                    case "AOB" -> AOB;
                    case "NOB" -> NOB;
                    case "GUT_1" -> GUT_1;
                    default -> GUT_2;
                };
        double[] one = tank.y.clone();
        double[] other = tank.y.clone();
        one[at] = value;
        other[at] = reference;
        assertThat(Agreement.stateError(one, other, tank.parameters)).isCloseTo(error, EXACT);
    }

    @Test
    void theWorstCounts() {
        double[] y = tank.y.clone();
        y[ALKALINITY] *= 1.02;
        y[OXYGEN] *= 0.95;
        y[DIC] *= 1.01;
        assertThat(Agreement.stateError(y, tank.y, tank.parameters)).isCloseTo(0.05, EXACT);
    }

    /** How many live is asked of survival; of the bodies, what one fish weighs. */
    @Test
    void bodiesAreComparedByTheFish() {
        double[] fewer = tank.y.clone();
        fewer[survivors(0)] = 0.5;
        fewer[FISH_N] *= 0.5;
        assertThat(Agreement.stateError(fewer, tank.y, tank.parameters)).isCloseTo(0, EXACT);
        double[] lighter = tank.y.clone();
        lighter[FISH_N] *= 0.9;
        assertThat(Agreement.stateError(lighter, tank.y, tank.parameters)).isCloseTo(0.1, EXACT);
        double[] none = tank.y.clone();
        none[STOCKED] = 0;
        assertThat(Agreement.stateError(none, tank.y, tank.parameters)).isZero();
        assertThat(Agreement.stateError(tank.y, none, tank.parameters)).isZero();
    }

    @Test
    void survivalIsComparedByTheWorstStratum() {
        double[] one = new double[TankLayout.length(2)];
        double[] other = one.clone();
        one[hazard(0, Stressor.PH)] = -StrictMath.log(0.9);
        one[hazard(1, Stressor.PH)] = -StrictMath.log(0.7);
        other[hazard(1, Stressor.AMMONIA)] = -StrictMath.log(0.5);
        assertThat(Agreement.survivalError(one, other, 1)).isCloseTo(0.1, EXACT);
        assertThat(Agreement.survivalError(one, other, 2)).isCloseTo(0.2, EXACT);
    }

    @Test
    void aSensitivityIsItsFactors() {
        double[] factors = {0.8, 1.2};
        Sensitivity s = Sensitivity.of(factors);
        factors[0] = 5;
        assertThat(s.strata()).isEqualTo(2);
        assertThat(s.at(0)).isEqualTo(0.8);
        assertThat(s.at(1)).isEqualTo(1.2);
        assertThat(s).isEqualTo(Sensitivity.of(0.8, 1.2)).hasSameHashCodeAs(Sensitivity.of(0.8, 1.2));
        assertThat(s).isNotEqualTo(Sensitivity.of(1.2, 0.8)).isNotEqualTo(Sensitivity.ORDINARY);
        assertThat(s.hashCode()).isNotEqualTo(Sensitivity.of(1.2, 0.8).hashCode());
        assertThat(s).hasToString("[0.8, 1.2]");
        assertThatThrownBy(Sensitivity::of)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at least one");
    }
}
