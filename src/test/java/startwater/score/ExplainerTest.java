package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.Decision.FilterCare;
import startwater.drill.Scenario;
import startwater.fish.Stressor;
import startwater.score.Verdict.Line;
import startwater.score.Verdict.PadWorth;
import startwater.score.Verdict.Variable;
import startwater.strip.Pad;

/**
 * Each sentence of the explanation at its own lines, on verdicts and books made by hand. {@link WhyTableTest} has whole cases.
 */
class ExplainerTest {
    /** A filter that is half ripe: no ammonia to speak of, and it eats about 4 mg/L of alkalinity a day. */
    private static final Setting RIPE = Setting.of(Setting.young(1, 0.5));

    private static final Paths RIPE_PATHS = RIPE.paths();
    private static final Decision NOTHING = Decision.LEAVE_ALONE;
    private static final Decision HOLD = NOTHING.withFeed(0);
    private static final Verdict FINE =
            Verdicts.on(0, Verdicts.costing(NOTHING, Component.WASTE, 0.1)).made();

    private static List<Line> lines(Notebook book, Verdict verdict) {
        return Explainer.lines(RIPE.with(book), verdict, RIPE_PATHS, null);
    }

    private static List<Line> lines(Setting setting, Verdict verdict) {
        return Explainer.lines(setting.scored, verdict, setting.paths(), null);
    }

    private static List<String> keys(List<Line> lines, String start) {
        return lines.stream().map(Line::key).filter(k -> k.startsWith(start)).toList();
    }

    /** Keys of what the numbers said. */
    private static List<String> said(Object... readings) {
        return keys(lines(new Keeping(RIPE.scenario).comes(readings), FINE), "said.");
    }

    private static List<String> saidFishless(Object... readings) {
        return keys(lines(new Keeping(TrialScenario.fishless()).comes(readings), FINE), "said.");
    }

    private static Line line(List<Line> lines, String key) {
        return lines.stream()
                .filter(l -> l.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError(key + " is not in " + keys(lines, "")));
    }

    private static void tells(Line line, Line.Severity severity, Object... parameters) {
        assertThat(line.severity()).as(line.key()).isEqualTo(severity);
        assertThat(line.parameters()).as(line.key()).hasSize(parameters.length);
        for (int i = 0; i < parameters.length; i++) {
            Object told = line.parameters().get(i);
            if (told instanceof Number number && parameters[i] instanceof Number expected) {
                assertThat(number.doubleValue())
                        .as(line.key() + " " + i)
                        .isCloseTo(expected.doubleValue(), within(1e-3 * Math.abs(expected.doubleValue())));
            } else {
                assertThat(told).as(line.key() + " " + i).isEqualTo(parameters[i]);
            }
        }
    }

    @Test
    void aLogThatIsContradictedIsTheFirstToBeTold() {
        Verdicts v = Verdicts.on(0, Verdicts.costing(NOTHING, Component.WASTE, 0.1));
        Setting unripe = Setting.of(Setting.young(1, 0.003));
        List<Line> lines = lines(unripe, v.uncredited().made());
        assertThat(lines.get(0).key()).isEqualTo("credit.none");
        tells(lines.get(0), Line.Severity.HARM, unripe.scored.belief().oddReadings(), 1);
        assertThat(keys(lines(RIPE, FINE), "credit.")).isEmpty();
    }

    @Test
    void whoWroteNothingIsToldAndOfALongSilenceToo() {
        Setting unread = Setting.unread(RIPE.scenario);
        assertThat(keys(lines(unread, FINE), "said.")).startsWith("said.nothing", "said.silent");
        assertThat(keys(lines(RIPE, FINE), "said.")).doesNotContain("said.nothing", "said.silent");
    }

    /** Emerson et al. 1975 by hand: 5.735 % are toxic at pH 8 and 26 °C. Harm begins at 0.05. */
    @Test
    void ammoniaIsWorkedOutStepByStep() {
        Notebook book = new Keeping(RIPE.scenario).comes(Pad.AMMONIA, 2, Pad.PH, 8);
        tells(line(lines(book, FINE), "said.ammonia.harms"), Line.Severity.HARM, 2, 8, 26, 5.735, 0.11470, 0.05);
        book = new Keeping(RIPE.scenario).comes(Pad.AMMONIA, 0.8, Pad.PH, 8);
        tells(line(lines(book, FINE), "said.ammonia.under"), Line.Severity.FACT, 0.8, 8, 26, 5.735, 0.04588, 0.05);
        assertThat(said(Pad.AMMONIA, 2)).doesNotContain("said.ammonia.harms", "said.ammonia.under");
    }

    /** 1 mg/L of nitrite wants 100 mg/L of chloride: 90 is near enough, 89 is short. The source brings 15. */
    @Test
    void nitriteIsHeldAgainstChloride() {
        Keeping keeper = new Keeping(RIPE.scenario);
        tells(
                line(lines(keeper.comes(Pad.NITRITE, 1, Pad.CHLORIDE, 89), FINE), "said.nitrite.short"),
                Line.Severity.HARM,
                1,
                89,
                100);
        tells(
                line(lines(keeper.comes(Pad.NITRITE, 1, Pad.CHLORIDE, 90), FINE), "said.nitrite.covered"),
                Line.Severity.FACT,
                1,
                90,
                100);
        keeper = new Keeping(RIPE.scenario);
        tells(line(lines(keeper.comes(Pad.NITRITE, 1), FINE), "said.nitrite.unread"), Line.Severity.HARM, 1, 15, 100);
        assertThat(said(Pad.NITRITE, 0.09, Pad.CHLORIDE, 0)).noneMatch(k -> k.startsWith("said.nitrite"));
        assertThat(said(Pad.NITRITE, 0.1, Pad.CHLORIDE, 0)).contains("said.nitrite.short");
        assertThat(said(Pad.CHLORIDE, 0)).noneMatch(k -> k.startsWith("said.nitrite"));
    }

    @Test
    void aSourceWithChlorideEnoughNeedsNoReading() {
        for (double source : new double[] {89, 91}) {
            Notebook book = new Keeping(TrialScenario.secondWeek(source)).comes(Pad.NITRITE, 1);
            assertThat(keys(lines(book, FINE), "said.nitrite")).hasSize(source < 90 ? 1 : 0);
        }
    }

    @Test
    void whatDecidesIsSaidFirst() {
        Object[] both = {Pad.AMMONIA, 1, Pad.PH, 8, Pad.NITRITE, 1, Pad.CHLORIDE, 20, Pad.ALKALINITY, 70};
        assertThat(said(both)).containsExactly("said.ammonia.harms", "said.nitrite.short", "said.alkalinity.low");
        Verdict nitrite = Verdicts.on(0, Verdicts.costing(NOTHING, Component.WASTE, 0.1))
                .decidedBy(Variable.EFFECTIVE_NITRITE)
                .made();
        assertThat(keys(lines(new Keeping(RIPE.scenario).comes(both), nitrite), "said."))
                .containsExactly("said.nitrite.short", "said.ammonia.harms", "said.alkalinity.low");
    }

    @Test
    void airThatIsOffIsSaidBeforeOxygenWithinAMilligramOfHarm() {
        Keeping keeper = new Keeping(RIPE.scenario);
        keeper.oxygenMgPerL = 4.9;
        tells(line(lines(keeper.comes(), FINE), "said.oxygen.low"), Line.Severity.HARM, 4.9, 4);
        keeper.air = false;
        assertThat(keys(lines(keeper.comes(), FINE), "said."))
                .contains("said.air.off")
                .doesNotContain("said.oxygen.low");
        keeper.air = true;
        keeper.oxygenMgPerL = 5;
        assertThat(keys(lines(keeper.comes(), FINE), "said.")).doesNotContain("said.air.off", "said.oxygen.low");
    }

    @Test
    void alkalinityUnderEightyIsLow() {
        Notebook book = new Keeping(RIPE.scenario).comes(Pad.ALKALINITY, 79);
        tells(line(lines(book, FINE), "said.alkalinity.low"), Line.Severity.HARM, 79, 80);
        assertThat(said(Pad.ALKALINITY, 80)).containsExactly("said.alkalinity.days");
    }

    /** It stands about 108 and falls by about 4 a day: 80 is a week away. */
    @Test
    void alkalinityThatReachesEightyWithinTenDaysIsTold() {
        double now = RIPE_PATHS.alkalinityNow().middle();
        double fall = RIPE_PATHS.alkalinityFallPerDay();
        double days = (now - 80) / fall;
        assertThat(days).isBetween(6.0, 8.0);
        tells(line(lines(RIPE, FINE), "said.alkalinity.days"), Line.Severity.FACT, now, fall, 80, days);
    }

    @Test
    void alkalinityThatIsFarFromEightyOrUnderItOrDoesNotFallIsNot() {
        for (double source : new double[] {60, 160}) {
            Setting other = Setting.of(bringing(source));
            assertThat(other.paths().alkalinityFallPerDay()).isGreaterThan(1);
            assertThat(keys(lines(other, FINE), "said.alkalinity")).isEmpty();
        }
        Setting unripe = Setting.of(Setting.young(1, 0.003));
        assertThat(unripe.paths().alkalinityFallPerDay()).isNegative();
        assertThat(keys(lines(unripe, FINE), "said.alkalinity")).isEmpty();
    }

    private static Scenario bringing(double alkalinity) {
        Scenario s = RIPE.scenario;
        Scenario.Source o = s.source();
        return s.change()
                .source(new Scenario.Source(o.temperatureC(), o.ph(), alkalinity, 0, 1, o.chlorideMgPerL(), 0, 0, 0))
                .made();
    }

    @Test
    void withoutFishItIsSaidHowFarTheFilterIs() {
        assertThat(saidFishless(Pad.AMMONIA, 1, Pad.NITRITE, 0.5)).containsExactly("said.fishless.waiting");
        assertThat(saidFishless(Pad.AMMONIA, 1, Pad.NITRITE, 1)).containsExactly("said.fishless.waiting");
        assertThat(saidFishless(Pad.AMMONIA, 0.9, Pad.NITRITE, 1)).containsExactly("said.fishless.halfway");
        assertThat(saidFishless(Pad.AMMONIA, 0.9, Pad.NITRITE, 0.9)).containsExactly("said.fishless.both");
        assertThat(saidFishless(Pad.AMMONIA, 4, Pad.NITRITE, 1)).containsExactly("said.fishless.waiting");
        Notebook book = new Keeping(TrialScenario.fishless()).comes(Pad.AMMONIA, 4.1, Pad.NITRITE, 0.5);
        tells(line(lines(book, FINE), "said.fishless.waiting"), Line.Severity.FACT, 4.1, 0.5);
        tells(line(lines(book, FINE), "said.fishless.over"), Line.Severity.HARM, 4.1, 4);
    }

    @Test
    void nothingIsSaidOfAPadThatWasNotRead() {
        assertThat(saidFishless()).isEmpty();
        assertThat(saidFishless(Pad.NITRITE, 5)).isEmpty();
        assertThat(saidFishless(Pad.AMMONIA, 2)).isEmpty();
        assertThat(saidFishless(Pad.AMMONIA, 0.5)).isEmpty();
    }

    /** 2 mg/L gone in a day. 240 catfish of 13.5 g make 1.151 mg/L a day. */
    @Test
    void whatAFilterHasProvedIsTold() {
        Keeping keeper = new Keeping(TrialScenario.fishless());
        keeper.hours = 24;
        Notebook book = keeper.comes(Pad.AMMONIA, 0, Pad.NITRITE, 0);
        assertThat(keys(lines(book, FINE), "said.proof")).isEmpty();
        book.did(NOTHING.withAmmoniumChloride(book.ammoniumFor(2)));
        keeper.comes(Pad.AMMONIA, 0, Pad.NITRITE, 0);
        tells(line(lines(book, FINE), "said.proof"), Line.Severity.FACT, 1, 100 * 2 / 1.151);
    }

    @Test
    void deathsInTheNurseryAreToldWithAndWithoutFishHere() {
        Keeping keeper = new Keeping(BentDrill.beside("explained-nursery").made());
        assertThat(keys(lines(keeper.comes(), FINE), "said.nursery")).isEmpty();
        keeper.toCome = 599;
        tells(line(lines(keeper.comes(), FINE), "said.nursery"), Line.Severity.HARM, 1, 599);
        keeper.alive = 99;
        keeper.toCome = 500;
        keeper.book.did(NOTHING.withStock(99.0 / 600));
        tells(line(lines(keeper.comes(), FINE), "said.nursery"), Line.Severity.HARM, 1, 500);
    }

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

    @Test
    void theViewThatAcceptsIsTold() {
        List<Line> lines = Explainer.lines(RIPE.scored, FINE, RIPE_PATHS, View.WATER_IS_DEAR);
        tells(line(lines, "view.water_is_dear"), Line.Severity.FACT, NOTHING);
        assertThat(keys(lines(RIPE, FINE), "view.")).isEmpty();
    }

    private static List<Line> tests(double strip, PadWorth... pads) {
        Verdict v = Verdicts.on(0, Verdicts.costing(NOTHING, Component.WASTE, 0.1))
                .information(new Verdict.Information(strip, 0.02, 1, List.of(pads)))
                .made();
        return lines(RIPE, v).stream().filter(l -> l.key().startsWith("test.")).toList();
    }

    @Test
    void testsThatWereWorthTheirPriceAreTold() {
        assertThat(tests(0.02)).isEmpty();
        tells(line(tests(0.03), "test.again"), Line.Severity.HARM, 0.03, 0.02);
        PadWorth little = new PadWorth(Pad.AMMONIA, false, 0.02);
        PadWorth read = new PadWorth(Pad.NITRITE, true, 0.5);
        PadWorth skipped = new PadWorth(Pad.PH, false, 0.3);
        assertThat(tests(0, little)).isEmpty();
        tells(line(tests(0, little, skipped), "test.skipped"), Line.Severity.HARM, Pad.PH, 0.3, 0.02);
        assertThat(tests(0, skipped, read)).as("the most telling was read").isEmpty();
    }

    private static List<String> rules(Decision chosen, Keeping keeper, Object... readings) {
        Verdict v =
                Verdicts.on(0, Verdicts.costing(chosen, Component.WASTE, 0.1)).made();
        return keys(lines(keeper.comes(readings), v), "rule.");
    }

    /** Toxic ammonia of 0.287, nitrite of 6: rules 4, 5, 6 and 9 speak. */
    @Test
    void threeRulesAreToldAndThoseOfTheChoiceBesides() {
        Object[] bad = {Pad.AMMONIA, 5, Pad.PH, 8, Pad.NITRITE, 6, Pad.CHLORIDE, 300};
        assertThat(rules(NOTHING, new Keeping(RIPE.scenario), bad)).containsExactly("rule.4", "rule.5", "rule.6");
        assertThat(rules(NOTHING.withFilter(FilterCare.SCRUB), new Keeping(RIPE.scenario), bad))
                .containsExactly("rule.4", "rule.5", "rule.6", "rule.13");
        assertThat(rules(NOTHING.withStock(0.2), new Keeping(RIPE.scenario), bad))
                .containsExactly("rule.4", "rule.5", "rule.6", "rule.14");
        Keeping cold = new Keeping(RIPE.scenario);
        cold.temperatureC = 12;
        Object[] badInTheCold = {Pad.AMMONIA, 15, Pad.PH, 8, Pad.NITRITE, 6, Pad.CHLORIDE, 300};
        assertThat(rules(NOTHING, cold, badInTheCold)).containsExactly("rule.4", "rule.5", "rule.6", "rule.10");
        assertThat(rules(NOTHING, new Keeping(RIPE.scenario), Pad.AMMONIA, 0, Pad.PH, 7))
                .containsExactly("rule.1");
    }

    /** Salt that lifts 20 to 100 mg/L in 2,400 L is 316.5 g. */
    @Test
    void aRuleIsToldWithWhatItSaysHere() {
        Notebook book = new Keeping(RIPE.scenario).comes(Pad.AMMONIA, 0, Pad.PH, 7, Pad.NITRITE, 0.5, Pad.CHLORIDE, 20);
        Line rule = line(lines(book, FINE), "rule.5");
        Decision ruled = NOTHING.withSalt(317);
        tells(rule, Line.Severity.RULE, 317, ruled, 0.03, 0.06, 0.15, 1, 5, 5);
    }
}
