package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.drill.Actor;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.Decision.FollowUp;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.strip.Pad;

/** Somebody who looks again half-way, and somebody who knows and is called. */
@Tag("slow")
class AttentionTest {
    private static final Scenario SCENARIO = TrialScenario.secondWeek(15);

    private static DrillRun after(FollowUp followUp) {
        DrillRun run = DrillRun.start(SCENARIO, 3, DrillRun.Pace.EVERY_VISIT, StandIn.BY_THE_RULES);
        run.decide(Decision.LEAVE_ALONE.withFollowUp(followUp), null);
        return run;
    }

    @Test
    void aHelperComesHalfWayTestsAndActsByTheRules() {
        DrillRun run = after(FollowUp.LOOK_AGAIN);
        VisitRecord came = run.past().visits().get(1);
        assertThat(came.actor()).isEqualTo(Actor.HELPER);
        assertThat(came.minute()).isEqualTo((SCENARIO.start().day() * Calendar.DAY) + 12 * 60);
        assertThat(came.written()).extracting(Written::pad).contains(Pad.AMMONIA, Pad.NITRITE, Pad.PH);
        assertThat(run.stripsLeft()).isEqualTo(SCENARIO.shelf().strips() - 1);
        Notebook book =
                Notebook.of(SCENARIO, run.calendar(), run.past().visits().subList(0, 1));
        book.enter(came, run.calendar().nextVisitAfter(came.minute()));
        assertThat(came.decision()).isEqualTo(Policies.CAREFUL.decide(book).withFollowUp(FollowUp.NONE));
    }

    @Test
    void whoIsCalledIsThereInFourHoursWithAKitThatIsNotMisread() {
        DrillRun run = after(FollowUp.CALL);
        VisitRecord came = run.past().visits().get(1);
        assertThat(came.actor()).isEqualTo(Actor.EXPERT);
        assertThat(came.minute() - run.past().visits().get(0).minute()).isEqualTo(240);
        assertThat(came.written()).allMatch(Written::byKit);
        assertThat(run.stripsLeft()).isEqualTo(SCENARIO.shelf().strips());
    }

    @Test
    void theOrdersOfWhoeverCameStandAfterwards() {
        DrillRun run = after(FollowUp.LOOK_AGAIN);
        double fed = java.util.Objects.requireNonNull(run.past().visits().get(1).decision())
                .feed();
        assertThat(run.hidden().feed()).isEqualTo(fed);
    }

    @Test
    void aRunWithoutAnybodyRefusesToAskForHelp() {
        DrillRun run = DrillRun.start(SCENARIO, 3, DrillRun.Pace.LEARNER);
        assertThatThrownBy(() -> run.decide(Decision.LEAVE_ALONE.withFollowUp(FollowUp.CALL), null))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("attendant");
        assertThat(run.past().size()).isZero();
    }

    @Test
    void aReplayMeetsTheSamePeople() {
        DrillRun run = after(FollowUp.LOOK_AGAIN);
        run.decide(Decision.LEAVE_ALONE.withFollowUp(FollowUp.CALL), null);
        DrillRun again = DrillRun.start(SCENARIO, 3, DrillRun.Pace.EVERY_VISIT, StandIn.BY_THE_RULES);
        for (VisitRecord v : run.past().visits()) {
            if (v.asked()) {
                again.decide(java.util.Objects.requireNonNull(v.decision()), v.prediction());
            }
        }
        assertThat(again.past()).isEqualTo(run.past());
    }

    @Test
    void thePlausibleTanksFollowWhatTheHelperDid() {
        DrillRun run = after(FollowUp.LOOK_AGAIN);
        Belief belief = Belief.of(SCENARIO, run.log());
        double fed = run.hidden().feed();
        for (int w = 0; w < belief.waters(); w++) {
            assertThat(belief.water(w).sim().feed()).isEqualTo(fed);
        }
    }

    @Test
    void lookingAgainAndCallingAreOptionsAndCostTheirPrice() {
        Case calm = JudgeTest.firstVisit(SCENARIO, 0.1, 0, 7.4, 100, Decision.LEAVE_ALONE);
        Scored scored = Judge.score(calm);
        List<Decision> options = scored.options();
        Decision called = options.stream()
                .filter(d -> d.helpers() == FollowUp.CALL)
                .findFirst()
                .orElseThrow();
        Decision alone = called.withFollowUp(FollowUp.NONE);
        double jobs = scored.losses().mean(options.indexOf(called), Component.JOBS)
                - scored.losses().mean(options.indexOf(alone), Component.JOBS);
        assertThat(options).contains(alone.withFollowUp(FollowUp.LOOK_AGAIN));
        assertThat(jobs).isGreaterThanOrEqualTo(LossWeights.CALL);
        assertThat(options.size()).isLessThanOrEqualTo(12);
    }
}
