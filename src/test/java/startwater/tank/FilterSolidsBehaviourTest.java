package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import startwater.biofilter.FilterMedia;

/** Solids that the filter holds: they slow the flow, and a gentle rinse in time is worth its loss. All numbers tuned. */
class FilterSolidsBehaviourTest {
    private static final double DAYS = 60;

    private static TestTank fed(FilterMedia media) {
        return TestTank.plan()
                .species("channel-catfish")
                .sensitivity(TestTank.UNHARMED)
                .media(media)
                .media(20)
                .seeds(0.5, 0.5)
                .water(7.6, 150, 0, 500)
                .stock(2, 15)
                .fed(0.6)
                .alkalinityKept(120);
    }

    private static double flow(TestTank tank) {
        return tank.parameters.flowShare(tank.y);
    }

    @Test
    void aMovingBedKeepsItselfClean() {
        TestTank tank = fed(FilterMedia.MOVING_BED).run(30);
        assertThat(flow(tank)).isEqualTo(1);
        assertThat(tank.y[TankLayout.HELD_N]).isZero();
    }

    @Test
    void softAndFineMediaAskForARinseWithinWeeks() {
        assertThat(daysToHalfFlow(FilterMedia.SPONGE)).isBetween(8.0, 30.0);
        assertThat(daysToHalfFlow(FilterMedia.SAND)).isBetween(8.0, 30.0);
        assertThat(daysToHalfFlow(FilterMedia.STATIC_PLASTIC)).isGreaterThan(daysToHalfFlow(FilterMedia.SPONGE));
    }

    private static double daysToHalfFlow(FilterMedia media) {
        TestTank tank = fed(media);
        while (flow(tank) > 0.5 && tank.day < 120) {
            tank.run(1);
        }
        return tank.day;
    }

    /** Mean of ammonia and nitrite over the time, mg N/L, where the filter is seen to once its flow is under a bound. */
    private static double burden(double bound, double loss, double solids) {
        TestTank tank = fed(FilterMedia.SPONGE);
        double sum = 0;
        double before = tank.unledgeredNitrogen();
        for (int day = 0; day < DAYS; day++) {
            if (flow(tank) < bound) {
                tank.event(new TankEvent.CleanMedia(loss, solids));
            }
            tank.run(1);
            sum += (tank.tan() + tank.nitrite()) / DAYS;
        }
        assertThat(tank.nitrogenDrift(before)).isLessThan(1e-9);
        return sum;
    }

    @Test
    void aGentleRinseWhenTheFlowDropsBeatsNeglectAndScrubbing() {
        double rinsed = burden(0.7, 0.03, 0.85);
        double never = burden(0, 0, 0);
        double scrubbed = burden(0.7, 0.6, 1);
        assertThat(rinsed).isLessThan(0.8 * never).isLessThan(0.8 * scrubbed);
    }

    /** Half-way between: at 1 / (1 + 1) the bed holds what its media halve the flow at. */
    @Test
    void flowFollowsWhatIsHeld() {
        assertThat(FilterMedia.SPONGE.flowShare(150)).isCloseTo(0.5, within(1e-12));
        assertThat(FilterMedia.SPONGE.flowShare(0)).isEqualTo(1);
        assertThat(FilterMedia.areaShare(0)).isCloseTo(0.5, within(1e-12));
    }
}
