package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.Decision.Air;
import startwater.drill.Decision.FilterCare;
import startwater.drill.Decision.FollowUp;
import startwater.drill.DrillLog;
import startwater.strip.FishMood;
import startwater.strip.Pad;

/** The standing rules as they are taught, number by number. Rules 13 and 14 have a test of their own as well. */
class StandingRulesTest extends RuleVisits {
    @Test
    void rules1To4AtEachOfTheirLines() {
        says(visit(0.029, 0, 120, 200), 1, 0, 1);
        says(visit(0.031, 0, 120, 200), 1, 0.25, 2);
        says(visit(0.061, 0, 120, 200), 0.5, 0.5, 3);
        says(visit(0.151, 0, 120, 200), 0, 0.5, 4);
        hours = 24;
        says(visit(0.031, 0, 120, 200), 0.5, 0.25, 2);
        assertThat(decide(visit(0.151, 0, 120, 200)).helpers()).isEqualTo(FollowUp.LOOK_AGAIN);
        hours = 72;
        assertThat(decide(visit(0.061, 0, 120, 200)).feed()).isZero();
    }

    @Test
    void rule5SaltsForWhatIsMissingAndPutsBackWhatAChangeCarriesOff() {
        Notebook at = visit(0.01, 0.09, 120, 20);
        assertThat(decide(at).saltG()).as("nitrite not yet measurable").isZero();
        at = visit(0.01, 0.5, 120, 20);
        assertThat(decide(at).saltG()).isCloseTo(at.saltFor(80), within(1.0));
        at = visit(0.01, 4, 120, 20);
        assertThat(decide(at).saltG()).isCloseTo(at.saltFor(4 * 32.84 - 20), within(10.0));
        at = visit(0.01, 0.5, 120, 100);
        assertThat(decide(at).saltG()).as("enough").isZero();
        drill = TrialScenario.secondWeek(0);
        book = null;
        at = visit(0.07, 0.5, 120, 100);
        assertThat(decide(at).saltG()).as("half of it goes").isCloseTo(at.saltFor(50), within(1.0));
    }

    @Test
    void rule6CutsFeedWhereSaltDoesNotReachOrNitriteIsHighAnyway() {
        says(visit(0.01, 5.1, 120, 400), 0.5, 0.5, 6);
        assertThat(RULES.ruling(visit(0.01, 4.9, 120, 400)).rules()).doesNotContain(6);
        assertThat(RULES.ruling(visit(0.01, 2, 120, 10)).rules())
                .as("the shelf holds enough")
                .doesNotContain(6);
        Notebook empty = visit(0.01, 2, 120, 10);
        empty.did(Decision.LEAVE_ALONE.withSalt(empty.saltLeftG()));
        empty.read(Pad.CHLORIDE, 10);
        says(empty, 0.5, 0.5, 6);
    }

    @Test
    void rule7Gives30ADayTowards120AndDilutesFirst() {
        Notebook at = visit(0.01, 0, 81, 200);
        assertThat(decide(at).bicarbonateG()).isZero();
        at = visit(0.01, 0, 70, 200);
        assertThat(decide(at).bicarbonateG()).isCloseTo(at.bicarbonateFor(30), within(1.0));
        at.did(decide(at));
        at = visit(0.01, 0, 70, 200);
        assertThat(decide(at).bicarbonateG()).as("twelve hours later").isZero();
        at.did(decide(at));
        at = visit(0.01, 0, 70, 200);
        assertThat(decide(at).bicarbonateG()).as("a day later").isPositive();
        at = visit(0.14, 0, 20, 200);
        assertThat(decide(at).bicarbonateG()).as("would pass rule 3").isZero();
        assertThat(decide(at).change()).as("so dilute first").isEqualTo(0.5);
    }

    @Test
    void rule8PutsAirFirstAndRemembersThatItFailed() {
        oxygen = 4.9;
        says(visit(0.01, 0, 120, 200), 0, 0, 8);
        oxygen = 7;
        air = false;
        says(visit(0.01, 0, 120, 200), 0, 0, 8);
        assertThat(decide(visit(0.01, 0, 120, 200)).air()).isEqualTo(Air.ON);
    }

    @Test
    void rule9ChangesHalfAtMostAndWithinTwoDegrees() {
        assertThat(decide(visit(0.3, 0, 120, 200)).change()).isEqualTo(0.5);
        assertThat(decide(visit(0.3, 0, 120, 200)).neutralise()).isTrue();
        temperature = 36;
        assertThat(decide(visit(0.3, 0, 120, 200)).change()).isCloseTo(0.2, within(1e-9));
        assertThat(RULES.ruling(visit(0.3, 0, 120, 200)).rules()).contains(9);
    }

    @Test
    void rule10CutsTheRationWithTheWarmth() {
        temperature = 15;
        says(visit(0.001, 0, 120, 200), 1, 0, 10);
        temperature = 10;
        says(visit(0.001, 0, 120, 200), 0, 0, 10);
        book = null;
        temperature = 24;
        visit(0.001, 0, 120, 200);
        temperature = 22.5;
        says(visit(0.001, 0, 120, 200), 0.5, 0, 10);
        says(visit(0.001, 0, 120, 200), 1, 0, 1);
        temperature = 27;
        assertThat(RULES.ruling(visit(0.001, 0, 120, 200)).rules()).doesNotContain(10);
    }

    @Test
    void rule11SwitchesTheFeederOffBeforeAnAbsence() {
        hours = 72;
        says(visit(0.1, 0.0, 6.6, 120, 200), 0, 0, 11);
        says(visit(0.0, 0.1, 6.6, 120, 200), 0, 0, 11);
        assertThat(decide(visit(0.0, 0.0, 6.6, 120, 200)).feed()).isEqualTo(1);
        hours = 24;
        assertThat(decide(visit(0.1, 0.1, 6.6, 120, 200)).feed()).isEqualTo(1);
    }

    @Test
    void rule12TestsDailyAndEveryThirdDayAndDoubtsWhatDoesNotFit() {
        hours = 24;
        Notebook at = come();
        assertThat(RULES.tests(at))
                .containsExactlyInAnyOrder(Pad.AMMONIA, Pad.NITRITE, Pad.PH, Pad.ALKALINITY, Pad.CHLORIDE);
        assertThat(decide(at).feed())
                .as("untested is no reason to feed in full")
                .isEqualTo(0.5);
        visit(0.5, 0.2, 7.4, 120, 200);
        at = come();
        assertThat(RULES.tests(at)).containsExactlyInAnyOrder(Pad.AMMONIA, Pad.NITRITE, Pad.PH);
        at.read(Pad.AMMONIA, 0.7);
        at.read(Pad.NITRITE, 0.5);
        at.read(Pad.PH, 7.4);
        assertThat(RULES.testsAgain(at)).as("fits").isFalse();
        at.read(Pad.AMMONIA, 20);
        assertThat(RULES.testsAgain(at)).as("no feed makes so much").isTrue();
        at.read(Pad.AMMONIA, 0.7);
        at.read(Pad.PH, 8.4);
        assertThat(RULES.testsAgain(at)).as("another pH").isTrue();
        come();
        at = come();
        assertThat(RULES.tests(at)).contains(Pad.ALKALINITY, Pad.CHLORIDE);
    }

    @Test
    void rule13RinsesWhenTheFlowDrops() {
        Notebook at = new Notebook(drill);
        at.arrive(minute, minute + 720, new Notebook.Sight(26, 7, mood, true, 85, 0, 240, 0));
        at.read(Pad.AMMONIA, 0.1);
        at.read(Pad.PH, 7);
        assertThat(decide(at).filter()).isEqualTo(FilterCare.RINSE);
        assertThat(RULES.ruling(at).rules()).contains(13);
    }

    @Test
    void rule14DosesToTwoAndNeverWithFishIn() {
        drill = TrialScenario.fishless();
        Notebook at = new Notebook(drill);
        at.arrive(minute, minute + Calendar.DAY, new Notebook.Sight(26, 7, null, true, 100, 0, 0, 240));
        at.read(Pad.AMMONIA, 0.5);
        at.read(Pad.NITRITE, 2);
        at.read(Pad.ALKALINITY, 90);
        assertThat(decide(at).ammoniumChlorideG()).isCloseTo(at.ammoniumFor(1.5), within(0.1));
        assertThat(decide(at).bicarbonateG()).isCloseTo(at.bicarbonateFor(60), within(1.0));
        assertThat(RULES.ruling(at).rules()).contains(14);
    }

    @Test
    void rule15TestsEverythingAndCallsWhereMoreDie() {
        visit(0.01, 0, 120, 200);
        found = 3;
        Notebook at = come();
        assertThat(RULES.tests(at))
                .containsExactlyInAnyOrder(Pad.AMMONIA, Pad.NITRITE, Pad.PH, Pad.ALKALINITY, Pad.CHLORIDE);
        assertThat(RULES.ruling(at).rules()).contains(15);
        assertThat(RULES.decide(at, DrillLog.EMPTY, true).helpers()).isEqualTo(FollowUp.NONE);
        at = come();
        assertThat(RULES.decide(at, DrillLog.EMPTY, true).helpers()).isEqualTo(FollowUp.CALL);
        found = 0;
        mood = FishMood.GASPING;
        at = come();
        assertThat(RULES.decide(at, DrillLog.EMPTY, true).helpers()).isEqualTo(FollowUp.CALL);
        oxygen = 2;
        at = come();
        assertThat(RULES.decide(at, DrillLog.EMPTY, true).helpers())
                .as("air explains it")
                .isEqualTo(FollowUp.NONE);
    }
}
