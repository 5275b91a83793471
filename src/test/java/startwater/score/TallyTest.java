package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.Scenario;
import startwater.drill.TankSim;
import startwater.fish.Stressor;
import startwater.tank.FastStepper;
import startwater.tank.TankLayout;

/** What planned fish go through counts by where they are: in the system, in the nursery, not yet bought. */
class TallyTest {
    private static final Scenario NURSERY = BentDrill.beside("beside").made();
    private static final Scenario BOUGHT = TrialScenario.fishless();

    private TankSim sim = OneTank.of(NURSERY);
    private TankSim nursery = Objects.requireNonNull(sim.nursery());

    @BeforeEach
    void fromHere() {
        sim = OneTank.of(NURSERY);
        nursery = Objects.requireNonNull(sim.nursery());
        sim.fromHere();
    }

    /** Half of the fish here and half beside, who stay until they are moved by hand. */
    private Tally halfMoved() {
        sim.act(Decision.LEAVE_ALONE.withStock(0.5));
        return new Tally(sim, 600);
    }

    private static void lives(TankSim where, double growth, double waste, double stress, double shock) {
        where.state()[TankLayout.GROWTH_LOST] += growth;
        where.state()[TankLayout.WASTED] += waste;
        where.state()[TankLayout.STRESS] += stress;
        where.state()[TankLayout.SHOCK] += shock;
    }

    @Test
    void eachWaterCountsByTheShareOfTheFishInIt() {
        Tally tally = halfMoved();
        lives(sim, 1, 2, 3, 0.1);
        lives(nursery, 3, 4, 5, 0.3);
        tally.take(sim);
        assertThat(tally.growthLost()).isCloseTo(2, within(1e-9));
        assertThat(tally.wasted()).isCloseTo(3, within(1e-9));
        assertThat(tally.stress()).isCloseTo(4, within(1e-9));
        assertThat(tally.shock()).isCloseTo(0.2, within(1e-9));
        // What was counted is not counted again, what comes after is.
        tally.take(sim);
        assertThat(tally.stress()).isCloseTo(4, within(1e-9));
        lives(nursery, 0, 0, 1, 0);
        tally.take(sim);
        assertThat(tally.stress()).isCloseTo(4.5, within(1e-9));
    }

    @Test
    void whatWasBeforeTheVisitDoesNotCount() {
        lives(sim, 9, 9, 9, 9);
        lives(nursery, 9, 9, 9, 9);
        Tally tally = halfMoved();
        tally.take(sim);
        assertThat(tally.growthLost()).isZero();
        assertThat(tally.shock()).isZero();
    }

    @Test
    void anEmptyTankTroublesNobody() {
        Tally tally = new Tally(sim, 600);
        lives(sim, 1, 1, 1, 1);
        tally.take(sim);
        assertThat(tally.stress()).isZero();
        assertThat(tally.growthLost()).isZero();
    }

    @Test
    void fishThatAreNowhereYetLoseEveryDay() {
        TankSim shop = OneTank.of(BOUGHT);
        Tally tally = new Tally(shop, 240);
        shop.goTo(shop.minute() + 3 * Calendar.DAY / 2, new FastStepper());
        tally.take(shop);
        assertThat(tally.growthLost()).isCloseTo(1.5, within(1e-9));
        shop.act(Decision.LEAVE_ALONE.withStock(0.75));
        tally.take(shop);
        double lostHere = shop.state()[TankLayout.GROWTH_LOST];
        shop.goTo(shop.minute() + Calendar.DAY, new FastStepper());
        tally.take(shop);
        lostHere = shop.state()[TankLayout.GROWTH_LOST] - lostHere;
        assertThat(lostHere).isPositive();
        assertThat(tally.growthLost()).isCloseTo(1.5 + 0.25 + shop.living() / 240 * lostHere, within(1e-9));
    }

    @Test
    void whoDiesInTheNurseryIsCountedBySensitivity() {
        Tally tally = new Tally(sim, 600);
        OneTank.died(nursery, 1, Stressor.AMMONIA, 0.25);
        OneTank.died(nursery, 3, Stressor.CHLORINE, 0.5);
        tally.take(sim);
        assertThat(tally.deadBeside(0)).isZero();
        assertThat(tally.deadBeside(1)).isCloseTo(150, within(1e-6));
        assertThat(tally.deadBeside(2)).isZero();
        assertThat(tally.deadBeside(3)).isCloseTo(300, within(1e-6));
        tally.take(sim);
        assertThat(tally.deadBeside(3)).isCloseTo(300, within(1e-6));
    }

    /** A fish that is moved takes its share of the dead along: those stay dead of the nursery. */
    @Test
    void theDeadOfTheNurseryStayItsOwnWhenTheLivingMove() {
        OneTank.died(nursery, 2, Stressor.NITRITE, 0.1);
        Tally tally = new Tally(sim, 600);
        OneTank.died(nursery, 2, Stressor.NITRITE, 0.2);
        tally.take(sim);
        sim.act(Decision.LEAVE_ALONE.withStock(0.5));
        tally.take(sim);
        assertThat(tally.deadBeside(2)).isCloseTo(60, within(1e-6));
    }
}
