package startwater.fish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** How damage binds blood, and how ammonium counts beside ammonia in acid water. */
class BloodAndGillsTest {
    @Test
    void theTableOfBoundBloodFollowsItsCurve() {
        for (String id : Species.ids()) {
            Species species = Species.byId(id);
            for (double damage = 1e-4; damage < 1e4; damage *= 1.07) {
                assertThat(species.boundBlood(damage))
                        .as(id + " " + damage)
                        .isCloseTo(species.methaemoglobin(damage), within(1e-5));
            }
            assertThat(species.boundBlood(0)).isZero();
            assertThat(species.boundBlood(-1)).isZero();
            assertThat(species.methaemoglobin(-1)).isZero();
            assertThat(species.boundBlood(1e30)).isEqualTo(1);
            assertThat(species.boundBlood(species.methaemoglobinHalfMgPerL())).isCloseTo(0.5, within(1e-12));
        }
    }

    /** In alkaline water all is as measured; under pH 6.5 each unit of pH lets ammonia count ten times more. */
    @Test
    void ammoniaCountsMoreTheMoreAcidTheWater() {
        assertThat(Species.ammoniumFactor(1e-9)).isCloseTo(1, within(1e-4));
        assertThat(Species.ammoniumFactor(1e-7)).isCloseTo(1 / 1.31, within(1e-9));
        double bend = StrictMath.pow(10, -6.5);
        assertThat(Species.ammoniumFactor(bend * 1.0001))
                .isCloseTo(Species.ammoniumFactor(bend / 1.0001), within(3e-4));
        assertThat(Species.ammoniumFactor(1e-5) / Species.ammoniumFactor(1e-6)).isCloseTo(0.1, within(1e-9));
        assertThat(Species.ammoniumFactor(1e-6)).isLessThan(Species.ammoniumFactor(bend));
    }

    @ParameterizedTest
    @EnumSource(Stressor.class)
    void aStressorIsFoundByItsPlace(Stressor stressor) {
        assertThat(Stressor.at(stressor.ordinal())).isEqualTo(stressor);
    }

    @Test
    void bothThresholdsOfACurveMoveWithTheMassOfTheFish() {
        SurvivalCurve curve = new SurvivalCurve(1, 4, 2, 1, 0.5);
        assertThat(curve.hazardPerDay(3, 1)).isEqualTo(1);
        assertThat(curve.hazardPerDay(6, 1)).isEqualTo(2 * 2 + 0.5 * 5);
        assertThat(curve.hazardPerDay(6, 2)).isEqualTo(0.5 * 4);
        assertThat(curve.hazardPerDay(1.5, 2)).isZero();
    }
}
