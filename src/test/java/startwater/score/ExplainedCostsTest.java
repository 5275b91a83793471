package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static startwater.score.Explained.FINE;
import static startwater.score.Explained.HOLD;
import static startwater.score.Explained.NOTHING;
import static startwater.score.Explained.RIPE;
import static startwater.score.Explained.keys;
import static startwater.score.Explained.line;
import static startwater.score.Explained.lines;
import static startwater.score.Explained.tells;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.Scenario;
import startwater.fish.Stressor;
import startwater.score.Verdict.Line;
import startwater.score.Verdict.Variable;

/** What the explanation tells of what the choice does and costs, and where, and of what. */
class ExplainedCostsTest {
    private static Verdict decidedBy(Variable variable) {
        return Verdicts.on(0, Verdicts.costing(NOTHING, Component.WASTE, 0.1))
                .decidedBy(variable)
                .made();
    }

    /** No chlorine is about; ammonia passes the line after eight hours; a day later it stands over it already. */
    @Test
    void itIsToldWhenWhatDecidesPassesTheLine() {
        Setting unripe = Setting.of(Setting.young(1, 0.003));
        Paths paths = unripe.paths();
        tells(
                line(lines(unripe, decidedBy(Variable.CHLORINE)), "does.safe"),
                Line.Severity.OWN,
                Variable.CHLORINE,
                0,
                0.01);
        Verdict.Band own = paths.peak(Variable.TOXIC_AMMONIA, false);
        Verdict.Band best = paths.peak(Variable.TOXIC_AMMONIA, true);
        tells(
                line(lines(unripe, decidedBy(Variable.TOXIC_AMMONIA)), "does.later"),
                Line.Severity.OWN,
                Variable.TOXIC_AMMONIA,
                8.0 / 24,
                own.middle(),
                own.low(),
                own.high(),
                best.middle(),
                0.05);
        Setting later = Setting.of(Setting.young(2, 0.003));
        own = later.paths().peak(Variable.TOXIC_AMMONIA, false);
        best = later.paths().peak(Variable.TOXIC_AMMONIA, true);
        tells(
                line(lines(later, decidedBy(Variable.TOXIC_AMMONIA)), "does.already"),
                Line.Severity.OWN,
                Variable.TOXIC_AMMONIA,
                own.middle(),
                own.low(),
                own.high(),
                best.middle(),
                0.05);
    }

    @Test
    void oxygenAndTotalAmmoniaHaveNoSuchLine() {
        for (Variable v : Variable.values()) {
            assertThat(keys(lines(RIPE, decidedBy(v)), "does."))
                    .hasSize(v == Variable.OXYGEN || v == Variable.TOTAL_AMMONIA ? 0 : 1);
        }
    }

    /** The blower stops once in the 14 days of the drill, so once between two visits with a chance of one in fourteen. */
    @Test
    void whatMayFailIsToldWithItsChance() {
        Scenario failing = TrialScenario.failing(Scenario.Happening.Kind.AIR_OFF, 10.875)
                .change()
                .start(RIPE.scenario.start())
                .made();
        tells(
                line(lines(Setting.of(failing), FINE), "does.mayFail"),
                Line.Severity.FACT,
                Scenario.Happening.Kind.AIR_OFF,
                100.0 / 14);
        assertThat(keys(lines(RIPE, FINE), "does.mayFail")).isEmpty();
    }

    private static Verdict.Option dying(Decision d, double waste, double ammonia, double nitrite, double beside) {
        return Verdicts.option(
                d,
                Map.of(Component.WASTE, waste),
                Map.of(Stressor.AMMONIA, ammonia, Stressor.NITRITE, nitrite),
                beside);
    }

    private static List<Line> costs(Verdict v) {
        return lines(RIPE, v).stream().filter(l -> l.key().startsWith("costs.")).toList();
    }

    private static List<String> costKeys(Verdict v) {
        return keys(costs(v), "");
    }

    @Test
    void theBestChoiceCostsWhatItCosts() {
        assertThat(costKeys(FINE)).containsExactly("costs.best");
        assertThat(costKeys(Verdicts.on(0, dying(NOTHING, 0, 0.04, 0, 0)).made()))
                .containsExactly("costs.best");
        assertThat(costKeys(Verdicts.on(0, dying(NOTHING, 0, 0.05, 0, 0)).made()))
                .containsExactly("costs.best.deaths");
        List<Line> lines = costs(Verdicts.on(0, dying(NOTHING, 0, 4, 0, 1)).made());
        assertThat(keys(lines, "")).containsExactly("costs.best.deaths", "costs.where");
        tells(lines.get(0), Line.Severity.BEST, 4, Verdicts.STOCK, Verdicts.DAYS);
        tells(lines.get(1), Line.Severity.FACT, 1, 3);
    }

    /** Told apart is what is over twice the standard error, and over 0.05 % of the stock. */
    @Test
    void aChoiceThatCannotBeToldFromTheBestIsAsGood() {
        Verdict.Option best = Verdicts.costing(HOLD, Component.GROWTH, 0);
        assertThat(costKeys(Verdicts.on(1, best, Verdicts.costing(NOTHING, Component.WASTE, 0.05))
                        .made()))
                .containsExactly("costs.best");
        assertThat(costKeys(Verdicts.on(1, best, Verdicts.costing(NOTHING, Component.WASTE, 0.06))
                        .made()))
                .containsExactly("costs.part");
        for (double waste : new double[] {0.5, 0.7}) {
            Verdict v = Verdicts.on(1, best, Verdicts.costing(NOTHING, Component.WASTE, waste))
                    .error(0.3)
                    .made();
            assertThat(costKeys(v)).containsExactly(waste < 0.6 ? "costs.best" : "costs.part");
        }
    }

    @Test
    void deathsOverTheBestAreToldWithTheirCause() {
        List<Line> lines = costs(Verdicts.on(1, dying(HOLD, 0, 0.5, 0.5, 0), dying(NOTHING, 0, 1, 3, 0))
                .made());
        assertThat(keys(lines, "")).containsExactly("costs.deaths", "costs.cause");
        tells(lines.get(0), Line.Severity.OWN, 4, Verdicts.STOCK, Verdicts.DAYS, HOLD, 1);
        tells(lines.get(1), Line.Severity.FACT, Stressor.NITRITE, 75);
    }

    /** The cause is the one that the choice adds most to; it is named over three fifths. */
    @Test
    void theCauseIsWhatTheChoiceAddsAndNamedOverThreeFifths() {
        assertThat(costKeys(Verdicts.on(1, dying(HOLD, 0, 0, 2.8, 0), dying(NOTHING, 0, 1, 3, 0))
                        .made()))
                .as("a quarter by ammonia, which was added")
                .containsExactly("costs.deaths");
        assertThat(costKeys(Verdicts.on(1, dying(HOLD, 0, 0, 0, 0), dying(NOTHING, 0, 2, 3, 0))
                        .made()))
                .containsExactly("costs.deaths");
        List<Line> lines = costs(Verdicts.on(1, dying(HOLD, 0, 0, 0, 0), dying(NOTHING, 0, 3.1, 1.9, 0))
                .made());
        tells(line(lines, "costs.cause"), Line.Severity.FACT, Stressor.AMMONIA, 62);
        lines = costs(Verdicts.on(1, dying(HOLD, 0, 4.9, 0, 0), dying(NOTHING, 0, 5, 8, 0))
                .made());
        tells(line(lines, "costs.cause"), Line.Severity.FACT, Stressor.NITRITE, 100 * 8 / 13.0);
    }

    @Test
    void aTwentiethOfAFishIsTheLeastThatIsCounted() {
        assertThat(deaths(0.049, 0)).containsExactly("costs.part");
        assertThat(deaths(0.05, 0)).contains("costs.deaths");
        assertThat(deaths(0.06, 0.036)).as("too near the best").containsExactly("costs.part");
        assertThat(deaths(0.06, 0.034)).contains("costs.deaths");
        assertThat(deaths(1, 2)).as("fewer than under the best").containsExactly("costs.part");
    }

    /** The choice wastes 5 % besides. */
    private static List<String> deaths(double own, double best) {
        return costKeys(Verdicts.on(1, dying(HOLD, 0, best, 0, 0), dying(NOTHING, 5, own, 0, 0))
                .made());
    }

    /** Of two waters: hardly any is a twentieth of them. */
    @Test
    void itIsToldInWhichWaterTheyDie() {
        assertThat(where(4, 0.04)).isEmpty();
        tells(where(4, 0.05).get(0), Line.Severity.FACT, 0.05, 3.95);
        tells(where(4, 0.06).get(0), Line.Severity.FACT, 0.06, 3.94);
        tells(where(4, 3.7).get(0), Line.Severity.FACT, 3.7, 0.3);
        tells(where(4, 3.9).get(0), Line.Severity.FACT, 97.5);
        tells(where(0.5, 0.46).get(0), Line.Severity.FACT, 92);
        tells(where(0.5, 0.44).get(0), Line.Severity.FACT, 0.44, 0.06);
        tells(where(4, 4).get(0), Line.Severity.FACT, 100);
        Verdict costly = Verdicts.on(1, dying(HOLD, 0, 0, 0, 0), dying(NOTHING, 0, 4, 0, 1))
                .made();
        assertThat(costKeys(costly)).containsExactly("costs.deaths", "costs.where", "costs.cause");
    }

    private static List<Line> where(double deaths, double beside) {
        return costs(Verdicts.on(0, dying(NOTHING, 0, deaths, 0, beside)).made()).stream()
                .filter(l -> l.key().equals("costs.where") || l.key().equals("costs.nursery"))
                .toList();
    }

    @Test
    void thePartThatCostsMostOverTheBestIsTold() {
        Verdict.Option best = Verdicts.option(
                HOLD, Map.of(Component.WATER, 2.0, Component.STRESS, 0.1), Map.of(Stressor.AMMONIA, 0.01), 0);
        Verdict.Option own = Verdicts.option(
                NOTHING,
                Map.of(Component.WATER, 2.1, Component.STRESS, 0.9, Component.WASTE, 0.3),
                Map.of(Stressor.AMMONIA, 3.0),
                0);
        Line part = line(costs(Verdicts.on(1, best, own).made()), "costs.part");
        tells(part, Line.Severity.OWN, Component.STRESS, 0.9, 0.1, HOLD);
        for (double more : new double[] {0.04, 0.06}) {
            Verdict.Option little =
                    Verdicts.option(NOTHING, Map.of(Component.WATER, 2 + more), Map.of(Stressor.AMMONIA, 3.0), 0);
            assertThat(keys(costs(Verdicts.on(1, best, little).made()), "costs.part"))
                    .hasSize(more < 0.05 ? 0 : 1);
        }
        Verdict.Option idle = Verdicts.option(HOLD, Map.of(Component.GROWTH, 0.2), Map.of(), 0);
        Verdict grown = Verdicts.on(1, idle, Verdicts.costing(NOTHING, Component.GROWTH, 0.5))
                .made();
        tells(line(costs(grown), "costs.part"), Line.Severity.OWN, Component.GROWTH, 0.5, 0.2, HOLD);
        Verdict wasted = Verdicts.on(
                        1,
                        idle,
                        Verdicts.option(NOTHING, Map.of(Component.GROWTH, 0.2, Component.WASTE, 0.3), Map.of(), 0))
                .made();
        tells(line(costs(wasted), "costs.part"), Line.Severity.OWN, Component.WASTE, 0.3, 0, HOLD);
    }

    @Test
    void decisionsWithoutFishAreToldWithoutTheFeed() {
        Verdict v = Verdicts.on(
                        1, Verdicts.costing(HOLD, Component.DELAY, 0), Verdicts.costing(NOTHING, Component.DELAY, 1))
                .made();
        Notebook fishless = new Keeping(TrialScenario.fishless()).comes();
        assertThat(line(lines(fishless, v), "costs.part").parameters()).contains(new Verdict.WithoutFish(HOLD));
        assertThat(line(lines(RIPE, v), "costs.part").parameters()).contains(HOLD);
    }
}
