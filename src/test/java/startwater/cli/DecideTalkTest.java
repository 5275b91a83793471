package startwater.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import startwater.content.Library;
import startwater.drill.Decision;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.Scenario.Happening.Kind;
import startwater.text.DrillWords;
import startwater.text.Language;
import startwater.text.VisitFacts;

/** The terminal asks for what there is to choose, and for nothing else. */
class DecideTalkTest {
    private final StringWriter said = new StringWriter();

    /** The second week, with what a test wants otherwise. */
    private static Scenario week(
            Scenario.@Nullable Fish planned, double bag, double spareAir, List<Scenario.Happening> events) {
        Scenario s = Library.shipped().scenario("hungry-second-week").get();
        Scenario.Shelf shelf = new Scenario.Shelf(5000, 3000, 0, 0, 100, 40, 10, true, false, bag, spareAir);
        return s.change()
                .fish(planned == null ? s.fish() : null, planned)
                .shelf(shelf)
                .events(events)
                .made();
    }

    private Decision decide(Scenario s, String... lines) {
        DrillRun run = DrillRun.start(s, 1, DrillRun.Pace.LEARNER);
        StringReader typed = new StringReader(String.join("\n", lines) + "\n");
        Terminal terminal = new Terminal(new BufferedReader(typed), new PrintWriter(said, true), true);
        DrillWords words = new DrillWords(CliTexts.of(Language.EN));
        return new DecideTalk(terminal, words, VisitFacts.of(run)).decide();
    }

    @Test
    void fishAndRipeMediaCanBePutInWhereTheyAreToCome() {
        Scenario.Fish planned = new Scenario.Fish("channel-catfish", 200, 12, 32, List.of(8.0));
        Decision d = decide(
                week(planned, 0.2, 1, List.of()), "900", "50", "30 %", "", "", "", "spare", "", "150", "50", "", "");
        assertThat(d.stock()).isEqualTo(0.25);
        assertThat(d.feed()).isEqualTo(0.3);
        assertThat(d.air()).isEqualTo(Decision.Air.SPARE);
        assertThat(d.ripeMedia()).isEqualTo(0.5);
        assertThat(said.toString())
                .contains("at most 200")
                .contains("at most 100 %")
                .contains("50 fish go in now.")
                .contains("50 % of the ripe media go into the filter.")
                .doesNotContain("Start it?");
    }

    @Test
    void aPumpThatStandsIsAskedForAndTheFilterCanBeDrained() {
        Scenario.Happening off = new Scenario.Happening(8, Kind.PUMP_OFF, 0, 0);
        Decision d = decide(week(null, 0, 0, List.of(off)), "", "", "", "", "", "drain", "yes", "", "");
        assertThat(d.filter()).isEqualTo(Decision.FilterCare.DRAIN);
        assertThat(d.pump()).isTrue();
        assertThat(said.toString())
                .contains("The pump stands. Start it?")
                .contains("The filter is drained first.")
                .contains("The pump is started.")
                .doesNotContain("still to come");
    }

    @Test
    void whereAllRunsNothingMoreIsAsked() {
        decide(week(null, 0, 0, List.of()), "", "", "", "", "", "", "", "");
        assertThat(said.toString())
                .doesNotContain("drain")
                .doesNotContain("heater")
                .doesNotContain("ripe media");
    }
}
