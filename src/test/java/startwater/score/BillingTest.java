package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import startwater.biofilter.Nitrification;
import startwater.drill.Decision;
import startwater.drill.Scenario;
import startwater.drill.TankSim;
import startwater.fish.Stressor;
import startwater.tank.TankLayout;
import startwater.tank.TankParameters;
import startwater.tank.TankReadings;

/** What a way has cost, on tanks whose state is put by hand. */
class BillingTest {
    private static final Scenario HERE = TrialScenario.secondWeek(15);
    private static final Scenario PLANNED = TrialScenario.fishless();

    private TankSim sim = OneTank.of(HERE);

    @BeforeEach
    void withFish() {
        sim = ripe(OneTank.of(HERE), 240);
    }

    /** At 20 °C, with clean water and twice the filter that the full ration of so many fish needs. */
    private static TankSim ripe(TankSim sim, double fish) {
        sim.fromHere();
        double[] y = sim.state();
        y[TankLayout.TEMPERATURE] = 20;
        y[TankLayout.TAN] = 0.5;
        y[TankLayout.NITRITE] = 0.5;
        filter(sim, fish, 2, 2);
        return sim;
    }

    /** The filter of so many times what the full ration of these fish needs, by group. */
    private static void filter(TankSim sim, double fish, double aobTimes, double nobTimes) {
        double[] y = sim.state();
        TankParameters p = sim.draw().parameters();
        double massG = y[TankLayout.STOCKED] > 0 ? TankReadings.massG(y, p.strata()) : 13.5;
        y[TankLayout.AOB] = aobTimes * TankReadings.aobForRation(p, fish, massG, y[TankLayout.TEMPERATURE]);
        y[TankLayout.NOB] = nobTimes * TankReadings.nobForRation(p, fish, massG, y[TankLayout.TEMPERATURE]);
    }

    private static double part(Bill bill, Component component) {
        double first = bill.parts()[0][component.ordinal()];
        for (double[] stratum : bill.parts()) {
            assertThat(stratum[component.ordinal()]).isEqualTo(first);
        }
        return first;
    }

    private static Bill ofFishHere(Billing billing) {
        Bill bill = Bill.empty();
        billing.ofFishHere(bill);
        return bill;
    }

    /** A fifth of a percent per volume changed from here on, jobs as they are. */
    @Test
    void waterCountsFromTheVisitOn() {
        sim.state()[TankLayout.VOLUMES] = 3;
        sim.state()[TankLayout.CHLORIDE] = 20;
        Billing billing = new Billing(HERE, sim);
        sim.state()[TankLayout.VOLUMES] = 4.5;
        Bill bill = billing.bill(0.37);
        assertThat(part(bill, Component.WATER)).isCloseTo(0.3, within(1e-12));
        assertThat(part(bill, Component.JOBS)).isEqualTo(0.37);
        assertThat(part(bill, Component.SALT)).isZero();
    }

    /** Free up to 120 mg/L, or 40 to 1 on nitrite-N; then 0.2 % for every e-fold over it. */
    @Test
    void saltCountsOverWhatNitriteAsksFor() {
        Billing billing = new Billing(HERE, sim);
        double[][] nitriteChlorideLoss = {
            {0, 120, 0},
            {0, 120 * StrictMath.E, 0.2},
            {6, 240, 0},
            {6, 480, 0.2 * StrictMath.log(2)},
            {1, 240, 0.2 * StrictMath.log(2)}
        };
        for (double[] row : nitriteChlorideLoss) {
            sim.state()[TankLayout.NITRITE] = row[0];
            sim.state()[TankLayout.CHLORIDE] = row[1];
            assertThat(part(billing.bill(0), Component.SALT)).isCloseTo(row[2], within(1e-12));
        }
    }

    @Test
    void whatFishHereGoThroughCountsFromTheVisitOn() {
        double[] y = sim.state();
        y[TankLayout.GROWTH_LOST] = 1;
        y[TankLayout.WASTED] = 1;
        y[TankLayout.STRESS] = 1;
        y[TankLayout.DELAY] = 1;
        y[TankLayout.SHOCK] = 0.01;
        Billing billing = new Billing(HERE, sim);
        y[TankLayout.GROWTH_LOST] = 8;
        y[TankLayout.WASTED] = 3;
        y[TankLayout.STRESS] = 5;
        y[TankLayout.DELAY] = 4;
        y[TankLayout.SHOCK] = 0.03;
        Bill bill = ofFishHere(billing);
        // Seven days: five at 0.05 % and two at 0.15 %.
        assertThat(part(bill, Component.GROWTH)).isCloseTo(0.55, within(1e-12));
        assertThat(part(bill, Component.WASTE)).isCloseTo(2 * 0.15, within(1e-12));
        assertThat(part(bill, Component.STRESS)).isCloseTo(4 * 0.25, within(1e-12));
        assertThat(part(bill, Component.DELAY)).isCloseTo(3 * 0.07, within(1e-12));
        assertThat(part(bill, Component.SHOCK)).isCloseTo(2, within(1e-12));
        assertThat(part(bill, Component.DEATHS)).isZero();
    }

    @Test
    void theDeadCountByCauseAndSensitivityInPercentOfTheStock() {
        Billing billing = new Billing(HERE, sim);
        OneTank.died(sim, 1, Stressor.NITRITE, 0.25);
        double half = -StrictMath.log(0.5) / 2;
        sim.state()[TankLayout.hazard(3, Stressor.AMMONIA)] = half;
        sim.state()[TankLayout.hazard(3, Stressor.LOW_OXYGEN)] = half;
        Bill bill = ofFishHere(billing);
        assertThat(bill.deaths()[0]).containsOnly(0);
        assertThat(bill.deaths()[1][Stressor.NITRITE.ordinal()]).isCloseTo(25, within(1e-9));
        assertThat(bill.deaths()[3][Stressor.AMMONIA.ordinal()]).isCloseTo(25, within(1e-9));
        assertThat(bill.deaths()[3][Stressor.LOW_OXYGEN.ordinal()]).isCloseTo(25, within(1e-9));
        assertThat(bill.parts()[1][Component.DEATHS.ordinal()]).isCloseTo(25, within(1e-9));
        assertThat(bill.parts()[3][Component.DEATHS.ordinal()]).isCloseTo(50, within(1e-9));
    }

    /** A group at a quarter per day catches up by half in 4 ln 2 days; the lesser group decides. */
    @Test
    void aFilterThatIsBehindCostsTheDaysItNeedsToCatchUp() {
        Billing billing = new Billing(HERE, sim);
        double halved = 0.07 * 4 * StrictMath.log(2);
        filter(sim, 240, 0.5, 2);
        assertThat(part(ofFishHere(billing), Component.DELAY)).isCloseTo(halved, within(1e-9));
        filter(sim, 240, 2, 0.5);
        assertThat(part(ofFishHere(billing), Component.DELAY)).isCloseTo(halved, within(1e-9));
        filter(sim, 240, 0.5, 0.25);
        assertThat(part(ofFishHere(billing), Component.DELAY)).isCloseTo(2 * halved, within(1e-9));
        // No filter at all counts thirty days and no more.
        filter(sim, 240, 2, 0);
        assertThat(part(ofFishHere(billing), Component.DELAY)).isCloseTo(0.07 * 30, within(1e-9));
    }

    @Test
    void withAllFishDeadNoFilterIsWaitedFor() {
        Billing billing = new Billing(HERE, sim);
        filter(sim, 240, 0, 0);
        sim.counted(0);
        assertThat(part(ofFishHere(billing), Component.DELAY)).isZero();
    }

    private static TankSim waiting() {
        return ripe(OneTank.of(PLANNED), 240);
    }

    @Test
    void aFilterHasProvedItselfWhenItCarriesThePlannedRationAndBothReadingsAreUnderOne() {
        TankSim empty = waiting();
        Billing billing = new Billing(PLANNED, empty);
        assertThat(billing.proved()).isTrue();
        empty.state()[TankLayout.TAN] = 1;
        assertThat(billing.proved()).isFalse();
        empty.state()[TankLayout.TAN] = 0.99;
        assertThat(billing.proved()).isTrue();
        empty.state()[TankLayout.NITRITE] = 1;
        assertThat(billing.proved()).isFalse();
        empty.state()[TankLayout.NITRITE] = 0.99;
        filter(empty, 240, 0.9, 2);
        assertThat(billing.proved()).isFalse();
        filter(empty, 240, 1.1, 1.1);
        assertThat(billing.proved()).isTrue();
    }

    private static Bill toCome(TankSim sim, double ready, double days) {
        Bill bill = Bill.empty();
        new Billing(PLANNED, sim).ofFishToCome(bill, new Tally(sim, 240), ready, days);
        return bill;
    }

    /** A tenth of a percent a day until it is ready; where it never is, all days and those that are still to come. */
    @Test
    void waitingForTheFilterCostsByTheDay() {
        TankSim empty = waiting();
        assertThat(part(toCome(empty, 6.5, 21), Component.DELAY)).isCloseTo(0.65, within(1e-12));
        assertThat(part(toCome(empty, Double.NaN, 21), Component.DELAY)).isCloseTo(2.1, within(1e-12));
        filter(empty, 240, 0.5, 2);
        assertThat(part(toCome(empty, Double.NaN, 21), Component.DELAY))
                .isCloseTo(2.1 + 0.1 * 4 * StrictMath.log(2), within(1e-9));
        assertThat(part(toCome(empty, 6.5, 21), Component.DELAY)).isCloseTo(0.65, within(1e-12));
    }

    /** What stands over 1 mg/L goes as fast as nitrite oxidisers can work it, who are faster in warm water. */
    @Test
    void whatStandsOverOneMustBeWorkedOff() {
        TankSim empty = waiting();
        double[] y = empty.state();
        y[TankLayout.TAN] = 5;
        y[TankLayout.NITRITE] = 2;
        double litres = empty.draw().parameters().volumeL();
        double days = 6 * litres / y[TankLayout.NOB];
        assertThat(part(toCome(empty, Double.NaN, 21), Component.DELAY)).isCloseTo(2.1 + 0.1 * days, within(1e-9));
        y[TankLayout.TEMPERATURE] = 25;
        double warm = days / StrictMath.exp(5 * Nitrification.LN_THETA_NOB);
        assertThat(part(toCome(empty, Double.NaN, 21), Component.DELAY)).isCloseTo(2.1 + 0.1 * warm, within(1e-9));
        y[TankLayout.TAN] = 1e6;
        assertThat(part(toCome(empty, Double.NaN, 21), Component.DELAY)).isCloseTo(2.1 + 3, within(1e-9));
    }

    /** The catching up is counted already: the backlog is for a filter that carries the ration. */
    @Test
    void theBacklogIsForAFilterThatCarriesTheRation() {
        TankSim empty = waiting();
        double[] y = empty.state();
        y[TankLayout.TAN] = 5;
        double need = y[TankLayout.NOB] / 2;
        filter(empty, 240, 0.5, 0.5);
        double days = 4.5 * empty.draw().parameters().volumeL() / need + 4 * StrictMath.log(2);
        assertThat(part(toCome(empty, Double.NaN, 0), Component.DELAY)).isCloseTo(0.1 * days, within(1e-9));
    }

    @Test
    void whatFishToComeGoThroughIsTakenFromTheTally() {
        Scenario s = BentDrill.beside("beside").made();
        TankSim both = OneTank.of(s);
        both.fromHere();
        both.act(Decision.LEAVE_ALONE.withStock(0.5));
        Billing billing = new Billing(s, both);
        Tally tally = new Tally(both, 600);
        TankSim nursery = Objects.requireNonNull(both.nursery());
        nursery.state()[TankLayout.GROWTH_LOST] += 4;
        nursery.state()[TankLayout.WASTED] += 6;
        nursery.state()[TankLayout.STRESS] += 6;
        nursery.state()[TankLayout.SHOCK] += 0.02;
        OneTank.died(both, 0, Stressor.CHLORINE, 0.2);
        OneTank.died(nursery, 0, Stressor.AMMONIA, 0.5);
        tally.take(both);
        Bill bill = Bill.empty();
        billing.ofFishToCome(bill, tally, 0, 21);
        // Half of the fish are there.
        assertThat(part(bill, Component.GROWTH)).isCloseTo(2 * 0.10, within(1e-9));
        assertThat(part(bill, Component.WASTE)).isCloseTo(3 * 0.15, within(1e-9));
        assertThat(part(bill, Component.STRESS)).isCloseTo(3 * 0.25, within(1e-9));
        assertThat(part(bill, Component.SHOCK)).isCloseTo(1, within(1e-9));
        // Of 600: half of 300 beside and a fifth of 300 here.
        assertThat(bill.beside()[0]).isCloseTo(25, within(1e-6));
        assertThat(bill.beside()[1]).isZero();
        assertThat(bill.deaths()[0][Stressor.AMMONIA.ordinal()]).isCloseTo(25, within(1e-6));
        assertThat(bill.deaths()[0][Stressor.CHLORINE.ordinal()]).isCloseTo(10, within(1e-6));
        assertThat(bill.parts()[0][Component.DEATHS.ordinal()]).isCloseTo(35, within(1e-6));
    }

    @Test
    void aSystemThatNoFishAreMeantForWaitsForNothing() {
        Scenario none = PLANNED.change().fish(null, null).made();
        TankSim sim = OneTank.of(none);
        sim.state()[TankLayout.AOB] = 0;
        sim.state()[TankLayout.TAN] = 0;
        sim.state()[TankLayout.NITRITE] = 0;
        Billing billing = new Billing(none, sim);
        assertThat(billing.proved()).isTrue();
        sim.state()[TankLayout.TAN] = 50;
        Bill bill = Bill.empty();
        billing.ofFishToCome(bill, new Tally(sim, 1), Double.NaN, 21);
        assertThat(part(bill, Component.DELAY)).isCloseTo(2.1, within(1e-12));
        assertThat(bill.beside()).containsOnly(0);
    }
}
