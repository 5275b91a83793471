package startwater.app.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.content.Library;
import startwater.drill.DrillRun;
import startwater.score.KnownOverTime;
import startwater.score.Verdict.Line;
import startwater.strip.Pad;

class DebriefModelTest {
    /** Three visits read and decided; the run stands at the fourth. */
    static DebriefModel afterThree(boolean read) {
        DrillRun run =
                DrillRun.start(Library.shipped().scenario("hungry-second-week").get(), 2, DrillRun.Pace.LEARNER);
        DrillModel model = new DrillModel(run, List.of(), 0, null);
        for (int visit = 0; visit < 3; visit++) {
            if (read) {
                model.dip(1);
                for (int pad = 0; pad < 6; pad++) {
                    Pad inHand = java.util.Objects.requireNonNull(
                            model.inHandProperty().get());
                    var strip = java.util.Objects.requireNonNull(model.wet(inHand));
                    model.choose(inHand.scale().nearestStop(strip.position(inHand)));
                    model.writeDown();
                }
            }
            model.judged(model.commit().join());
        }
        return new DebriefModel(run, new EndModel(run, model.verdicts()).steps(), null, true);
    }

    @Test
    void threeSentencesLeadAndTheRulesComeLast() {
        DebriefModel model = afterThree(true);
        assertThat(model.leading()).hasSize(3).extracting(Line::key).anyMatch(k -> k.startsWith("said."));
        assertThat(model.rest()).isNotEmpty().doesNotContainAnyElementsOf(model.leading());
        List<Boolean> rules = model.rest().stream()
                .map(l -> l.severity() == Line.Severity.RULE)
                .toList();
        assertThat(rules).isSorted().contains(true);
        assertThat(model.leading().size() + model.rest().size())
                .isEqualTo(model.verdict().lines().size());
    }

    @Test
    void theTruthIsToldUpToTheDecisionAndNoFurther() {
        DebriefModel model = afterThree(true);
        assertThat(model.run().now().day()).isGreaterThan(model.decided().day());
        KnownOverTime known = KnownOverTime.of(model.run().scenario(), model.log());
        assertThat(known.moments().get(known.moments().size() - 1).day())
                .isEqualTo(model.decided().day());
        assertThat(known.truth(model.run()))
                .hasSameSizeAs(known.moments())
                .allMatch(t -> t.day() <= model.decided().day() + 1e-6);
        assertThat(model.judged().choice()).isEqualTo(model.decided().decision());
    }

    @Test
    void theDeadSinceTheDecisionAreThoseThatAreGoneAtTheNextVisit() {
        DebriefModel model = afterThree(true);
        assertThat(model.diedSince())
                .isEqualTo(model.decided().seen().alive()
                        - model.run().now().seen().alive());
    }

    @Test
    void withoutADecisionThereIsNothingToLookBackOn() {
        DrillRun run = afterThree(false).run();
        assertThatThrownBy(() -> new DebriefModel(run, List.of(), null, true)).hasMessageContaining("no decision");
    }
}
