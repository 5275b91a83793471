package startwater.cli;

import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.score.RunSummary;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** The end of a drill in a terminal: own stock beside the standing rules and doing nothing, luck apart. */
final class EndPage {
    private final Terminal terminal;
    private final DrillWords words;
    private final Texts texts;

    EndPage(Terminal terminal, DrillWords words) {
        this.terminal = terminal;
        this.words = words;
        this.texts = words.texts();
    }

    void print(DrillRun run, RunSummary end) {
        terminal.gap();
        terminal.say("== " + texts.text("play.end") + " ==");
        Scenario.Fish fish = run.scenario().fishHereOrPlanned();
        if (fish != null) {
            terminal.say(texts.text("play.endAlive", end.ownAlive(), fish.count()));
            terminal.say(texts.text("play.endRules", end.rulesAlive(), end.nothingAlive()));
            terminal.say(texts.text("play.luck" + luck(end.luck()), words.why().deaths(Math.abs(end.luck()))));
        }
        if (!Double.isNaN(end.mark())) {
            terminal.say(texts.text(end.passed() ? "play.endPassed" : "play.endNot", Math.rint(end.mark())));
        }
        terminal.say(words.scenario(run.scenario()).debrief());
        words.rules(run.scenario()).forEach(terminal::say);
        terminal.say(texts.text("caution"));
    }

    private static String luck(double fish) {
        return Math.abs(fish) < 1 ? "None" : fish > 0 ? "Good" : "Bad";
    }
}
