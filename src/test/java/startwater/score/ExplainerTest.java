package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static startwater.score.Explained.FINE;
import static startwater.score.Explained.NOTHING;
import static startwater.score.Explained.RIPE;
import static startwater.score.Explained.RIPE_PATHS;
import static startwater.score.Explained.keys;
import static startwater.score.Explained.line;
import static startwater.score.Explained.lines;
import static startwater.score.Explained.tells;

import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.Decision.FilterCare;
import startwater.drill.Scenario;
import startwater.score.Verdict.Line;
import startwater.score.Verdict.PadWorth;
import startwater.score.Verdict.Variable;
import startwater.strip.Pad;

/**
 * Each sentence of the explanation at its own lines, on verdicts and books made by hand. {@link WhyTableTest} has whole cases.
 */
class ExplainerTest {
    /** Keys of what the numbers said. */
    private static List<String> said(Object... readings) {
        return keys(lines(new Keeping(RIPE.scenario).comes(readings), FINE), "said.");
    }

    private static List<String> saidFishless(Object... readings) {
        return keys(lines(new Keeping(TrialScenario.fishless()).comes(readings), FINE), "said.");
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
