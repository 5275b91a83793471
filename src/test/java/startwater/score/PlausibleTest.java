package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import startwater.drill.Actor;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.Observation;
import startwater.drill.Scenario;
import startwater.drill.Seen;
import startwater.drill.Unknown;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.fish.Stressor;
import startwater.strip.FishMood;
import startwater.strip.FishSigns;
import startwater.strip.Pad;
import startwater.tank.FastStepper;
import startwater.tank.Sensitivity;
import startwater.tank.TankLayout;
import startwater.tank.TankReadings;

/** How well one tank fits what was seen and written at a visit, worked by hand from the model of each piece of evidence. */
class PlausibleTest {
    private static final Scenario HERE = TrialScenario.secondWeek(15);
    private static final Scenario NURSERY = BentDrill.beside("beside").made();
    private static final int STRATA = 4;
    /** Nobody died of 240, each of whom dies by themselves with 1e-4. */
    private static final double NOBODY_DIED = -240 * 1e-4;

    private final Plausible tank = tank(HERE, new double[Unknown.values().length]);

    private static Plausible tank(Scenario s, double[] scores) {
        return Plausible.of(s, Calendar.of(s), scores, STRATA, new FastStepper());
    }

    private static Seen seen(
            @Nullable Double oxygen,
            @Nullable Double ph,
            @Nullable FishMood mood,
            boolean brown,
            int found,
            int alive,
            int toCome) {
        return new Seen(
                26, oxygen, ph, mood, found, alive, 0, 0, brown, true, true, true, true, 100, toCome, 0, List.of());
    }

    private static Seen deaths(int found, int alive) {
        return seen(null, null, null, false, found, alive, 0);
    }

    private static VisitRecord visit(Seen seen, Written... written) {
        return new VisitRecord(0, 8 * 1440 + 420, Actor.LEARNER, seen, List.of(written), null, null);
    }

    private double observed(Seen seen, Written... written) {
        return tank.observe(visit(seen, written), new Counted(240, 0), new FastStepper(), null);
    }

    @Test
    void whereNothingIsMeasuredTheQuietDeathsAreAllThatSpeaks() {
        assertThat(observed(deaths(0, 240))).isCloseTo(NOBODY_DIED, within(1e-9));
    }

    /** A meter may be off by 0.3 mg/L: at once that far costs a half, twice a two, and never more than six. */
    @Test
    void theOxygenMeterIsWeighedAsANormalWithAFloor() {
        double oxygen = tank.sim().state()[TankLayout.OXYGEN];
        double[][] offAndLog = {{0, 0}, {0.3, -0.5}, {-0.6, -2}, {3, -6}};
        for (double[] row : offAndLog) {
            double log = observed(seen(oxygen + row[0], null, null, false, 0, 240, 0));
            assertThat(log - NOBODY_DIED).isCloseTo(row[1], within(1e-9));
        }
    }

    @Test
    void thePhMeterToo() {
        double ph = TankReadings.ph(tank.sim().state());
        assertThat(observed(seen(null, ph + 0.08, null, false, 0, 240, 0)) - NOBODY_DIED)
                .isCloseTo(-0.5, within(1e-9));
        double oxygen = tank.sim().state()[TankLayout.OXYGEN];
        assertThat(observed(seen(oxygen - 0.3, ph - 0.16, null, false, 0, 240, 0)) - NOBODY_DIED)
                .isCloseTo(-2.5, within(1e-9));
    }

    /** Eight times in ten a mood is told as it is, one step off 14 times in a hundred; gills 95 times in a hundred. */
    @Test
    void theMoodAndTheGillsAreTold() {
        FishMood mood = Objects.requireNonNull(
                FishSigns.mood(tank.sim().state(), tank.sim().draw().parameters()));
        double[] byDistance = {0.80, 0.14, 0.04, 0.015, 0.005};
        for (FishMood told : FishMood.values()) {
            double chance = byDistance[Math.abs(told.ordinal() - mood.ordinal())];
            double log = observed(seen(null, null, told, false, 0, 240, 0));
            assertThat(log - NOBODY_DIED).isCloseTo(StrictMath.log(chance * 0.95), within(1e-9));
        }
        double brown = observed(seen(null, null, mood, true, 0, 240, 0));
        assertThat(brown - NOBODY_DIED).isCloseTo(StrictMath.log(0.8 * 0.05), within(1e-9));
    }

    @Test
    void everyReadingIsWeighedByItselfAndTheyAddUp() {
        Written ammonia = JudgeTest.written(Pad.AMMONIA, 1);
        Written nitrite = JudgeTest.written(Pad.NITRITE, 0.5);
        double[] each = new double[2];
        double log =
                tank.observe(visit(deaths(0, 240), ammonia, nitrite), new Counted(240, 0), new FastStepper(), each);
        double[] y = tank.sim().state();
        assertThat(each[0])
                .isCloseTo(
                        StrictMath.log(
                                Observation.likelihood(ammonia, y, tank.sim().draw())),
                        within(1e-9));
        assertThat(each[1])
                .isCloseTo(
                        StrictMath.log(
                                Observation.likelihood(nitrite, y, tank.sim().draw())),
                        within(1e-9));
        assertThat(log).isCloseTo(NOBODY_DIED + each[0] + each[1], within(1e-9));
    }

    private static double binomialOverLikeliest(int found, int alive, double die) {
        double share = (double) found / alive;
        return found * StrictMath.log(die / share) + (alive - found) * StrictMath.log((1 - die) / (1 - share));
    }

    /** Thirty of 240 where a quarter should have died: some eleven and a half under thirty in likelihood. */
    @Test
    void deathsAreWeighedAsABinomial() {
        for (int k = 0; k < STRATA; k++) {
            OneTank.died(tank.sim(), k, Stressor.NITRITE, 0.25);
        }
        double die = 1 - 0.75 * StrictMath.exp(-1e-4);
        assertThat(observed(deaths(30, 210))).isCloseTo(binomialOverLikeliest(30, 240, die), within(1e-4));
        for (int k = 0; k < STRATA; k++) {
            assertThat(tank.stratum(k)).isCloseTo(0.25, within(1e-6));
        }
        // What was counted once is not counted again.
        assertThat(tank.observe(visit(deaths(0, 210)), new Counted(210, 0), new FastStepper(), null))
                .isCloseTo(-210 * 1e-4, within(1e-9));
    }

    @Test
    void allDeadAndNobodyLeftToDieAreNoTrouble() {
        for (int k = 0; k < STRATA; k++) {
            OneTank.died(tank.sim(), k, Stressor.NITRITE, 0.5);
        }
        double die = 1 - 0.5 * StrictMath.exp(-1e-4);
        assertThat(tank.observe(visit(deaths(10, 0)), new Counted(10, 0), new FastStepper(), null))
                .isCloseTo(10 * StrictMath.log(die), within(1e-6));
        assertThat(tank.observe(visit(deaths(0, 0)), new Counted(0, 0), new FastStepper(), null))
                .isZero();
    }

    /** A quarter died where three kinds of fish in four should lose one: the fourth kind is ruled out. */
    @Test
    void deathsTellHowSensitiveTheFishAre() {
        for (int k = 1; k < STRATA; k++) {
            OneTank.died(tank.sim(), k, Stressor.NITRITE, 0.25);
        }
        assertThat(observed(deaths(60, 180))).isCloseTo(StrictMath.log(0.75), within(1e-3));
        assertThat(tank.stratum(0)).isCloseTo(0, within(1e-9));
        assertThat(tank.stratum(1)).isCloseTo(1.0 / 3, within(1e-3));
        assertThat(tank.strata()).isEqualTo(4);
    }

    @Test
    void whoWasCountedAliveEatsAndBreathes() {
        observed(deaths(3, 200));
        assertThat(tank.sim().living()).isCloseTo(200, within(1e-9));
    }

    /** Ten of 600 are missing beside, where one in sixty should have died. */
    @Test
    void deathsBesideAreThoseThatAreMissingThere() {
        Plausible both = tank(NURSERY, new double[Unknown.values().length]);
        var nursery = Objects.requireNonNull(both.sim().nursery());
        for (int k = 0; k < STRATA; k++) {
            OneTank.died(nursery, k, Stressor.AMMONIA, 1.0 / 60);
        }
        VisitRecord v = new VisitRecord(
                0, both.sim().minute(), Actor.LEARNER, seen(null, null, null, false, 0, 0, 590), List.of(), null, null);
        double log = both.observe(v, new Counted(0, 600), new FastStepper(), null);
        double die = 1 - 59.0 / 60 * StrictMath.exp(-1e-4);
        assertThat(log).isCloseTo(binomialOverLikeliest(10, 600, die), within(1e-6));
        assertThat(both.sim().toCome()).isEqualTo(590);
        // The same count again: nobody has died since.
        assertThat(both.observe(v, new Counted(0, 590), new FastStepper(), null))
                .isCloseTo(-590 * 1e-4, within(1e-9));
    }

    @Test
    void evidenceAddsUpVisitByVisitAndTheLatestMayCountInPart() {
        double first = observed(seen(tank.sim().state()[TankLayout.OXYGEN] + 0.3, null, null, false, 0, 240, 0));
        double second = observed(deaths(0, 240));
        assertThat(tank.logLikelihood()).isCloseTo(first + second, within(1e-12));
        assertThat(tank.latest()).isEqualTo(second);
        assertThat(tank.tempered(1)).isCloseTo(first + second, within(1e-12));
        assertThat(tank.tempered(0)).isCloseTo(first, within(1e-12));
        assertThat(tank.tempered(0.25)).isCloseTo(first + second / 4, within(1e-12));
    }

    private static VisitRecord decided(Actor actor, @Nullable Decision d) {
        return new VisitRecord(0, 8 * 1440 + 420, actor, deaths(0, 240), List.of(), d, null);
    }

    @Test
    void decisionsAreFollowedAndStandingOrdersAreNotDoneTwice() {
        Decision change = Decision.LEAVE_ALONE.withChange(0.5);
        tank.follow(decided(Actor.ORDERS, change));
        tank.follow(decided(Actor.LEARNER, null));
        assertThat(tank.sim().state()[TankLayout.VOLUMES]).isZero();
        tank.follow(decided(Actor.LEARNER, change));
        tank.follow(decided(Actor.HELPER, change));
        assertThat(tank.sim().state()[TankLayout.VOLUMES]).isEqualTo(1);
    }

    /** Newcomers lived elsewhere: what died here before they came is no evidence on them. */
    @Test
    void deathsCountAnewFromTheMomentFishComeIn() {
        Plausible both = tank(NURSERY, new double[Unknown.values().length]);
        var nursery = Objects.requireNonNull(both.sim().nursery());
        for (int k = 0; k < STRATA; k++) {
            OneTank.died(nursery, k, Stressor.AMMONIA, 0.3);
        }
        both.follow(decided(Actor.LEARNER, Decision.LEAVE_ALONE.withStock(0.5)));
        int here = (int) Math.rint(both.sim().living());
        assertThat(here).isGreaterThan(100);
        VisitRecord v = new VisitRecord(
                0,
                both.sim().minute(),
                Actor.LEARNER,
                seen(null, null, null, false, 0, here, 0),
                List.of(),
                null,
                null);
        // The nursery's own deaths are left out by counting nobody there before.
        assertThat(both.observe(v, new Counted(here, 0), new FastStepper(), null))
                .isCloseTo(-here * 1e-4, within(1e-6));
    }

    @Test
    void aCopyGoesItsOwnWay() {
        observed(deaths(0, 240));
        Plausible copy = tank.copy();
        assertThat(copy.logLikelihood()).isEqualTo(tank.logLikelihood());
        assertThat(copy.latest()).isEqualTo(tank.latest());
        copy.follow(decided(Actor.LEARNER, Decision.LEAVE_ALONE.withChange(0.5)));
        copy.observe(visit(deaths(0, 100)), new Counted(240, 0), new FastStepper(), null);
        assertThat(tank.sim().state()[TankLayout.VOLUMES]).isZero();
        assertThat(tank.sim().living()).isCloseTo(240, within(1e-9));
        assertThat(tank.logLikelihood()).isCloseTo(NOBODY_DIED, within(1e-9));
    }

    /** A normal score of 1 and one of -2: a half and two. */
    @Test
    void thePriorIsNormalInTheScores() {
        double[] scores = new double[Unknown.values().length];
        assertThat(tank(HERE, scores).logPrior()).isZero();
        scores[3] = 1;
        scores[7] = -2;
        assertThat(tank(HERE, scores).logPrior()).isCloseTo(-2.5, within(1e-12));
        assertThat(tank(HERE, scores).scores()).containsExactly(scores);
    }

    /** The middles of four equal shares of a standard normal are ±1.15035 and ±0.31864 (tables); sd 0.25 in the log. */
    @Test
    void theKindsOfFishStandAtTheMiddlesOfEqualShares() {
        Sensitivity factors = tank.sim().draw().parameters().sensitivity();
        double[] z = {-1.15035, -0.31864, 0.31864, 1.15035};
        for (int k = 0; k < STRATA; k++) {
            assertThat(factors.at(k)).isCloseTo(StrictMath.exp(0.25 * z[k]), within(1e-5));
            assertThat(tank.stratum(k)).isEqualTo(0.25);
        }
        assertThat(Arrays.stream(z).sum()).isZero();
    }
}
