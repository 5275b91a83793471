package startwater.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.content.Library;
import startwater.drill.Decision;
import startwater.drill.Decision.FilterCare;
import startwater.drill.Decision.FollowUp;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.record.Resumed;
import startwater.record.Steps;
import startwater.score.Care;
import startwater.score.Case;
import startwater.score.Judge;
import startwater.score.StandIn;
import startwater.score.Verdict;
import startwater.score.WorkingMark;
import startwater.strip.Pad;

class DrillModelTest {
    private static final Scenario DRILL =
            Library.shipped().scenario("hungry-second-week").get();

    private static DrillModel model(int practised) {
        return new DrillModel(
                DrillRun.start(DRILL, 2, DrillRun.Pace.LEARNER, StandIn.BY_THE_RULES), List.of(), practised, null);
    }

    private static void readAll(DrillModel model) {
        model.dip(1);
        for (int pad = 0; pad < 6; pad++) {
            model.writeDown();
        }
    }

    @Test
    void aReadingIsTakenBackAndItsPadIsInHandAgain() {
        DrillModel model = model(0);
        model.dip(1);
        model.choose(3);
        model.writeDown();
        model.choose(9);
        model.writeDown();
        assertThat(model.run().now().written()).hasSize(2);
        model.takeBack();
        assertThat(model.run().now().written()).hasSize(1);
        assertThat(model.inHandProperty().get()).isEqualTo(Pad.NITRITE);
        assertThat(model.stop(Pad.NITRITE)).isEqualTo(9);
        model.takeBack();
        model.takeBack();
        assertThat(model.run().now().written()).isEmpty();
        assertThat(model.lastWritten()).isNull();
    }

    @Test
    void whatIsOrderedBesideAmountsIsInTheDecisionAndGoneAtTheNextVisit() {
        DrillModel model = model(0);
        model.filterProperty().set(FilterCare.RINSE);
        model.followUpProperty().set(FollowUp.CALL);
        model.neutraliseProperty().set(false);
        Decision d = model.decision();
        assertThat(d.filter()).isEqualTo(FilterCare.RINSE);
        assertThat(d.helpers()).isEqualTo(FollowUp.CALL);
        assertThat(d.neutralise()).isFalse();
        model.commit().join();
        assertThat(model.decision().filter()).isEqualTo(FilterCare.LEAVE);
        assertThat(model.decision().helpers()).isEqualTo(FollowUp.NONE);
        assertThat(model.decision().neutralise()).isTrue();
    }

    @Test
    void theSumFadesFromWorkedToAloneAndComesBackAStepAfterAnError() {
        DrillModel model = model(0);
        assertThat(model.support()).isEqualTo(Support.WORKED);
        readAll(model);
        model.commit().join();
        assertThat(model.support()).isEqualTo(Support.LAST_STEP);
        model.workingProperty().set(WorkingMark.of(0.04, 0.04));
        model.commit().join();
        assertThat(model.support()).isEqualTo(Support.WITH_TABLE);
        assertThat(model.workingProperty().get()).isNull();
        model.workingProperty().set(WorkingMark.of(4, 0.04));
        model.commit().join();
        assertThat(model.support()).isEqualTo(Support.LAST_STEP);
    }

    @Test
    void aVisitWithoutReadingsIsNoWorkedExample() {
        DrillModel model = model(0);
        model.commit().join();
        assertThat(model.support()).isEqualTo(Support.WORKED);
        assertThat(Support.after(99)).isEqualTo(Support.ALONE);
    }

    @Test
    void anExamIsJudgedOnItsOwnNumberOfTanks() {
        Steps exam = new Steps() {
            @Override
            public boolean exam() {
                return true;
            }
        };
        DrillRun run = DrillRun.start(DRILL, 2, DrillRun.Pace.LEARNER, StandIn.BY_THE_RULES);
        DrillModel model = new DrillModel(new Resumed(run, exam, List.of(), List.of(), null, null), 0, null);
        readAll(model);
        Verdict verdict = model.commit().join();
        Case c = new Case(DRILL, run.past().upTo(0));
        assertThat(verdict).isEqualTo(Judge.judge(c, Care.EXAM)).isNotEqualTo(Judge.judge(c, Care.LIVE));
    }
}
