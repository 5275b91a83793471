package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.Decision.FollowUp;
import startwater.drill.Prior;
import startwater.drill.Scenario;
import startwater.drill.Scenario.Happening;
import startwater.drill.Scenario.Happening.Kind;
import startwater.drill.TankSim;
import startwater.drill.Unknown;
import startwater.fish.Stressor;
import startwater.strip.Pad;
import startwater.tank.FastStepper;
import startwater.tank.TankLayout;

/** An option stands for a day, then the standing rules act at every visit; what it costs is counted on the way. */
class RolloutTest {
    private static final int DAY = Calendar.DAY;
    private static final int NOW = 8 * DAY + 7 * 60;
    private static final Decision FEED = Decision.LEAVE_ALONE;
    private static final Scenario HERE = TrialScenario.secondWeek(15);
    private static final Belief BELIEF =
            SmallBelief.of(HERE, 2, JudgeTest.written(Pad.AMMONIA, 1), JudgeTest.written(Pad.NITRITE, 0.5));
    private static final Belief SALTLESS =
            SmallBelief.of(HERE, 2, JudgeTest.written(Pad.AMMONIA, 1), JudgeTest.written(Pad.NITRITE, 5));
    private static final Belief EMPTY = SmallBelief.of(TrialScenario.fishless(), 2);

    private static Rollout rollout(Belief belief) {
        return new Rollout(belief, SmallBelief.book(belief));
    }

    /** The same belief where these things happen, or somebody comes at other times. */
    private static Rollout in(Scenario s, int repeatedDays) {
        Belief other = BELIEF.in(s);
        return new Rollout(other, SmallBelief.book(other), repeatedDays);
    }

    private static Scenario with(Happening... events) {
        return HERE.change().events(List.of(events)).made();
    }

    private static Happening off(Kind kind, int day, double hour) {
        return new Happening(day + hour / 24, kind, 0, 0);
    }

    /** One quantity by the minute. */
    private record Path(TreeMap<Integer, Double> values) {
        double at(int minute) {
            return Objects.requireNonNull(values.get(minute));
        }
    }

    /** One quantity on the first water, every hour. */
    private static Path path(Rollout rollout, Decision d, int at) {
        TreeMap<Integer, Double> path = new TreeMap<>();
        rollout.watch(d, 0, new FastStepper(), (minute, y) -> path.put(minute, y[at]), 60);
        return new Path(path);
    }

    private static double part(Bill bill, Component component) {
        return bill.parts()[0][component.ordinal()];
    }

    private static Bill bill(Rollout rollout, Decision d) {
        return rollout.follow(d, 0, new FastStepper());
    }

    @Test
    void aWeekWithFishThreeWeeksWithoutAndFourDaysAfterAnAbsence() {
        assertThat(rollout(BELIEF).days()).isEqualTo(7);
        assertThat(rollout(BELIEF).endMinute()).isEqualTo(NOW + 7 * DAY);
        assertThat(rollout(EMPTY).days()).isEqualTo(21);
        // Back on the third morning, or on the sixth.
        assertThat(in(HERE.withKeeper(TrialScenario.awayAfter(15).keeper()), 1).days())
                .isEqualTo(7);
        assertThat(in(HERE.withKeeper(TrialScenario.awayAWeek(15).keeper()), 1).days())
                .isEqualTo(10);
    }

    @Test
    void somebodyActsByTheRulesAfterADayOrAfterTheDaysOfAHabit() {
        assertThat(rollout(BELIEF).acts()).isEqualTo(NOW + DAY);
        assertThat(in(HERE, 3).acts()).isEqualTo(NOW + 3 * DAY);
        Scenario evenings = HERE.withKeeper(
                new Scenario.Keeper(List.of(7.0, 17.0), 14, List.of(new Scenario.Away(9, 9.5)), 8, List.of(0)));
        assertThat(in(evenings, 1).acts()).isEqualTo(9 * DAY + 17 * 60);
    }

    @Test
    void aPathBeginsAtTheVisitAndIsSeenEveryHourByTheClockUpToTheEnd() {
        Path path = path(rollout(BELIEF), FEED, TankLayout.TAN);
        assertThat(path.values().firstKey()).isEqualTo(NOW);
        assertThat(path.values().lastKey()).isEqualTo(NOW + 7 * DAY);
        assertThat(path.values()).hasSize(7 * 24 + 1);
        // It begins with what the belief holds.
        assertThat(path.at(NOW)).isEqualTo(BELIEF.water(0).sim().state()[TankLayout.TAN]);
    }

    /** A change done once stands alone for the first day; as a habit of three days it is done anew each morning. */
    @Test
    void anOptionIsDoneOnceOrOnceADayAsAHabit() {
        Decision change = FEED.withFeed(0).withChange(0.1);
        Path once = path(rollout(BELIEF), change, TankLayout.VOLUMES);
        assertThat(once.at(NOW + DAY - 60) - before(TankLayout.VOLUMES)).isCloseTo(0.1, within(1e-9));
        Path habit = path(in(HERE, 3), change, TankLayout.VOLUMES);
        for (int day = 0; day < 3; day++) {
            double changed = habit.at(NOW + day * DAY + 60) - before(TankLayout.VOLUMES);
            assertThat(changed).isCloseTo(0.1 * (day + 1), within(1e-9));
            assertThat(habit.at(NOW + (day + 1) * DAY - 60)).isEqualTo(habit.at(NOW + day * DAY + 60));
        }
    }

    private static double before(int at) {
        return BELIEF.water(0).sim().state()[at];
    }

    /** Each job costs 0.03 %: a grain of soda ash changes nothing but that it was given, once, or thrice as a habit. */
    @Test
    void everyJobIsChargedEachTimeItIsDone() {
        Decision grain = FEED.withSodaAsh(1e-9);
        Bill with = bill(rollout(BELIEF), grain);
        Bill without = bill(rollout(BELIEF), FEED);
        assertThat(part(with, Component.JOBS) - part(without, Component.JOBS)).isCloseTo(0.03, within(1e-9));
        assertThat(part(with, Component.DEATHS)).isCloseTo(part(without, Component.DEATHS), within(1e-6));
        assertThat(part(bill(in(HERE, 3), grain), Component.JOBS) - part(bill(in(HERE, 3), FEED), Component.JOBS))
                .isCloseTo(0.09, within(1e-9));
    }

    /** Looking again costs 0.07 % and is a job; who comes then does a job or two more. */
    @Test
    void askingSomebodyIsChargedWithItsPriceAndWithWhatTheyDo() {
        double alone = part(bill(rollout(SALTLESS), FEED), Component.JOBS);
        double asked = part(bill(rollout(SALTLESS), FEED.withFollowUp(FollowUp.LOOK_AGAIN)), Component.JOBS);
        assertThat(alone).isPositive();
        assertThat(asked - alone).isBetween(0.12, 0.20);
    }

    /** The pump stops at ten. Who looks again comes at noon, half-way to five; who is called is there at eleven. */
    @Test
    void whoIsAskedComesBeforeTheNextVisitAndSeesToWhatStands() {
        List<Happening> tens = new ArrayList<>();
        for (int day = 8; day < 24; day++) {
            tens.add(off(Kind.PUMP_OFF, day, 10));
        }
        Scenario s = with(tens.toArray(Happening[]::new));
        Path looked = path(in(s, 1), FEED.withFollowUp(FollowUp.LOOK_AGAIN), TankLayout.STAGNANT_HOURS);
        assertThat(looked.at(NOW + 4 * 60)).isCloseTo(1, within(1e-6));
        assertThat(looked.at(NOW + 6 * 60)).isZero();
        Path called = path(in(s, 1), FEED.withFollowUp(FollowUp.CALL), TankLayout.STAGNANT_HOURS);
        assertThat(called.at(NOW + 5 * 60)).isZero();
    }

    /** Nitrite stands at five: the rules read it a day later and salt; until then nobody does. */
    @Test
    void theRulesActOnWhatTheyRead() {
        Path chloride = path(rollout(SALTLESS), FEED, TankLayout.CHLORIDE);
        assertThat(chloride.at(NOW + DAY - 60)).isLessThan(25);
        assertThat(chloride.at(NOW + DAY + 60)).isGreaterThan(80);
    }

    @Test
    void deathsBeforeTheVisitAreNotCharged() {
        Belief harmed = SmallBelief.of(HERE, 3);
        TankSim sim = harmed.water(0).sim();
        OneTank.died(sim, 0, Stressor.AMMONIA, 0.3);
        Bill before = bill(rollout(harmed), FEED);
        OneTank.died(sim, 0, Stressor.AMMONIA, 0);
        assertThat(before.parts()).isDeepEqualTo(bill(rollout(harmed), FEED).parts());
    }

    /** A filter that carries them all is proved at the first visit after, ten hours on; the fish wait three weeks. */
    @Test
    void aRipeFilterIsReadyAtTheNextVisitAndNobodyWorksAtIt() {
        Scenario ripe = TrialScenario.fishless()
                .change()
                .unknowns(Map.of(Unknown.AOB_SEED, new Prior.Known(0.8), Unknown.NOB_SEED, new Prior.Known(0.8)))
                .shelf(grams(0))
                .made();
        Bill bill = bill(rollout(SmallBelief.of(ripe, 2)), FEED);
        assertThat(part(bill, Component.DELAY)).isCloseTo(0.10 * 10 / 24, within(1e-9));
        assertThat(part(bill, Component.GROWTH)).isCloseTo(0.10 * 21, within(1e-9));
        assertThat(part(bill, Component.JOBS)).isZero();
        assertThat(part(bill, Component.WATER)).isZero();
    }

    /** With half of the fish bought the other half is charged; those that came are looked after as fish are. */
    @Test
    void whoCameInIsFedAndWhoDidNotIsWaitedFor() {
        Belief belief = EMPTY.in(EMPTY.scenario().change().shelf(grams(0)).made());
        Bill half = bill(rollout(belief), FEED.withStock(0.5));
        Bill none = bill(rollout(belief), FEED);
        assertThat(part(none, Component.GROWTH)).isCloseTo(0.10 * 21, within(1e-9));
        assertThat(part(half, Component.GROWTH)).isBetween(0.02 * 21, 0.09 * 21);
        assertThat(part(half, Component.WATER)).isGreaterThan(part(none, Component.WATER));
    }

    private static Scenario.Shelf grams(double ammonium) {
        return new Scenario.Shelf(0, 0, 0, ammonium, 0, 40, 0, true, false);
    }

    /** Two mg/L of ammonia count as 0.03 %, and topping up is no job. */
    @Test
    void ammoniaIsChargedByWhatItBringsAndNotAsAJob() {
        double grams = 2 * 2400 / (1000 * 14.007 / 53.491);
        double none = part(bill(rollout(EMPTY), FEED), Component.JOBS);
        double little = part(bill(rollout(EMPTY), FEED.withAmmoniumChloride(1e-9)), Component.JOBS);
        assertThat(little).isCloseTo(none, within(1e-9));
        // With the shelf empty afterwards the rules top up no more.
        Scenario s = EMPTY.scenario().change().shelf(grams(grams)).made();
        Belief belief = EMPTY.in(s);
        double two = part(bill(rollout(belief), FEED.withAmmoniumChloride(grams)), Component.JOBS);
        double four = part(bill(rollout(belief), FEED.withAmmoniumChloride(2 * grams)), Component.JOBS);
        assertThat(four - two).isCloseTo(0.03, within(1e-5));
    }

    /** One night in seven it fails: the bill is six sevenths of that of a sound blower and one of that of a broken one. */
    @Test
    void theBillIsTheMeanOverTheWaysAhead() {
        Bill good = bill(in(with(), 1), FEED);
        List<Happening> every = new ArrayList<>();
        for (int day = 8; day < 24; day++) {
            every.add(off(Kind.AIR_OFF, day, 21));
        }
        Bill bad = bill(in(with(every.toArray(Happening[]::new)), 1), FEED);
        Bill mixed = bill(in(with(off(Kind.AIR_OFF, 10, 21), off(Kind.AIR_OFF, 13, 21)), 1), FEED);
        assertThat(part(bad, Component.STRESS)).isNotEqualTo(part(good, Component.STRESS));
        for (Component c : Component.values()) {
            assertThat(part(mixed, c)).isCloseTo(6 * part(good, c) / 7 + part(bad, c) / 7, within(1e-9));
        }
        assertThat(mixed.deaths()[0][Stressor.LOW_OXYGEN.ordinal()])
                .isCloseTo(
                        6 * good.deaths()[0][Stressor.LOW_OXYGEN.ordinal()] / 7
                                + bad.deaths()[0][Stressor.LOW_OXYGEN.ordinal()] / 7,
                        within(1e-9));
    }

    private static boolean airFails(Rollout rollout, int water) {
        TankSim sim = rollout.ahead(water);
        sim.goTo(NOW + DAY, new FastStepper());
        return !sim.controls().air();
    }

    /** Where it fails for half a chance, every other water shows it: 0, 1/2, 1/4, 3/4 fill the interval evenly. */
    @Test
    void thePathsAreSharedOutByTheChancesOfTheWays() {
        List<Happening> half = new ArrayList<>();
        for (int day = 8; day < 15; day++) {
            half.add(off(Kind.AIR_OFF, day, 21));
        }
        Belief four = SmallBelief.of(HERE, 4).in(with(half.toArray(Happening[]::new)));
        Rollout rollout = rollout(four);
        assertThat(rollout.futures()).hasSize(2);
        assertThat(rollout.futures().get(0).chance()).isCloseTo(0.5, within(1e-12));
        assertThat(List.of(airFails(rollout, 0), airFails(rollout, 1), airFails(rollout, 2), airFails(rollout, 3)))
                .containsExactly(false, true, false, true);
    }

    /** The blower stops at noon; whoever comes at five starts it again, though the day of the option is not over. */
    @Test
    void whatStandsIsSeenToAtTheNextVisit() {
        List<Happening> noons = new ArrayList<>();
        for (int day = 8; day < 24; day++) {
            noons.add(off(Kind.AIR_OFF, day, 12));
        }
        Rollout rollout = in(with(noons.toArray(Happening[]::new)), 1);
        Path oxygen = path(rollout, FEED.withFeed(0), TankLayout.OXYGEN);
        double stopped = oxygen.at(NOW + 10 * 60);
        assertThat(stopped).isLessThan(oxygen.at(NOW + 4 * 60) - 0.5);
        assertThat(oxygen.at(NOW + 13 * 60)).isGreaterThan(stopped + 0.5);
        // Who switched it off themselves is not surprised that it stands.
        Path still = path(in(with(), 1), FEED.withFeed(0).withAir(Decision.Air.OFF), TankLayout.OXYGEN);
        assertThat(still.at(NOW + 20 * 60)).isLessThan(still.at(NOW + 10 * 60) + 0.2);
    }

    @Test
    void aPumpThatStandsIsStartedAtTheNextVisitUnlessItIsToStand() {
        List<Happening> noons = new ArrayList<>();
        for (int day = 8; day < 24; day++) {
            noons.add(off(Kind.PUMP_OFF, day, 12));
        }
        Rollout rollout = in(with(noons.toArray(Happening[]::new)), 1);
        Path stood = path(rollout, FEED, TankLayout.STAGNANT_HOURS);
        assertThat(stood.at(NOW + 9 * 60)).isCloseTo(4, within(1e-6));
        assertThat(stood.at(NOW + 13 * 60)).isZero();
        Path meant = path(rollout(BELIEF), FEED.withPump(false), TankLayout.STAGNANT_HOURS);
        assertThat(meant.at(NOW + 13 * 60)).isCloseTo(13, within(1e-6));
    }

    /** In a room of 10 °C water at 27 °C cools while the heater stands. */
    @Test
    void aHeaterThatStandsIsSeenToUnlessItIsToStand() {
        Scenario.Water w = HERE.system();
        Scenario cold = HERE.change()
                .system(new Scenario.Water(
                        w.volumeL(),
                        w.media(),
                        w.mediaAreaM2(),
                        w.airKlaPerHour(),
                        w.surfaceKlaPerHour(),
                        w.carbonDioxideRatio(),
                        w.roomCarbonDioxidePpm(),
                        0,
                        27,
                        2,
                        10.0,
                        0,
                        0,
                        0))
                .made();
        Belief belief = SmallBelief.of(cold, 2);
        List<Happening> noons = new ArrayList<>();
        for (int day = 8; day < 24; day++) {
            noons.add(off(Kind.HEATER_OFF, day, 12));
        }
        Rollout rollout = rollout(belief.in(cold.change().events(noons).made()));
        Path seenTo = path(rollout, FEED, TankLayout.TEMPERATURE);
        assertThat(seenTo.at(NOW + 10 * 60)).isLessThan(seenTo.at(NOW + 5 * 60) - 2);
        assertThat(seenTo.at(NOW + 13 * 60)).isGreaterThan(seenTo.at(NOW + 10 * 60));
        Path meant = path(rollout(belief), FEED.withHeater(false), TankLayout.TEMPERATURE);
        assertThat(meant.at(NOW + 13 * 60)).isLessThan(meant.at(NOW + 10 * 60));
    }

    @Test
    void theSameOptionCostsTheSameWhateverElseWasFollowed() {
        Rollout rollout = rollout(BELIEF);
        Bill first = bill(rollout, FEED);
        bill(rollout, FEED.withFeed(0).withChange(0.5));
        Bill again = bill(rollout, FEED);
        assertThat(again.parts()).isDeepEqualTo(first.parts());
        assertThat(bill(rollout(BELIEF), FEED).parts()).isDeepEqualTo(first.parts());
        assertThat(rollout.follow(FEED, 1, new FastStepper()).parts()).isNotEqualTo(first.parts());
    }

    /** Fish that come in at once into an unripe filter die; those that wait in the shop only lose their growth. */
    @Test
    void fishToComeLoseGrowthWhileTheyWaitAndLivesWhenTheyComeTooSoon() {
        Bill waits = bill(rollout(EMPTY), FEED);
        Bill hurried = bill(rollout(EMPTY), FEED.withStock(1));
        assertThat(part(waits, Component.DEATHS)).isZero();
        assertThat(part(hurried, Component.DEATHS)).isGreaterThan(0.1);
        assertThat(part(hurried, Component.GROWTH)).isLessThan(part(waits, Component.GROWTH));
        assertThat(part(waits, Component.DELAY)).isPositive();
    }
}
