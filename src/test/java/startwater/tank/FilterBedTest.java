package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static startwater.tank.TankLayout.*;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What is done to a bed, worked by hand in a tank of 2,000 L. */
class FilterBedTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private static TestTank standing(double looseMg) {
        TestTank tank = TestTank.plan().volume(2000).seeds(0.5, 0.25).fill();
        tank.y[STAGNANT_HOURS] = 9;
        tank.y[LOOSE_N] = looseMg;
        tank.y[HELD_N] = 900;
        return tank;
    }

    /** Of 600 mg, 0.3 mg/L, a fifth has rotted: 0.06 mg/L, with an equivalent for each mole and 15 mg of oxygen a mg. */
    @Test
    void theFirstFlowBringsWhatAStandingBedHasLetGo() {
        TestTank tank = standing(600);
        double[] before = tank.y.clone();
        tank.event(new TankEvent.FlushFilter());
        double[] y = tank.y;
        assertThat(y[ORGANIC_N] - before[ORGANIC_N]).isCloseTo(0.24, EXACT);
        assertThat(y[TAN] - before[TAN]).isCloseTo(0.06, EXACT);
        assertThat(y[ALKALINITY] - before[ALKALINITY]).isCloseTo(0.06 / 14.007, EXACT);
        assertThat(before[OXYGEN] - y[OXYGEN]).isCloseTo(0.9, EXACT);
        assertThat(y[LOOSE_N]).isZero();
        assertThat(y[STAGNANT_HOURS]).isZero();
        assertThat(y[HELD_N]).isEqualTo(900);
        double alkalinity = TankReadings.carbonate(y).alkalinity(y[H_ION], y[DIC], y[TAN]);
        assertThat(alkalinity).as("pH is settled").isCloseTo(y[ALKALINITY], within(1e-7));
    }

    @Test
    void aFlushTakesNoMoreOxygenThanThereIs() {
        TestTank tank = standing(60_000);
        tank.event(new TankEvent.FlushFilter());
        assertThat(tank.oxygen()).isZero();
    }

    @Test
    void aDrainedBedLosesWhatIsLooseAndKeepsWhatItHolds() {
        TestTank tank = standing(600);
        tank.event(new TankEvent.DrainFilter());
        assertThat(tank.y[REMOVED]).isEqualTo(600);
        assertThat(tank.y[LOOSE_N]).isZero();
        assertThat(tank.y[HELD_N]).isEqualTo(900);
        assertThat(tank.y[STAGNANT_HOURS]).isZero();
    }

    @Test
    void cleaningTakesSolidsAndBacteriaByTheirShares() {
        TestTank tank = standing(600);
        double aob = tank.y[AOB];
        double nob = tank.y[NOB];
        tank.event(new TankEvent.CleanMedia(0.2, 0.9));
        assertThat(tank.y[AOB]).isCloseTo(0.8 * aob, EXACT);
        assertThat(tank.y[NOB]).isCloseTo(0.8 * nob, EXACT);
        assertThat(tank.y[HELD_N]).isCloseTo(90, EXACT);
        assertThat(tank.y[LOOSE_N]).isCloseTo(60, EXACT);
        assertThat(tank.y[REMOVED]).isCloseTo(1350, EXACT);
    }

    /** Nine tenths are left of each hour that media lie dry. */
    @Test
    void dryingAndHardCleaningTakeBothGroups() {
        TestTank tank = standing(0);
        double aob = tank.y[AOB];
        double nob = tank.y[NOB];
        tank.event(new TankEvent.Dry(2));
        assertThat(tank.y[AOB]).isCloseTo(0.81 * aob, EXACT);
        assertThat(tank.y[NOB]).isCloseTo(0.81 * nob, EXACT);
        tank.event(new TankEvent.FilterLoss(0.5));
        assertThat(tank.y[AOB]).isCloseTo(0.405 * aob, EXACT);
        assertThat(tank.y[NOB]).isCloseTo(0.405 * nob, EXACT);
    }

    @Test
    void solidsTakenOutOfTheWaterTakeTheUneatenFeedWithThem() {
        TestTank tank = standing(0);
        tank.y[ORGANIC_N] = 0.5;
        tank.y[UNEATEN_G] = 12;
        tank.event(new TankEvent.RemoveSolids(0.25));
        assertThat(tank.y[ORGANIC_N]).isCloseTo(0.375, EXACT);
        assertThat(tank.y[UNEATEN_G]).isCloseTo(9, EXACT);
        assertThat(tank.y[REMOVED]).isCloseTo(250, EXACT);
    }

    @Test
    void thiosulfateIntoTheTankActsByTheLitre() {
        TestTank tank = standing(0);
        tank.y[FREE_CHLORINE] = 0.7;
        tank.event(new TankEvent.Neutralise(0.5));
        assertThat(tank.y[FREE_CHLORINE]).isCloseTo(0.2, EXACT);
    }
}
