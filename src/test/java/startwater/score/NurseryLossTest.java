package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.Seen;
import startwater.drill.VisitRecord;
import startwater.fish.Stressor;

/** Fish that die while they wait in a nursery count wherever deaths count. */
@Tag("slow")
class NurseryLossTest {
    private static final Scenario CROWDED = BentDrill.beside("crowded")
            .setIn("nursery", "  mediaAreaM2", 26)
            .set("days", 6)
            .set("decisionVisits", "[0, 4]")
            .made();

    private static DrillRun nothing() {
        return PolicyPlayer.play(CROWDED, Policies.byId("do-nothing"), 1, DrillRun.Pace.EVERY_VISIT);
    }

    private static int living(DrillRun run) {
        Seen last = run.past().last().seen();
        return last.alive() + last.toCome();
    }

    @Test
    void theOutcomeCountsThemByTheirCauses() {
        DrillRun run = nothing();
        double deaths = Outcome.of(run).deathsFraction();
        assertThat(deaths * 600).isCloseTo(600 - living(run), within(1.0)).isGreaterThan(5);
        assertThat(Arrays.stream(Stressor.values())
                        .mapToDouble(cause -> Outcome.deathsFraction(run, cause))
                        .sum())
                .isCloseTo(deaths, within(1e-12));
    }

    @Test
    void theReviewCountsThemAndKnowsWhatWasToBeExpected() {
        DrillRun run = nothing();
        RunSummary summary = Review.of(run, List.of());
        assertThat(summary.ownAlive()).isEqualTo(living(run)).isLessThan(595);
        assertThat(summary.nothingAlive()).isEqualTo(summary.ownAlive());
        assertThat(summary.expectedDeaths()).isGreaterThan(5);
        assertThat(summary.luck()).isCloseTo(summary.expectedDeaths() - (600 - summary.ownAlive()), within(1e-9));
    }

    @Test
    void leavingThemThereIsChargedWithTheDeathsAndSaidToBe() {
        VisitRecord v = DrillRun.start(CROWDED, 1, DrillRun.Pace.LEARNER).now();
        Verdict verdict =
                Judge.judge(new Case(CROWDED, new DrillLog(List.of(v.decided(Decision.LEAVE_ALONE, null)))), 8);
        Verdict.Option own = verdict.chosen();
        assertThat(own.deathsBeside()).isGreaterThan(5);
        assertThat(own.deaths()).isGreaterThanOrEqualTo(own.deathsBeside());
        assertThat(own.byCause().stream().mapToDouble(d -> d).sum()).isCloseTo(own.deaths(), within(1e-9));
        assertThat(own.part(Component.DEATHS)).isCloseTo(100 * own.deaths() / 600, within(1e-9));
        assertThat(verdict.lines()).extracting(Verdict.Line::key).containsAnyOf("costs.nursery", "costs.where");
    }

    @Test
    void theOptionsHoldSharesOfTheFishAndNoMoreThanElevenWhateverIsChosen() {
        VisitRecord v = DrillRun.start(CROWDED, 1, DrillRun.Pace.LEARNER).now();
        Case c = new Case(CROWDED, new DrillLog(List.of(v.decided(Decision.LEAVE_ALONE, null))));
        List<Decision> options = Judge.score(c, 8).options();
        assertThat(options).hasSizeLessThanOrEqualTo(Options.MOST);
        assertThat(options).extracting(Decision::stock).contains(0.0, 0.2, 0.5, 1.0);
        assertThat(options).anyMatch(d -> d.ripeMedia() > 0);
        List<Decision> other =
                Judge.score(c.choosing(Decision.LEAVE_ALONE.withStock(0.37)), 8).options();
        assertThat(other.subList(0, options.size())).isEqualTo(options);
    }
}
