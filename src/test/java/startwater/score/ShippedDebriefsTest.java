package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import startwater.content.Library;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.text.DrillWords;
import startwater.text.Language;
import startwater.text.Texts;

/** What every shipped drill owes whoever plays it: an empty play does not pass, and the debrief ends where the file says. */
@Tag("slow")
class ShippedDebriefsTest {
    /** Enough to tell which rule speaks and whether a play passes; too few for a mark. */
    private static final int WATERS = 4;

    private static final long TANK = 3;
    private static final int MOST_TANKS = 4;

    private static Stream<Scenario> drills() {
        return Library.shipped().scenarios().stream();
    }

    private static List<Verdict> judged(Scenario drill, String policy) {
        return judged(drill, policy, TANK);
    }

    private static List<Verdict> judged(Scenario drill, String policy, long tank) {
        DrillRun run = PolicyPlayer.play(drill, Policies.byId(policy), tank, DrillRun.Pace.LEARNER);
        List<Verdict> verdicts = new ArrayList<>();
        for (int i = 0; i < run.past().size(); i++) {
            VisitRecord visit = run.past().visits().get(i);
            if (visit.asked() && visit.decision() != null) {
                verdicts.add(Judge.judge(new Case(drill, run.past().upTo(i)), WATERS));
            }
        }
        return verdicts;
    }

    @TestFactory
    Stream<DynamicTest> anEmptyPlayDoesNotPass() {
        return drills().map(drill -> DynamicTest.dynamicTest(drill.id(), () -> {
            List<Verdict> verdicts = judged(drill, "do-nothing");
            List<PolicyPlay.Step> steps =
                    verdicts.stream().map(v -> PolicyPlay.Step.of(0, v)).toList();
            PolicyPlay play = new PolicyPlay(new Outcome(0, 0, 0), steps);
            assertThat(play.mark())
                    .as("%s: something must be at stake", drill.id())
                    .isNotNaN();
            assertThat(play.passed()).as(drill.id()).isFalse();
        }));
    }

    /** Each debrief ends in rules, and over a play those that the file promises come up. */
    @TestFactory
    Stream<DynamicTest> theDebriefEndsInTheRulesThatTheFilePromises() {
        return drills().map(drill -> DynamicTest.dynamicTest(drill.id(), () -> {
            Set<Integer> said = new TreeSet<>();
            for (Verdict verdict : judged(drill, "careful")) {
                Verdict.Line last = verdict.lines().get(verdict.lines().size() - 1);
                assertThat(last.severity())
                        .as("%s: last line %s", drill.id(), last.key())
                        .isEqualTo(Verdict.Line.Severity.RULE);
                said.addAll(rules(verdict));
            }
            // Tanks differ: what one play does not meet, the next may.
            for (long tank = TANK; tank < TANK + MOST_TANKS && !said.containsAll(drill.rules()); tank++) {
                for (String habit : drill.exposes()) {
                    judged(drill, habit, tank).forEach(verdict -> said.addAll(rules(verdict)));
                }
            }
            assertThat(said).as(drill.id()).containsAll(drill.rules());
            for (Language language : Language.values()) {
                List<String> end = new DrillWords(Texts.of(language)).rules(drill);
                assertThat(end).hasSameSizeAs(drill.rules());
                assertThat(end).noneMatch(rule -> rule.contains("{") || rule.contains("…"));
            }
        }));
    }

    private static List<Integer> rules(Verdict verdict) {
        return verdict.lines().stream()
                .filter(line -> line.severity() == Verdict.Line.Severity.RULE
                        && line.key().startsWith("rule."))
                .map(line -> Integer.parseInt(line.key().substring("rule.".length())))
                .toList();
    }
}
