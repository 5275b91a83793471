package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.Decision.Air;
import startwater.drill.Decision.FilterCare;
import startwater.drill.Decision.FollowUp;
import startwater.drill.Scenario;
import startwater.fish.Stressor;
import startwater.score.Verdict.Line;
import startwater.strip.Pad;

/** Numbers, decisions and lines as they are read. */
class WhyTextTest {
    private static final WhyText EN = WhyText.in(Locale.ENGLISH);
    private static final WhyText ES = WhyText.in(Locale.forLanguageTag("es"));
    private static final Decision NOTHING = Decision.LEAVE_ALONE;

    private static String said(String key, Object... parameters) {
        return EN.format(new Line(key, Line.Severity.FACT, List.of(parameters)));
    }

    @Test
    void aNumberHasAsManyDigitsAsItDeserves() {
        assertThat(EN.number(1234.5)).isEqualTo("1,234");
        assertThat(EN.number(12.4)).isEqualTo("12");
        assertThat(EN.number(9.94)).isEqualTo("9.9");
        assertThat(EN.number(2.34)).isEqualTo("2.3");
        assertThat(EN.number(0.346)).isEqualTo("0.35");
        assertThat(EN.number(0.0346)).isEqualTo("0.035");
        assertThat(EN.number(0)).isEqualTo("0");
        assertThat(EN.number(-12.4)).isEqualTo("-12");
        assertThat(EN.number(Double.NaN)).isEqualTo("?");
        assertThat(ES.number(2.34)).isEqualTo("2,3");
    }

    @Test
    void expectedDeathsAreSaidAsPeopleCount() {
        assertThat(EN.deaths(0.04)).isEqualTo("hardly a fish");
        assertThat(EN.deaths(0.05)).isEqualTo("a fish in 1 of ten such tanks");
        assertThat(EN.deaths(0.32)).isEqualTo("a fish in 3 of ten such tanks");
        assertThat(EN.deaths(0.94)).isEqualTo("a fish in 9 of ten such tanks");
        assertThat(EN.deaths(0.95)).isEqualTo("1 fish");
        assertThat(EN.deaths(3.6)).isEqualTo("4 fish");
    }

    @Test
    void theFeedIsSaidFirst() {
        assertThat(EN.decision(NOTHING)).isEqualTo("full feed");
        assertThat(EN.decision(NOTHING.withFeed(0.5))).isEqualTo("half feed");
        assertThat(EN.decision(NOTHING.withFeed(0))).isEqualTo("no feed");
        assertThat(EN.decision(NOTHING.withFeed(0.25))).isEqualTo("25 % feed");
    }

    @Test
    void allThatIsDoneIsSaidInOneOrder() {
        assertThat(EN.decision(NOTHING.withChange(0.25)
                        .withSalt(364)
                        .withBicarbonate(40)
                        .withSodaAsh(5)
                        .withAmmoniumChloride(2.2)
                        .withStock(0.2)
                        .withRipeMedia(0.5)))
                .isEqualTo("full feed, change 25 %, 364 g salt, 40 g bicarbonate, 5 g soda ash, "
                        + "2.2 g ammonium chloride, stock 20 %, 50 % of the ripe media");
        assertThat(EN.decision(NOTHING.withAir(Air.OFF)
                        .withPump(false)
                        .withHeater(false)
                        .withFilter(FilterCare.DRAIN)
                        .withFollowUp(FollowUp.CALL)))
                .isEqualTo("full feed, air off, pump off, heater off, drain the filter, call someone");
        assertThat(EN.decision(NOTHING.withAir(Air.SPARE).withFilter(FilterCare.RINSE)))
                .isEqualTo("full feed, spare air on, rinse the filter");
        assertThat(EN.decision(NOTHING.withChange(0.5).withNeutralise(false)))
                .isEqualTo("full feed, change 50 % untreated");
    }

    @Test
    void withoutFishTheFeedIsLeftOutUnlessSomeComeIn() {
        assertThat(EN.decisionWithoutFish(NOTHING)).isEqualTo("leave it alone");
        assertThat(EN.decisionWithoutFish(NOTHING.withAmmoniumChloride(2.2).withChange(0.5)))
                .isEqualTo("change 50 %, 2.2 g ammonium chloride");
        assertThat(EN.decisionWithoutFish(NOTHING.withFeed(0.5).withStock(0.2))).isEqualTo("half feed, stock 20 %");
    }

    @Test
    void partsOfALineAreSaidByWhatTheyAre() {
        assertThat(said("does.mayFail", Scenario.Happening.Kind.AIR_OFF, 12.4))
                .isEqualTo("Before anybody acts again the air may stop. That is reckoned with at a chance of 12 %.");
        assertThat(said("does.safe", Verdict.Variable.TOXIC_AMMONIA, 0.0123, 0.05))
                .isEqualTo("With your choice toxic ammonia stays at 0.012 or less. It harms from 0.05.");
        assertThat(said("test.skipped", Pad.NITRITE, 0.3, 0.02))
                .isEqualTo("You did not read nitrite. That was worth 0.3 % of the stock, and a strip costs 0.02 %.");
        assertThat(said("costs.cause", Stressor.NITRITE, 81.6)).isEqualTo("82 % of them die of nitrite.");
        assertThat(said("costs.part", Component.GROWTH, 1.26, 0.5, NOTHING.withFeed(0.5)))
                .isEqualTo("It costs more in lost growth: 1.3 against 0.5 % of the stock. Best was: half feed.");
        assertThat(said("view.fish_first", new Verdict.WithoutFish(NOTHING))).endsWith("as the best: leave it alone.");
        assertThat(said("said.proof", 2, 40.0)).startsWith("The filter cleared a full dose 2 times running");
    }

    @Test
    void deathsInALineAreCountedAndOtherNumbersAreNot() {
        assertThat(said("costs.deaths", 3.6, 240.0, 7.0, NOTHING.withFeed(0), 0.01))
                .isEqualTo("In 7 days that costs 4 fish. The best choice (no feed) costs hardly a fish.");
        assertThat(said("costs.best.deaths", 0.32, 240.0, 7.0)).startsWith("In 7 days it still costs a fish in 3 of");
        assertThat(said("costs.where", 3.6, 1.2))
                .isEqualTo("In the nursery that is 4 fish, in the main system 1 fish.");
        assertThat(said("costs.nursery", 99.6)).isEqualTo("100 % of them die in the nursery, where they wait.");
        assertThat(said("kept.best.deaths", 3, new Verdict.Fish(3.6)))
                .startsWith("Done 3 days running it costs 4 fish.");
    }

    @Test
    void namesStandAloneToo() {
        assertThat(EN.cause(Stressor.LOW_OXYGEN)).isEqualTo("low oxygen");
        assertThat(EN.variable(Verdict.Variable.EFFECTIVE_NITRITE)).isEqualTo("nitrite as it counts against chloride");
        assertThat(EN.component(Component.DELAY)).isEqualTo("days until the filter carries the load");
        assertThat(EN.slip(UnitSlip.PERCENT, "0.04 mg/L")).endsWith("It is 0.04 mg/L.");
    }

    /** The levels of rule 1 and 2 for warm-water fish and for trout, as the lessons give them. */
    @Test
    void aRuleIsSaidWithTheLevelsOfTheFish() {
        Scenario catfish = TrialScenario.secondWeek(15);
        assertThat(EN.rule(1, catfish)).isEqualTo("Rule 1. Toxic ammonia under 0.03 mg/L: full ration.");
        assertThat(EN.rule(1, trout())).isEqualTo("Rule 1. Toxic ammonia under 0.012 mg/L: full ration.");
        assertThat(EN.rule(8, trout())).startsWith("Rule 8. Oxygen under 6 mg/L");
        assertThat(EN.rule(5, catfish)).as("as it is taught").endsWith("Read chloride first.");
        assertThat(said("rule.5", 364.0)).as("as it stands here").endsWith("Salt due here: 364 g.");
    }

    private static Scenario trout() {
        Scenario s = TrialScenario.secondWeek(15);
        return s.change()
                .fish(new Scenario.Fish("rainbow-trout", 50, 20, 40, List.of(8.0)), null)
                .made();
    }
}
