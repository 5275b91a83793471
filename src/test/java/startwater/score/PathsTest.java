package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.Observation;
import startwater.drill.Scenario;
import startwater.drill.TankSim;
import startwater.fish.Stressor;
import startwater.score.Verdict.Band;
import startwater.score.Verdict.Variable;
import startwater.strip.Pad;
import startwater.tank.FastStepper;
import startwater.tank.TankLayout;
import startwater.tank.TankReadings;

/** The waters on their way under the choice and under the best option. */
class PathsTest {
    private static final Decision FEED = Decision.LEAVE_ALONE;
    private static final Decision HOLD = FEED.withFeed(0).withChange(0.5);
    private static final Scenario HERE = TrialScenario.secondWeek(15);
    private static final HandScored FED = HandScored.of(
            SmallBelief.of(HERE, 4, JudgeTest.written(Pad.AMMONIA, 2), JudgeTest.written(Pad.NITRITE, 0.5)),
            FEED,
            HOLD);
    private static final Belief BELIEF = FED.scored().belief();
    private static final HandScored EMPTY =
            HandScored.of(SmallBelief.of(TrialScenario.fishless(), 2), FEED, FEED.withStock(0.5));

    private final Paths paths = FED.paths(0, 1);

    /** Losses of two options in which the first kills by a cause, % of the stock. */
    private static Losses killing(Stressor cause, double percent) {
        return killing(cause, percent, Stressor.TEMPERATURE, 0);
    }

    /** The same where both kill by another. */
    private static Losses killing(Stressor cause, double percent, Stressor anyway, double both) {
        int tanks = FED.scored().losses().tanks();
        double[][][] parts = new double[2][tanks][Component.values().length];
        double[][][] deaths = new double[2][tanks][Stressor.COUNT];
        for (int t = 0; t < tanks; t++) {
            parts[0][t][Component.DEATHS.ordinal()] = percent;
            deaths[0][t][cause.ordinal()] = percent;
            deaths[0][t][anyway.ordinal()] += both;
            deaths[1][t][anyway.ordinal()] += both;
        }
        return new Losses(parts, deaths, LossesTest.share(tanks), Belief.STRATA);
    }

    private Verdict.Path decisive(Stressor cause, double percent) {
        return paths.decisive(FED.scored(), killing(cause, percent), 0, 1);
    }

    /** From seven in the morning on: at once, at nine, then every three hours by the clock up to seven days. */
    @Test
    void theHoursAreThoseOfTheClock() {
        List<Double> hours = decisive(Stressor.NITRITE, 5).hours();
        assertThat(hours)
                .startsWith(0.0, 2.0, 5.0, 8.0)
                .endsWith(164.0, 167.0, 168.0)
                .hasSize(58);
    }

    @Test
    void theFirstHourIsTheBeliefAfterTheAct() {
        Verdict.Path path = decisive(Stressor.AMMONIA, 5);
        Band now = BELIEF.band(w -> TankReadings.toxicAmmoniaMgPerL(w.sim().state()));
        assertThat(path.own().get(0)).isEqualTo(now);
        // Half of the water is changed for water without nitrite and with as much chloride.
        Verdict.Path nitrite = decisive(Stressor.NITRITE, 5);
        double half = nitrite.own().get(0).middle() / 2;
        assertThat(nitrite.best().get(0).middle()).isCloseTo(half, within(0.1 * half));
        assertThat(path.returnHours()).isEqualTo(24);
    }

    @Test
    void whatKillsMoreUnderTheChoiceDecides() {
        assertThat(decisive(Stressor.AMMONIA, 5).variable()).isEqualTo(Variable.TOXIC_AMMONIA);
        assertThat(decisive(Stressor.NITRITE, 5).variable()).isEqualTo(Variable.EFFECTIVE_NITRITE);
        assertThat(decisive(Stressor.LOW_OXYGEN, 5).variable()).isEqualTo(Variable.OXYGEN);
        assertThat(decisive(Stressor.CHLORINE, 5).variable()).isEqualTo(Variable.CHLORINE);
    }

    /** Where nothing kills more, or only what has no path, what comes nearest to its guidance is shown. */
    @Test
    void whereNothingKillsWhatIsNearestToHarmIsShown() {
        double ammonia = paths.peakShare(Variable.TOXIC_AMMONIA);
        double nitrite = paths.peakShare(Variable.EFFECTIVE_NITRITE);
        Variable nearest = ammonia >= nitrite ? Variable.TOXIC_AMMONIA : Variable.EFFECTIVE_NITRITE;
        assertThat(ammonia).isNotEqualTo(nitrite);
        assertThat(decisive(Stressor.CHLORINE, 0.01).variable()).isEqualTo(nearest);
        assertThat(decisive(Stressor.PH, 5).variable()).isEqualTo(nearest);
    }

    /** Two causes: the one that kills more. And a choice that is best is set against the worst. */
    @Test
    void theCauseThatTellsTheOptionsApartMostIsTaken() {
        Losses both = killing(Stressor.AMMONIA, 1).and(killing(Stressor.NITRITE, 3));
        assertThat(paths.decisive(FED.scored(), both, 1, 1).variable()).isEqualTo(Variable.EFFECTIVE_NITRITE);
        assertThat(paths.decisive(FED.scored(), both, 0, 1).variable()).isEqualTo(Variable.TOXIC_AMMONIA);
        // What kills as many under either tells nothing.
        Losses alike = killing(Stressor.AMMONIA, 5, Stressor.NITRITE, 6);
        assertThat(paths.decisive(FED.scored(), alike, 0, 1).variable()).isEqualTo(Variable.TOXIC_AMMONIA);
        Losses other = killing(Stressor.AMMONIA, 3).and(killing(Stressor.NITRITE, 1));
        assertThat(paths.decisive(FED.scored(), other, 1, 1).variable()).isEqualTo(Variable.TOXIC_AMMONIA);
    }

    @Test
    void aChoiceThatIsBestHasOnePath() {
        Verdict.Path path = FED.paths(1, 1).decisive(FED.scored(), killing(Stressor.NITRITE, 5), 1, 1);
        assertThat(path.own()).isEqualTo(path.best());
    }

    @Test
    void withoutFishTotalAmmoniaDecidesUnlessSomeAreToCome() {
        Losses none = EMPTY.scored().losses();
        Verdict.Path path = EMPTY.paths(0, 0).decisive(EMPTY.scored(), none, 0, 0);
        assertThat(path.variable()).isEqualTo(Variable.TOTAL_AMMONIA);
        assertThat(path.hours()).endsWith(21 * 24.0);
        Band now = EMPTY.scored().belief().band(w -> w.sim().state()[TankLayout.TAN]);
        assertThat(path.own().get(0)).isEqualTo(now);
        for (int[] pair : new int[][] {{0, 1}, {1, 0}}) {
            assertThat(EMPTY.paths(pair[0], pair[1])
                            .decisive(EMPTY.scored(), none, pair[0], pair[1])
                            .variable())
                    .isNotEqualTo(Variable.TOTAL_AMMONIA);
        }
    }

    /** What the strip said, worked by the keeper: nitrite over one and chloride of the sheet over its half. */
    @Test
    void todaysValueIsWorkedFromTheLog() {
        Notebook book = FED.scored().book();
        double half = startwater.fish.Species.byId("channel-catfish").chlorideHalfMgPerL();
        assertThat(decisive(Stressor.NITRITE, 5).todayFromLog()).isCloseTo(0.5 / (1 + 15 / half), within(1e-9));
        assertThat(decisive(Stressor.LOW_OXYGEN, 5).todayFromLog()).isEqualTo(book.oxygenMgPerL());
        assertThat(decisive(Stressor.AMMONIA, 5).todayFromLog()).isNaN();
        assertThat(decisive(Stressor.CHLORINE, 5).todayFromLog()).isNaN();
        HandScored read = HandScored.of(
                SmallBelief.of(
                        TrialScenario.fishless(), 2, JudgeTest.written(Pad.AMMONIA, 5), JudgeTest.written(Pad.PH, 7.4)),
                FEED);
        assertThat(read.paths(0, 0)
                        .decisive(read.scored(), read.scored().losses(), 0, 0)
                        .todayFromLog())
                .isEqualTo(5);
    }

    @Test
    void guidanceIsThatOfTheSpecies() {
        var levels = startwater.fish.Species.byId("channel-catfish").guidance();
        assertThat(paths.guidance(Variable.TOXIC_AMMONIA)).isEqualTo(levels.ammoniaMgPerL());
        assertThat(paths.guidance(Variable.EFFECTIVE_NITRITE)).isEqualTo(levels.nitriteMgPerL());
        assertThat(paths.guidance(Variable.OXYGEN)).isEqualTo(levels.oxygenMgPerL());
        assertThat(paths.guidance(Variable.CHLORINE)).isEqualTo(levels.chlorineMgPerL());
        assertThat(paths.guidance(Variable.TOTAL_AMMONIA)).isEqualTo(4);
    }

    /** The peak is the highest median on the way, and harm begins where a median first passes guidance. */
    @Test
    void thePeakAndTheDaysToHarmAreReadOffThePath() {
        Verdict.Path path = decisive(Stressor.NITRITE, 5);
        double own = path.own().stream().mapToDouble(Band::middle).max().orElseThrow();
        double best = path.best().stream().mapToDouble(Band::middle).max().orElseThrow();
        Variable nitrite = Variable.EFFECTIVE_NITRITE;
        assertThat(paths.peak(nitrite, false).middle()).isEqualTo(own).isNotEqualTo(best);
        assertThat(paths.peak(nitrite, true).middle()).isEqualTo(best);
        assertThat(paths.peakShare(nitrite)).isCloseTo(own / paths.guidance(nitrite), within(1e-12));
        int first = 0;
        while (path.own().get(first).middle() <= path.guidance()) {
            first++;
        }
        assertThat(first).isPositive();
        assertThat(paths.daysToHarm(nitrite)).isCloseTo(path.hours().get(first) / 24, within(1e-12));
        assertThat(paths.daysToHarm(Variable.CHLORINE)).isNaN();
    }

    /** Somebody acts again at seven next morning; the last tick before is at six, 23 hours on. */
    @Test
    void alkalinityFallsByWhatTheMedianLosesInADay() {
        double[] now = new double[4];
        double[] later = new double[4];
        for (int w = 0; w < 4; w++) {
            TankSim sim = FED.scored().rollout().ahead(w);
            sim.act(FEED);
            now[w] = TankReadings.alkalinityMgPerL(sim.state());
            sim.goTo(sim.minute() + 600, new FastStepper());
            sim.visited();
            sim.goTo(sim.minute() + 780, new FastStepper());
            later[w] = TankReadings.alkalinityMgPerL(sim.state());
        }
        double[] weights = BELIEF.waterWeights();
        double fall =
                Belief.band(now, weights).middle() - Belief.band(later, weights).middle();
        assertThat(fall).isNotZero();
        assertThat(paths.alkalinityFallPerDay()).isCloseTo(fall * 24 / 23, within(1e-3 * Math.abs(fall)));
        assertThat(paths.alkalinityNow()).isEqualTo(Belief.band(now, weights));
    }

    /** The next time the learner is asked is the morning after; at five in the afternoon somebody only looks in. */
    @Test
    void theNextStripIsForeseenUnderTheChoiceAlone() {
        double[] expected = new double[Pad.AMMONIA.scale().blocks()];
        double[] nitrite = new double[4];
        double[] weights = BELIEF.waterWeights();
        for (int w = 0; w < 4; w++) {
            TankSim sim = FED.scored().rollout().ahead(w);
            sim.act(FEED);
            FastStepper stepper = new FastStepper();
            sim.goTo(8 * Calendar.DAY + 17 * 60, stepper);
            sim.visited();
            sim.goTo(9 * Calendar.DAY + 7 * 60, stepper);
            double[] chances = Foreseen.blockChances(Pad.AMMONIA, sim.state(), sim.draw());
            for (int b = 0; b < chances.length; b++) {
                expected[b] += weights[w] * chances[b];
            }
            nitrite[w] = sim.state()[TankLayout.NITRITE];
        }
        assertThat(paths.nextBlocks(Pad.AMMONIA)).containsExactly(expected, within(1e-9));
        assertThat(Arrays.stream(paths.nextBlocks(Pad.NITRATE)).sum()).isCloseTo(1, within(1e-9));
        Verdict.Range range = paths.ranges(BELIEF).get(Pad.NITRITE.ordinal());
        assertThat(range.pad()).isEqualTo(Pad.NITRITE);
        assertThat(range.next().middle())
                .isCloseTo(Belief.band(nitrite, weights).middle(), within(1e-9));
        assertThat(range.today())
                .isEqualTo(BELIEF.band(
                        w -> Observation.padValue(Pad.NITRITE, w.sim().state())));
    }
}
