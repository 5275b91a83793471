package startwater.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static startwater.drill.TestDrill.at;
import static startwater.drill.TestDrill.drill;

import java.util.Set;
import org.junit.jupiter.api.Test;
import startwater.fish.Stressor;
import startwater.strip.Pad;
import startwater.tank.FastStepper;
import startwater.tank.TankLayout;
import startwater.tank.TankParameters;
import startwater.tank.TankReadings;

/** Fish that come in by a decision: bought ones by batches, and those of a nursery beside. */
class StockingDrillTest {
    private final FastStepper stepper = new FastStepper();

    private static double alive(TankSim tank) {
        return TankReadings.fishAlive(tank.state(), tank.draw().parameters().strata());
    }

    @Test
    void halfThePlannedFishGoInAndTheRestLater() {
        DrillRun run = DrillRun.start(drill().planned(100, 12, 0).scenario(), 1, DrillRun.Pace.EVERY_VISIT);
        assertThat(run.now().seen().alive()).isZero();
        assertThat(run.now().seen().toCome()).isEqualTo(100);
        assertThat(run.now().seen().toComeMassG()).isEqualTo(12);
        run.decide(Decision.LEAVE_ALONE.withFeed(0.3).withStock(0.5), null);
        assertThat(run.now().seen().alive()).isEqualTo(50);
        assertThat(run.now().seen().toCome()).isEqualTo(50);
        assertThat(run.now().seen().mood()).isNotNull();
        run.decide(Decision.LEAVE_ALONE.withFeed(0.3).withStock(0.8), null);
        assertThat(run.now().seen().alive()).isEqualTo(100);
        run.decide(Decision.LEAVE_ALONE.withFeed(0.3).withStock(0.5), null);
        assertThat(run.now().seen().alive()).isEqualTo(100);
        assertThat(run.past().last().decision()).extracting(Decision::stock).isEqualTo(0.0);
    }

    @Test
    void fishThatCameInCanDieAndAreCounted() {
        DrillRun run = DrillRun.start(drill().planned(100, 12, 0).seed(1e-5).scenario(), 1, DrillRun.Pace.EVERY_VISIT);
        run.decide(Decision.LEAVE_ALONE.withFeed(1).withStock(1), null);
        run.hidden().state()[TankLayout.NITRITE] = 60;
        int found = 0;
        while (!run.over()) {
            run.decide(Decision.LEAVE_ALONE.withFeed(0), null);
        }
        for (VisitRecord v : run.past().visits()) {
            found += v.seen().found();
            assertThat(v.seen().alive()).isBetween(0, 100);
        }
        assertThat(found).isGreaterThan(20);
        assertThat(run.past().last().seen().alive()).isEqualTo(100 - found);
    }

    @Test
    void theSameActsGiveTheSameRun() {
        Scenario s = drill().nursery(150, 10).scenario();
        DrillRun one = DrillRun.start(s, 7, DrillRun.Pace.LEARNER);
        one.decide(Decision.LEAVE_ALONE.withFeed(0.3).withStock(0.4).withRipeMedia(0.5), null);
        one.decide(Decision.LEAVE_ALONE.withFeed(0.3).withStock(0.6), null);
        DrillRun again = DrillRun.replay(s, 7, one.log(), NOBODY);
        assertThat(again.hidden().state()).isEqualTo(one.hidden().state());
        assertThat(again.now()).isEqualTo(one.now());
    }

    @Test
    void aBagOfRipeMediaGivesItsShareOfTheFilterOnce() {
        TankSim tank = drill().planned(100, 12, 0.2).seed(1e-4).tank();
        double capacity = tank.draw().parameters().aobCapacityMgPerDay();
        double before = tank.state()[TankLayout.AOB];
        tank.act(Decision.LEAVE_ALONE.withRipeMedia(0.75));
        assertThat(tank.state()[TankLayout.AOB]).isCloseTo(before + 0.15 * capacity, within(1e-6));
        tank.act(Decision.LEAVE_ALONE.withRipeMedia(0.75));
        assertThat(tank.state()[TankLayout.AOB]).isCloseTo(before + 0.2 * capacity, within(1e-6));
        assertThat(tank.bagLeft()).isZero();
    }

    /** The nursery keeps its fish alive by its own orders, until they are moved. */
    @Test
    void theNurseryRunsBesideAndGivesItsFish() {
        TankSim tank = drill().nursery(150, 10).tank();
        TankSim nursery = java.util.Objects.requireNonNull(tank.nursery());
        assertThat(alive(nursery)).isCloseTo(150, within(1e-6));
        double mass = tank.toComeMassG();
        tank.goTo(at(5, 7), stepper);
        assertThat(nursery.minute()).isEqualTo(tank.minute());
        assertThat(alive(nursery)).isGreaterThan(140);
        assertThat(tank.toComeMassG()).isGreaterThan(mass + 0.3);
        double volumes = nursery.state()[TankLayout.VOLUMES];
        assertThat(volumes).isCloseTo(3 * 0.3, within(1e-9));
        tank.act(Decision.LEAVE_ALONE.withFeed(0.3).withStock(0.4));
        assertThat(alive(tank)).isCloseTo(60, within(1e-6));
        assertThat(tank.toCome()).isEqualTo(StrictMath.floor(alive(nursery)));
        tank.goTo(at(6, 7), stepper);
        assertThat(tank.state()[TankLayout.TAN]).isPositive();
        tank.act(Decision.LEAVE_ALONE.withStock(1));
        assertThat(alive(nursery)).isLessThan(1);
        assertThat(alive(tank)).isGreaterThan(130);
    }

    @Test
    void nitrogenClosesOverMainSystemAndNursery() {
        TankSim tank = drill().media("sand").nursery(150, 10).tank();
        TankSim nursery = java.util.Objects.requireNonNull(tank.nursery());
        double before = unledgered(tank) + unledgered(nursery);
        double scale = nursery.state()[TankLayout.FISH_N];
        for (int day = 3; day < 9; day++) {
            tank.goTo(at(day, 7), stepper);
            tank.act(Decision.LEAVE_ALONE
                    .withFeed(0.4)
                    .withStock(0.2)
                    .withRipeMedia(0.2)
                    .withChange(0.1)
                    .withAmmoniumChloride(2));
        }
        double after = unledgered(tank) + unledgered(nursery);
        assertThat(StrictMath.abs(after - before)).isLessThan(1e-9 * scale);
    }

    private static double unledgered(TankSim tank) {
        TankParameters p = tank.draw().parameters();
        return TankReadings.nitrogenMg(tank.state(), p.volumeL()) - TankReadings.ledgerMg(tank.state());
    }

    /** Who died in the nursery stays dead when the others are moved, and harm may be counted anew from any moment. */
    @Test
    void theDeadOfTheNurseryAreCountedBeforeAndAfterAMove() {
        TankSim tank = drill().nursery(150, 10).tank();
        TankSim nursery = java.util.Objects.requireNonNull(tank.nursery());
        nursery.state()[TankLayout.NITRITE] = 60;
        tank.goTo(at(5, 7), stepper);
        double dead = dead(tank);
        assertThat(dead).isGreaterThan(5);
        assertThat(alive(nursery) + dead).isCloseTo(150, within(1e-6));
        tank.act(Decision.LEAVE_ALONE.withStock(0.4));
        assertThat(dead(tank)).isCloseTo(dead, within(1e-6));
        double living = alive(tank) + alive(nursery);
        tank.fromHere();
        assertThat(dead(tank)).isZero();
        assertThat(alive(tank) + alive(nursery)).isCloseTo(living, within(1e-6));
        tank.goTo(at(6, 7), stepper);
        assertThat(alive(tank) + alive(nursery) + dead(tank)).isCloseTo(living, within(1e-6));
    }

    private static double dead(TankSim tank) {
        double sum = 0;
        for (Stressor cause : Stressor.values()) {
            sum += tank.dead(0, cause);
        }
        return sum;
    }

    @Test
    void aBranchLeavesTheNurseryOfTheOtherAlone() {
        TankSim tank = drill().nursery(150, 10).tank();
        TankSim branch = tank.copy();
        branch.act(Decision.LEAVE_ALONE.withStock(1));
        branch.goTo(at(4, 7), stepper);
        assertThat(tank.toCome()).isEqualTo(150);
        assertThat(branch.toCome()).isLessThan(2);
        assertThat(alive(tank)).isZero();
    }

    private static final Attendant NOBODY = new Attendant() {
        @Override
        public Set<Pad> tests(Scenario scenario, Calendar calendar, DrillLog log) {
            throw new IllegalStateException("nobody was called");
        }

        @Override
        public Decision decide(Scenario scenario, Calendar calendar, DrillLog log) {
            throw new IllegalStateException("nobody was called");
        }
    };
}
