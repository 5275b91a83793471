package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Prediction;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.strip.Pad;

/** A case and its neighbours: with another choice, another reading or one more. */
class CaseTest {
    private static final Scenario SCENARIO = TrialScenario.secondWeek(15);
    private static final Written AMMONIA = new Written(Pad.AMMONIA, 8, 1, 0);
    private static final Written NITRITE = new Written(Pad.NITRITE, 4, 1, 0);
    private static final Prediction SAID = new Prediction(Pad.AMMONIA, 3, Prediction.Sureness.SURE);

    private static VisitRecord first() {
        return DrillRun.start(SCENARIO, 5, DrillRun.Pace.LEARNER).now();
    }

    /** Two visits, the second with two readings and a prediction. */
    private static Case twoVisits() {
        VisitRecord one = first().decided(Decision.LEAVE_ALONE.withFeed(0.5), null);
        VisitRecord two = first().with(AMMONIA).with(NITRITE).decided(Decision.LEAVE_ALONE, SAID);
        return new Case(SCENARIO, new DrillLog(List.of(one, two)));
    }

    @Test
    void aLogThatDoesNotEndInADecisionIsNoCase() {
        assertThatThrownBy(() -> new Case(SCENARIO, DrillLog.EMPTY)).hasMessageContaining("decision");
        DrillLog open = new DrillLog(List.of(first()));
        assertThatThrownBy(() -> new Case(SCENARIO, open)).hasMessageContaining("decision");
    }

    @Test
    void anotherChoiceLeavesAllElseAsItWas() {
        Decision other = Decision.LEAVE_ALONE.withChange(0.5);
        Case changed = twoVisits().choosing(other);
        assertThat(changed.choice()).isEqualTo(other);
        assertThat(twoVisits().choice()).isEqualTo(Decision.LEAVE_ALONE);
        assertThat(changed.visit().prediction()).isEqualTo(SAID);
        assertThat(changed.choosing(Decision.LEAVE_ALONE)).isEqualTo(twoVisits());
        assertThat(changed.log().size()).isEqualTo(2);
        assertThat(changed.log().visits().get(0))
                .isEqualTo(twoVisits().log().visits().get(0));
    }

    @Test
    void oneReadingIsPutInThePlaceOfAnotherAndTheRestStays() {
        Written higher = new Written(Pad.AMMONIA, 12, 1, 0);
        Case reread = twoVisits().rereading(AMMONIA, higher);
        assertThat(reread.visit().written()).containsExactly(higher, NITRITE);
        assertThat(reread.choice()).isEqualTo(twoVisits().choice());
        assertThat(reread.rereading(higher, AMMONIA)).isEqualTo(twoVisits());
    }

    @Test
    void oneMoreReadingComesLast() {
        Written ph = new Written(Pad.PH, 7, 1, 0);
        assertThat(twoVisits().rereading(null, ph).visit().written()).containsExactly(AMMONIA, NITRITE, ph);
    }
}
