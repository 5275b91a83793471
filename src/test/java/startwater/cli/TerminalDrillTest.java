package startwater.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.content.Library;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.record.Resumed;
import startwater.record.Steps;
import startwater.score.Care;
import startwater.score.Case;
import startwater.score.Judge;
import startwater.score.StandIn;
import startwater.score.Verdict;
import startwater.text.DrillWords;
import startwater.text.Language;
import startwater.text.Texts;

/** A drill of three decisions in a terminal, every question answered with an empty line. */
class TerminalDrillTest {
    private static final Scenario DRILL =
            Library.shipped().scenario("same-tank-away").get();

    private static final class Kept implements Steps {
        private final boolean exam;
        private final List<Verdict> verdicts = new ArrayList<>();

        Kept(boolean exam) {
            this.exam = exam;
        }

        @Override
        public boolean exam() {
            return exam;
        }

        @Override
        public void marked(VisitRecord visit, Verdict verdict) {
            verdicts.add(verdict);
        }
    }

    private record Played(DrillRun run, List<Verdict> verdicts, String out) {}

    private static Played played(boolean exam) {
        DrillRun run = DrillRun.start(DRILL, 5, DrillRun.Pace.LEARNER, StandIn.BY_THE_RULES);
        Kept steps = new Kept(exam);
        StringWriter out = new StringWriter();
        Terminal terminal =
                new Terminal(new BufferedReader(new StringReader("\n".repeat(500))), new PrintWriter(out), false);
        DrillWords words = new DrillWords(Texts.of(Language.EN, Texts.DRILL, "/startwater/cli/cli"));
        new TerminalDrill(terminal, words, new Resumed(run, steps, List.of(), List.of(), null, null)).play();
        terminal.flush();
        return new Played(run, steps.verdicts, out.toString());
    }

    private static Case first(DrillRun run) {
        return new Case(DRILL, run.past().upTo(0));
    }

    @Test
    void afterADecisionASecondLookIsToldAndAtTheEndWhatTheLogAllowed() {
        Played practice = played(false);
        String plain = practice.out().replaceAll("\\s+", " ");
        assertThat(practice.verdicts()).hasSizeGreaterThan(1);
        assertThat(practice.verdicts().get(0)).isEqualTo(Judge.judge(first(practice.run()), Care.LIVE));
        assertThat(plain).contains("looked back on");
        Judge.secondLook(first(practice.run()), Care.LIVE).lines().forEach(line -> assertThat(plain)
                .contains(
                        new DrillWords(Texts.of(Language.EN, Texts.DRILL)).why().format(line)));
        assertThat(plain).contains("Could you have known?", "nitrite, mg N/L", "toxic ammonia", "it was ");
    }

    @Test
    void anExamIsJudgedOnItsOwnNumberOfTanksAndToldAtTheEnd() {
        Played exam = played(true);
        assertThat(exam.verdicts().get(0)).isEqualTo(Judge.judge(first(exam.run()), Care.EXAM));
        assertThat(exam.out()).doesNotContain("looked back on").contains("Could you have known?");
    }
}
