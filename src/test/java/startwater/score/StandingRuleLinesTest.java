package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.Decision.Air;
import startwater.drill.Decision.FilterCare;
import startwater.drill.Decision.FollowUp;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.strip.Pad;

/** The standing rules on the very lines at which they begin, and for trout; and who stands in. */
class StandingRuleLinesTest extends RuleVisits {
    /** A nitrite reading lies on a block, so what holds on the line itself matters. */
    @Test
    void nitriteOnTheLinesOfRules5And6() {
        assertThat(RULES.ruling(visit(0.01, 0.09, 120, 200)).rules()).containsExactly(1);
        assertThat(RULES.ruling(visit(0.01, 0.1, 120, 200)).rules()).containsExactly(5);
        assertThat(RULES.ruling(visit(0.01, 5, 120, 400)).rules()).doesNotContain(6);
        Notebook empty = emptyShelf(1, 10);
        assertThat(RULES.ruling(empty).rules()).doesNotContain(6);
        assertThat(RULES.ruling(emptyShelf(2, 10)).rules()).contains(6);
    }

    /** 2 mg/L of nitrite as N want 100 mg/L: under 60 of that is short, 60 is not. */
    @Test
    void chlorideIsShortUnderThreeFifthsOfWhatIsWanted() {
        assertThat(RULES.ruling(emptyShelf(2, 60)).rules()).doesNotContain(6);
        assertThat(RULES.ruling(emptyShelf(2, 59)).rules()).contains(6);
        for (double lift : new double[] {45, 55}) {
            book = null;
            Notebook rest = visit(0.01, 2, 120, 10);
            rest.did(Decision.LEAVE_ALONE.withSalt(5000 - rest.saltFor(lift)));
            rest.read(Pad.CHLORIDE, 10);
            assertThat(RULES.ruling(rest).rules().contains(6))
                    .as("all that is left lifts it by " + lift)
                    .isEqualTo(lift < 50);
        }
    }

    /** All salt is given away before. */
    private Notebook emptyShelf(double nitrite, double chloride) {
        book = null;
        Notebook at = visit(0.01, nitrite, 120, chloride);
        at.did(Decision.LEAVE_ALONE.withSalt(5000));
        at.read(Pad.CHLORIDE, chloride);
        return at;
    }

    @Test
    void awayIsOver25HoursAndTwiceADayWithin15() {
        hours = 15;
        assertThat(decide(visit(0.031, 0, 120, 200)).feed()).isEqualTo(1);
        assertThat(decide(visit(0.151, 0, 120, 200)).helpers()).isEqualTo(FollowUp.NONE);
        hours = 16;
        assertThat(decide(visit(0.031, 0, 120, 200)).feed()).isEqualTo(0.5);
        assertThat(decide(visit(0.151, 0, 120, 200)).helpers()).isEqualTo(FollowUp.LOOK_AGAIN);
        hours = 25;
        assertThat(decide(visit(0.061, 0, 120, 200)).feed()).isEqualTo(0.5);
        assertThat(RULES.ruling(visit(0.061, 0, 120, 200)).rules()).doesNotContain(11);
        hours = 26;
        assertThat(decide(visit(0.061, 0, 120, 200)).feed()).isZero();
    }

    @Test
    void rule11HoldsFromTheFirstBlockOfEither() {
        hours = 72;
        assertThat(RULES.ruling(visit(0.09, 0.09, 6.6, 120, 200)).rules()).doesNotContain(11);
        assertThat(RULES.ruling(visit(0.1, 0, 6.6, 120, 200)).rules()).contains(11);
        assertThat(RULES.ruling(visit(0, 0.1, 6.6, 120, 200)).rules()).contains(11);
    }

    @Test
    void rule8BeginsUnderFiveAndForTroutUnderSix() {
        oxygen = 5;
        assertThat(RULES.ruling(visit(0.01, 0, 120, 200)).rules()).containsExactly(1);
        drill = trout();
        temperature = 15;
        book = null;
        oxygen = 6;
        assertThat(RULES.ruling(visit(0.01, 0, 120, 200)).rules()).doesNotContain(8);
        oxygen = 5.9;
        says(visit(0.01, 0, 120, 200), 0, 0, 8);
    }

    private static Scenario trout() {
        return CATFISH.change()
                .fish(new Scenario.Fish("rainbow-trout", 50, 20, 40, java.util.List.of(8.0)), null)
                .made();
    }

    /** The levels of the table for trout: 0.012, 0.025 and 0.05 of toxic ammonia, 0.2 and 1 of nitrite. */
    @Test
    void troutHaveLevelsOfTheirOwn() {
        drill = trout();
        temperature = 15;
        says(visit(0.011, 0, 120, 200), 1, 0, 1);
        // The source is at 26 °C, so two elevenths are two degrees.
        says(visit(0.013, 0, 120, 200), 1, 2.0 / 11, 2);
        assertThat(RULES.ruling(visit(0.026, 0, 120, 200)).rules()).contains(3);
        assertThat(RULES.ruling(visit(0.051, 0, 120, 200)).rules()).contains(4);
        assertThat(RULES.ruling(visit(0.001, 1.1, 120, 400)).rules()).contains(6);
        assertThat(RULES.ruling(visit(0.001, 0.9, 120, 400)).rules()).doesNotContain(6);
    }

    /**
     * Appetite of catfish for warmth: a half at 21 °C, a fifth at 15, 4 % at 11. Outside the feeding range the table ration falls
     * by itself; only where nobody eats, or the water cools on, is it cut.
     */
    @Test
    void rule10SpeaksOutsideTheFeedingRangeAndWhereTheWaterCools() {
        assertThat(warm(21.1, 21.1)).isEqualTo("1.0 [1]");
        assertThat(warm(20.9, 20.9)).isEqualTo("1.0 [10]");
        assertThat(warm(12, 12)).isEqualTo("1.0 [10]");
        assertThat(warm(11, 11)).isEqualTo("0.0 [10]");
        assertThat(warm(25, 24.1)).as("by less than a degree").isEqualTo("1.0 [1]");
        assertThat(warm(25, 24)).isEqualTo("0.5 [10]");
        assertThat(warm(28, 26.5)).as("still as warm as they like it").isEqualTo("1.0 [1]");
        assertThat(warm(21, 20)).isEqualTo("0.5 [10]");
    }

    /** Feed and rules at the second visit. */
    private String warm(double before, double now) {
        book = null;
        temperature = before;
        visit(0.001, 0, 120, 200);
        temperature = now;
        Notebook at = visit(0.001, 0, 120, 200);
        return decide(at).feed() + " " + RULES.ruling(at).rules();
    }

    /** Spare air where air is short, and over a night of nine hours or more once it has failed. */
    @Test
    void rule8PutsSpareAirWhereThereIsSome() {
        assertThat(decide(afterAFailure(9)).air()).as("there is none").isEqualTo(Air.ON);
        drill = CATFISH.change()
                .shelf(new Scenario.Shelf(5000, 3000, 0, 0, 100, 40, 10, true, false, 0, 2))
                .made();
        assertThat(decide(afterAFailure(9)).air()).isEqualTo(Air.SPARE);
        assertThat(decide(afterAFailure(8)).air()).as("by day").isEqualTo(Air.ON);
        book = null;
        hours = 9;
        assertThat(decide(visit(0.01, 0, 120, 200)).air()).as("it never failed").isEqualTo(Air.ON);
        hours = 8;
        oxygen = 4;
        assertThat(decide(visit(0.01, 0, 120, 200)).air()).as("short now").isEqualTo(Air.SPARE);
    }

    private Notebook afterAFailure(int untilNext) {
        book = null;
        air = false;
        come();
        air = true;
        hours = untilNext;
        return visit(0.01, 0, 120, 200);
    }

    @Test
    void rule13BeginsUnderNineTenthsOfTheFlow() {
        for (int flow : new int[] {89, 90}) {
            Keeping keeper = new Keeping(drill);
            keeper.flowPercent = flow;
            Notebook at = keeper.comes(Pad.AMMONIA, 0.1, Pad.PH, 7);
            assertThat(decide(at).filter()).isEqualTo(flow < 90 ? FilterCare.RINSE : FilterCare.LEAVE);
        }
    }

    @Test
    void withoutFishRule14SpeaksAnd12WhereADayHasPassed() {
        Keeping keeper = new Keeping(TrialScenario.fishless());
        keeper.hours = 20;
        assertThat(RULES.ruling(keeper.comes(Pad.AMMONIA, 3, Pad.NITRITE, 3)).rules())
                .containsExactly(14);
        assertThat(RULES.ruling(keeper.comes()).rules()).containsExactly(14);
        keeper.minute += 60;
        assertThat(RULES.ruling(keeper.comes()).rules()).containsExactly(14, 12);
    }

    @Test
    void rule15CallsNobodyForOneDayOfDeathsOrWithoutFish() {
        found = 3;
        come();
        found = 0;
        assertThat(RULES.decide(come(), DrillLog.EMPTY, true).helpers())
                .as("none today")
                .isEqualTo(FollowUp.NONE);
        Keeping keeper = new Keeping(drill);
        keeper.found = 3;
        keeper.comes();
        keeper.alive = 0;
        assertThat(RULES.decide(keeper.comes(), DrillLog.EMPTY, true).helpers())
                .as("none are left to save")
                .isEqualTo(FollowUp.NONE);
    }

    @Test
    void whoStandsInKeepsTheRulesByTheLog() {
        DrillRun run = DrillRun.start(CATFISH, 5, DrillRun.Pace.EVERY_VISIT);
        run.write(JudgeTest.written(Pad.AMMONIA, 5));
        run.write(JudgeTest.written(Pad.PH, 8.2));
        Notebook at = Notebook.of(CATFISH, run.calendar(), run.log().visits());
        assertThat(StandIn.BY_THE_RULES.tests(CATFISH, run.calendar(), run.log()))
                .containsExactlyInAnyOrder(Pad.ALKALINITY, Pad.CHLORIDE);
        Decision d = StandIn.BY_THE_RULES.decide(CATFISH, run.calendar(), run.log());
        assertThat(d).isEqualTo(decide(at));
        assertThat(d.feed()).as("toxic").isZero();
    }
}
