package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import startwater.biofilter.FilterMedia;

/**
 * A filter without flow: some hours are borne, then it rots, and what it lets go comes with the first flush. Common
 * practice, no source: the numbers are tuned.
 */
class StandingBedBehaviourTest {
    /** A ripe sponge that has fed for a fortnight and holds solids. */
    private static TestTank running() {
        return TestTank.plan()
                .species("nile-tilapia")
                .media(FilterMedia.SPONGE)
                .seeds(0.5, 0.5)
                .water(7.6, 150, 0, 200)
                .stock(1.5, 12)
                .fed(0.5)
                .alkalinityKept(120)
                .run(14);
    }

    private static TestTank stopped(double hours) {
        TestTank tank = running();
        tank.fed(0);
        tank.controls = tank.controls.withPump(false);
        return tank.run(hours / 24);
    }

    private static double bacteria(TestTank tank) {
        return tank.y[TankLayout.AOB];
    }

    @Test
    void fourHoursAreBorne() {
        TestTank tank = running();
        double before = bacteria(tank);
        tank.controls = tank.controls.withPump(false);
        tank.run(4.0 / 24);
        assertThat(bacteria(tank)).isCloseTo(before, within(0.02 * before));
        assertThat(tank.y[TankLayout.LOOSE_N]).isZero();
    }

    /** Both groups lose a tenth each hour from the fifth hour on, whatever else they lose by decay. */
    @Test
    void fromThenOnATenthIsLostEachHour() {
        TestTank four = stopped(4);
        double aob = bacteria(four);
        double nob = four.y[TankLayout.NOB];
        four.run(1.0 / 24);
        double decay = StrictMath.exp(-0.06 * StrictMath.pow(1.05, 7) / 24);
        assertThat(bacteria(four) / aob).isCloseTo(0.9 * decay, within(0.001));
        assertThat(four.y[TankLayout.NOB] / nob).isCloseTo(0.9 * decay, within(0.001));
        four.run(9.0 / 24);
        assertThat(bacteria(four) / aob).isCloseTo(StrictMath.pow(0.9 * decay, 10), within(0.003));
    }

    /** The clock of a standing bed does not hang on how often somebody looks. */
    @ParameterizedTest
    @ValueSource(ints = {1, 7, 60, 500})
    void itFoulsTheSameHoweverTheTimeIsCut(int minutes) {
        TestTank whole = running();
        TestTank cut = running();
        Controls off = whole.controls.withPump(false);
        whole.stepper.advance(whole.y, whole.parameters, off, 10.0 / 24);
        for (int done = 0; done < 600; done += minutes) {
            cut.stepper.advance(cut.y, cut.parameters, off, StrictMath.min(minutes, 600 - done) / 1440.0);
        }
        assertThat(bacteria(cut)).isCloseTo(bacteria(whole), within(1e-3 * bacteria(whole)));
        assertThat(cut.y[TankLayout.LOOSE_N])
                .isCloseTo(whole.y[TankLayout.LOOSE_N], within(2e-3 * whole.y[TankLayout.LOOSE_N]));
    }

    @Test
    void theFirstFlushFoulsTheWater() {
        TestTank tank = stopped(14);
        double before = tank.unledgeredNitrogen();
        double loose = tank.y[TankLayout.LOOSE_N];
        double organic = tank.y[TankLayout.ORGANIC_N];
        double tan = tank.tan();
        double oxygen = tank.oxygen();
        assertThat(loose).isGreaterThan(500);
        tank.controls = tank.controls.withPump(true);
        tank.minute();
        double volume = tank.parameters.volumeL();
        assertThat(tank.y[TankLayout.ORGANIC_N] - organic)
                .isCloseTo(0.8 * loose / volume, within(0.01 * loose / volume));
        assertThat(tank.tan() - tan).isCloseTo(0.2 * loose / volume, within(0.02 * loose / volume));
        assertThat(oxygen - tank.oxygen()).isGreaterThan(0.5);
        assertThat(tank.y[TankLayout.LOOSE_N]).isZero();
        assertThat(tank.nitrogenDrift(before)).isLessThan(1e-9);
    }

    @Test
    void drainedFirstItComesBackClean() {
        TestTank flushed = stopped(14);
        TestTank drained = stopped(14);
        double before = drained.unledgeredNitrogen();
        double tan = drained.tan();
        drained.event(new TankEvent.DrainFilter());
        for (TestTank tank : new TestTank[] {flushed, drained}) {
            tank.controls = tank.controls.withPump(true);
            tank.minute();
        }
        assertThat(drained.tan()).isCloseTo(tan, within(0.005));
        assertThat(drained.oxygen()).isGreaterThan(flushed.oxygen() + 0.5);
        assertThat(drained.nitrogenDrift(before)).isLessThan(1e-9);
        flushed.run(1);
        drained.run(1);
        assertThat(drained.tan()).isLessThan(flushed.tan());
    }

    @Test
    void mediaThatLieDryLoseAsMuchAsABedThatFouls() {
        TestTank tank = running();
        double before = bacteria(tank);
        tank.event(new TankEvent.Dry(6));
        assertThat(bacteria(tank)).isCloseTo(before * StrictMath.pow(0.9, 6), within(1e-6 * before));
    }

    /** Left alone the drug kills the share it is given with; changes of water save part of the filter. */
    @Test
    void aDrugInTheWaterKillsUnlessItIsChangedOut() {
        double left = medicated(false) / medicated(true, 0);
        assertThat(left).isCloseTo(1 - 0.6, within(0.02));
        assertThat(medicated(true) / medicated(true, 0)).isGreaterThan(left + 0.15);
    }

    private static double medicated(boolean changed) {
        return medicated(changed, 0.6);
    }

    /** Bacteria of an unfed filter ten days after a drug. */
    private static double medicated(boolean changed, double share) {
        TestTank.Plan plan = TestTank.plan().seeds(0.5, 0.5);
        TestTank tank = plan.fill();
        tank.event(new TankEvent.Medicate(share));
        for (int day = 0; day < 10; day++) {
            if (changed && day < 3) {
                tank.event(new TankEvent.Change(0.5, plan.source()));
            }
            tank.run(1);
        }
        return bacteria(tank);
    }
}
