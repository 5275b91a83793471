package startwater.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class UnitSlipTest {
    /** Formula masses NO2 46.005 over N 14.007; a US gallon is 3.785 L. */
    @Test
    void slipsOfUnitAreNamed() {
        assertThat(UnitSlip.between(3.2845, 1)).contains(UnitSlip.NITRITE_FOR_N);
        assertThat(UnitSlip.between(100, 378.5)).contains(UnitSlip.GALLONS_FOR_LITRES);
        assertThat(UnitSlip.between(0.5, 50)).contains(UnitSlip.SHARE_FOR_PERCENT);
        assertThat(UnitSlip.between(1.05, 1)).isEmpty();
        assertThat(UnitSlip.between(2, 1)).isEmpty();
    }
}
