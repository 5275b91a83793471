package startwater.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import startwater.drill.DippedStrip;
import startwater.drill.DrillRun;
import startwater.drill.Prediction;
import startwater.drill.Scenario;
import startwater.drill.Seen;
import startwater.drill.VisitRecord;
import startwater.record.Resumed;
import startwater.record.Steps;
import startwater.score.Case;
import startwater.score.Judge;
import startwater.score.KnownOverTime;
import startwater.score.ReadingMark;
import startwater.score.Review;
import startwater.score.RunSummary;
import startwater.score.StandIn;
import startwater.score.Verdict;
import startwater.text.DrillWords;
import startwater.text.Texts;
import startwater.text.VisitFacts;

/** A whole drill in a terminal: look, test, write, decide, see. */
final class TerminalDrill {
    private final Terminal terminal;
    private final DrillWords words;
    private final Texts texts;
    private final DrillRun run;
    private final Steps steps;
    private final List<Verdict> verdicts = new ArrayList<>();
    private List<DippedStrip> wet;
    private Supplier<@Nullable String> watch = () -> null;
    private @Nullable String told;

    /** A drill whose steps nobody keeps. @param seed which hidden tank */
    TerminalDrill(Terminal terminal, DrillWords words, Scenario scenario, long seed) {
        this(
                terminal,
                words,
                Resumed.unkept(DrillRun.start(scenario, seed, DrillRun.Pace.LEARNER, StandIn.BY_THE_RULES)));
    }

    /** A drill of a learner, perhaps taken up again. */
    TerminalDrill(Terminal terminal, DrillWords words, Resumed at) {
        this.terminal = terminal;
        this.words = words;
        this.texts = words.texts();
        this.run = at.run();
        this.steps = at.steps();
        this.wet = at.wet();
        this.verdicts.addAll(at.verdicts());
    }

    /** What stands in the way of keeping is said as soon as it comes and when it changes. @param trouble a sentence, or null */
    TerminalDrill watching(Supplier<@Nullable String> trouble) {
        watch = trouble;
        told = trouble.get();
        return this;
    }

    private void lookAtTheDisk() {
        String now = watch.get();
        if (now != null && !now.equals(told)) {
            terminal.say(now);
        } else if (now == null && told != null) {
            terminal.say(texts.text("learners.keptAgain"));
        }
        told = now;
    }

    /** Plays to the end. @throws Terminal.EndOfInput when the input ends before */
    void play() {
        open();
        while (!run.over()) {
            visit();
        }
        RunSummary summary = Review.of(run, verdicts);
        steps.finished(summary);
        new EndPage(terminal, words).print(run, summary);
        new KnownPage(terminal, words).print(KnownOverTime.of(run.scenario(), run.past()), run);
    }

    private void open() {
        Scenario.Words told = words.scenario(run.scenario());
        terminal.say(told.title());
        terminal.say(told.story());
        terminal.say(told.goal());
        terminal.say(texts.text("caution"));
    }

    private void visit() {
        look();
        TestTalk talkOfTests = new TestTalk(terminal, words, run, steps);
        talkOfTests.goOn(wet);
        wet = List.of();
        talkOfTests.test();
        VisitFacts facts = VisitFacts.of(run);
        DecideTalk talk = new DecideTalk(terminal, words, facts);
        Decision decision = talk.decide();
        @Nullable Prediction prediction = talk.foresee();
        int place = run.past().size();
        run.decide(decision, prediction);
        steps.decided(decision, prediction);
        lookAtTheDisk();
        Case c = new Case(run.scenario(), run.past().upTo(place));
        Verdict verdict = Judge.judge(c, steps.care());
        verdicts.add(verdict);
        VisitRecord done = run.past().visits().get(place);
        steps.marked(done, verdict);
        if (!steps.exam()) {
            VerdictPage page = new VerdictPage(terminal, words);
            page.print(verdict, ReadingMark.of(run, done), facts.fishIn());
            terminal.flush();
            page.print(Judge.secondLook(c, steps.care()));
        }
        run.past().visits().stream()
                .skip(place + 1L)
                .map(words::stoodIn)
                .filter(said -> !said.isEmpty())
                .forEach(terminal::say);
    }

    private void look() {
        VisitRecord now = run.now();
        Seen seen = now.seen();
        terminal.gap();
        terminal.say(texts.text(
                "play.visit",
                words.clock(now.minute()),
                run.asked(),
                run.scenario().keeper().decisions()));
        words.sight(seen).forEach(terminal::say);
        List<String> meters = new ArrayList<>();
        meters.add(texts.text("play.temperature", texts.decimals(seen.temperatureC(), 1)));
        if (seen.oxygenMgPerL() != null) {
            meters.add(texts.text("play.oxygen", texts.decimals(seen.oxygenMgPerL(), 1)));
        }
        if (seen.ph() != null) {
            meters.add(texts.text("play.ph", texts.decimals(seen.ph(), 2)));
        }
        meters.add(texts.text(seen.air() ? "play.airRuns" : "play.airStands"));
        meters.add(words.running(seen));
        if (seen.mood() != null) {
            meters.add(texts.text("play.alive", seen.alive()));
        }
        terminal.say(String.join(" ", meters));
    }
}
