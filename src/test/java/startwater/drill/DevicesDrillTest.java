package startwater.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static startwater.drill.TestDrill.at;
import static startwater.drill.TestDrill.drill;

import org.junit.jupiter.api.Test;
import startwater.drill.Decision.Air;
import startwater.drill.Decision.FilterCare;
import startwater.drill.Scenario.Happening.Kind;
import startwater.tank.FastStepper;
import startwater.tank.TankLayout;

/** What fails, what the weather does, and what a decision can put right. The first visit is on day 2 at 7 h. */
class DevicesDrillTest {
    private final FastStepper stepper = new FastStepper();

    private static double celsius(TankSim tank) {
        return tank.state()[TankLayout.TEMPERATURE];
    }

    @Test
    void aPowerCutTakesPumpAirAndHeaterAndGivesThemBack() {
        TankSim tank = drill().room(18).happens(2.5, Kind.POWER_OFF, 3, 0).tank();
        tank.goTo(at(2, 13), stepper);
        assertThat(tank.controls().air()).isFalse();
        assertThat(tank.controls().pump()).isFalse();
        assertThat(tank.heater()).isFalse();
        assertThat(tank.controls().setPointC()).isEqualTo(18);
        // Whatever is decided: without mains nothing runs.
        tank.act(Decision.LEAVE_ALONE);
        assertThat(tank.controls().air()).isFalse();
        tank.goTo(at(2, 16), stepper);
        assertThat(tank.controls().air()).isTrue();
        assertThat(tank.controls().pump()).isTrue();
        assertThat(tank.controls().setPointC()).isEqualTo(27);
    }

    @Test
    void spareAirRunsWithoutMains() {
        TankSim none = drill().spareAir(3).happens(2.5, Kind.POWER_OFF, 9, 0).tank();
        TankSim spare = none.copy();
        none.goTo(at(2, 13), stepper);
        spare.goTo(at(2, 13), stepper);
        none.act(Decision.LEAVE_ALONE.withFeed(0));
        spare.act(Decision.LEAVE_ALONE.withFeed(0).withAir(Air.SPARE));
        assertThat(spare.controls().air()).isFalse();
        assertThat(spare.controls().spareAirPerHour()).isEqualTo(3);
        none.goTo(at(2, 20), stepper);
        spare.goTo(at(2, 20), stepper);
        assertThat(spare.state()[TankLayout.OXYGEN]).isGreaterThan(none.state()[TankLayout.OXYGEN] + 2);
    }

    @Test
    void withoutItsHeaterTheTankDriftsToTheRoomUntilSomebodySeesToIt() {
        TankSim tank = drill().room(18).happens(2.5, Kind.HEATER_OFF, 0, 0).tank();
        double before = celsius(tank);
        tank.goTo(at(3, 12), stepper);
        assertThat(celsius(tank)).isCloseTo(18 + (before - 18) * StrictMath.exp(-2), within(0.05));
        tank.act(Decision.LEAVE_ALONE.withHeater(false));
        tank.goTo(at(5, 12), stepper);
        assertThat(celsius(tank)).isCloseTo(18, within(0.1));
        tank.act(Decision.LEAVE_ALONE);
        tank.goTo(at(8, 12), stepper);
        assertThat(celsius(tank)).isCloseTo(27, within(0.1));
    }

    @Test
    void aColdSnapCountsWhereNoHeaterRuns() {
        TankSim heated =
                drill().room(18).happens(2.5, Kind.ROOM_TEMPERATURE, 48, 8).tank();
        TankSim bare = drill().happens(2.5, Kind.ROOM_TEMPERATURE, 48, 8).tank();
        heated.goTo(at(4, 12), stepper);
        bare.goTo(at(4, 12), stepper);
        assertThat(celsius(heated)).isCloseTo(27, within(0.01));
        assertThat(celsius(bare)).isLessThan(9);
        bare.goTo(at(8, 12), stepper);
        assertThat(celsius(bare)).isCloseTo(27, within(0.1));
    }

    @Test
    void aColdSourceIsFeltInAChange() {
        TankSim tank = drill().happens(2.4, Kind.SOURCE_TEMPERATURE, 0, 9).tank();
        tank.goTo(at(2, 17), stepper);
        double before = celsius(tank);
        tank.act(Decision.LEAVE_ALONE.withChange(0.5));
        assertThat(celsius(tank)).isCloseTo((before + 9) / 2, within(0.01));
    }

    @Test
    void aPumpThatStandsIsStartedByADecision() {
        TankSim tank = drill().media("sponge").happens(2.5, Kind.PUMP_OFF, 0, 0).tank();
        tank.goTo(at(3, 7), stepper);
        assertThat(tank.controls().pump()).isFalse();
        assertThat(tank.state()[TankLayout.LOOSE_N]).isPositive();
        TankSim drained = tank.copy();
        TankSim left = tank.copy();
        left.act(Decision.LEAVE_ALONE.withPump(false));
        tank.act(Decision.LEAVE_ALONE.withFeed(0));
        drained.act(Decision.LEAVE_ALONE.withFeed(0).withFilter(FilterCare.DRAIN));
        assertThat(left.controls().pump()).isFalse();
        assertThat(tank.controls().pump()).isTrue();
        tank.goTo(at(3, 8), stepper);
        drained.goTo(at(3, 8), stepper);
        assertThat(drained.state()[TankLayout.TAN] + drained.state()[TankLayout.ORGANIC_N])
                .isLessThan(tank.state()[TankLayout.TAN] + tank.state()[TankLayout.ORGANIC_N] - 0.02);
        assertThat(tank.state()[TankLayout.STAGNANT_HOURS]).isZero();
    }

    @Test
    void whatPeopleDoToTheFilterCostsItsBacteria() {
        double whole = aob(drill(), 13);
        assertThat(aob(drill().happens(2.5, Kind.DRIED, 6, 0), 13) / whole)
                .isCloseTo(StrictMath.pow(0.9, 6), within(0.01));
        assertThat(aob(drill().happens(2.5, Kind.SCRUBBED, 0, 0), 13) / whole).isCloseTo(0.4, within(0.01));
        // Twelve hours of a drug that takes half in the end: 1 - exp(-0.5 / 2) = 0.22 of ln 2.
        assertThat(aob(drill().happens(2.5, Kind.MEDICATED, 0, 0.5), 24) / aob(drill(), 24))
                .isCloseTo(StrictMath.exp(-0.22 * StrictMath.log(2)), within(0.03));
    }

    /** Ammonia oxidisers at an hour of day 2. */
    private double aob(TestDrill drill, int hour) {
        TankSim tank = drill.tank();
        tank.goTo(at(2, hour), stepper);
        return tank.state()[TankLayout.AOB];
    }

    @Test
    void theKeeperIsToldWhatDoesNotShow() {
        Scenario s = drill().happens(2.5, Kind.POWER_OFF, 1, 0)
                .happens(2.6, Kind.AIR_OFF, 1, 0)
                .happens(3.2, Kind.MEDICATED, 0, 0.3)
                .scenario();
        DrillRun run = DrillRun.start(s, 1, DrillRun.Pace.EVERY_VISIT);
        assertThat(run.now().seen().told()).isEmpty();
        run.decide(Decision.LEAVE_ALONE, null);
        assertThat(run.now().seen().told()).containsExactly(Kind.POWER_OFF);
        run.decide(Decision.LEAVE_ALONE, null);
        assertThat(run.now().seen().told()).containsExactly(Kind.MEDICATED);
        run.decide(Decision.LEAVE_ALONE, null);
        assertThat(run.now().seen().told()).isEmpty();
    }

    @Test
    void aClogShowsAsFlowAndARinseBringsItBack() {
        DrillRun run = DrillRun.start(drill().media("sponge").scenario(), 1, DrillRun.Pace.EVERY_VISIT);
        assertThat(run.now().seen().flowPercent()).isBetween(80, 100);
        double[] y = run.hidden().state();
        y[TankLayout.HELD_N] = 20 * 150;
        run.decide(Decision.LEAVE_ALONE, null);
        assertThat(run.now().seen().flowPercent()).isEqualTo(50);
        run.decide(Decision.LEAVE_ALONE.withFilter(FilterCare.RINSE), null);
        assertThat(run.now().seen().flowPercent()).isEqualTo(100);
    }

    /** 10 L a day of 1,000 L from a source with 60 mg/L of chloride: 0.6 mg/L more each day. */
    @Test
    void whatEvaporatesIsToppedUp() {
        Scenario s = drill().inflow(0, 10).scenario();
        TankSim tank = TestDrill.tank(s);
        double before = tank.state()[TankLayout.CHLORIDE];
        tank.goTo(at(7, 7), stepper);
        double volume = tank.draw().parameters().volumeL();
        assertThat(tank.state()[TankLayout.CHLORIDE] - before)
                .isCloseTo(5 * 10 / volume * tank.draw().value(Unknown.SOURCE_CHLORIDE), within(1e-3));
    }
}
