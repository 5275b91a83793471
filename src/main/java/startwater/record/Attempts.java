package startwater.record;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import startwater.content.ContentHash;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.score.StandIn;
import startwater.score.Verdict;

/** Begins the attempts of a learner, and takes them up where they were left. */
public final class Attempts {
    private final LearnerFile file;

    public Attempts(LearnerFile file) {
        this.file = file;
    }

    /**
     * Takes up the open attempt of a drill, or begins one on the next hidden tank. An attempt that cannot go on is given up,
     * and the result says why. May take seconds: the decisions so far are judged again.
     *
     * @param language code of the language it is played in
     */
    public Resumed goOnOrBegin(Scenario scenario, Entry.Mode mode, String language) {
        return goOnOrBegin(
                scenario, () -> begin(scenario, file.history().nextVariant(scenario.id()), mode, language, null));
    }

    /**
     * The same for a drill that was handed out: an attempt of one's own that is open gives way to it.
     *
     * @param variant which hidden tank
     * @param handout id of the hand-out
     */
    public Resumed goOnOrBegin(Scenario scenario, Entry.Mode mode, String language, long variant, String handout) {
        boolean other = file.history()
                .open(scenario.id())
                .map(open -> !handout.equals(open.begun().handout()))
                .orElse(false);
        if (other) {
            giveUp(scenario);
        }
        return goOnOrBegin(scenario, () -> begin(scenario, variant, mode, language, handout));
    }

    private Resumed goOnOrBegin(Scenario scenario, Supplier<Resumed> fresh) {
        Optional<History.Open> open = file.history().open(scenario.id());
        if (open.isEmpty()) {
            return fresh.get();
        }
        Entry.Begun begun = open.get().begun();
        Notice.Kind reason = !begun.content().equals(ContentHash.ofPlay(scenario))
                ? Notice.Kind.DRILL_CHANGED
                : !begun.engine().equals(EngineVersion.here()) ? Notice.Kind.ENGINE_CHANGED : null;
        if (reason == null) {
            Resumed goesOn = resume(scenario, open.get());
            if (goesOn != null) {
                return goesOn;
            }
            reason = Notice.Kind.ATTEMPT_BROKEN;
        }
        giveUp(scenario);
        Resumed anew = fresh.get();
        return new Resumed(anew.run(), anew.steps(), List.of(), List.of(), null, Notice.of(reason));
    }

    /** Begins an attempt on a given hidden tank. @param handout id of what a teacher handed out, or null */
    public Resumed begin(Scenario scenario, long variant, Entry.Mode mode, String language, @Nullable String handout) {
        DrillRun run = DrillRun.start(scenario, variant, DrillRun.Pace.LEARNER, StandIn.BY_THE_RULES);
        Steps steps = AttemptWriter.begin(file, run, mode, language, handout);
        return new Resumed(run, steps, List.of(), List.of(), null, null);
    }

    /** Gives up the open attempt of a drill, if there is one. */
    public void giveUp(Scenario scenario) {
        file.history().open(scenario.id()).ifPresent(open -> {
            List<Entry.OfAttempt> lines = lines(open);
            int next = lines.isEmpty() ? 1 : lines.get(lines.size() - 1).n() + 1;
            file.add(new Entry.Abandoned(open.begun().attempt(), next, file.now()));
        });
    }

    private @Nullable Resumed resume(Scenario scenario, History.Open open) {
        Rerun rerun = new Rerun(scenario, open.begun());
        try {
            lines(open).forEach(rerun::take);
        } catch (Difference.Found | IllegalArgumentException | IllegalStateException broken) {
            return null;
        }
        Steps steps = AttemptWriter.goOn(file, rerun.run(), open.begun(), rerun.next(), rerun.workings());
        List<Verdict> verdicts = MarkCheck.judged(rerun.run(), rerun.care());
        List<VisitRecord> decided = Marking.decided(rerun.run());
        for (int i = 0; i < decided.size(); i++) {
            // It was left while this was being judged.
            if (!rerun.marks().containsKey(decided.get(i).visit())) {
                steps.marked(decided.get(i), verdicts.get(i));
            }
        }
        return new Resumed(rerun.run(), steps, verdicts, rerun.wet(), rerun.openSum(), null);
    }

    /** The lines of an open attempt after its first. */
    private List<Entry.OfAttempt> lines(History.Open open) {
        List<Entry.OfAttempt> lines = new ArrayList<>();
        Consumer<String> reader = text -> {
            if (EntryText.read(text).entry() instanceof Entry.OfAttempt e
                    && e.attempt().equals(open.begun().attempt())
                    && !(e instanceof Entry.Begun)) {
                lines.add(e);
            }
        };
        // On a disk that is full some lines still wait, and come behind the others.
        List<String> waiting = file.settle();
        try {
            LineScan.from(file.file(), open.offset(), (text, start, end, ended) -> {
                if (ended) {
                    reader.accept(text);
                }
            });
            waiting.forEach(reader);
        } catch (IOException unreadable) {
            return List.of();
        }
        return lines;
    }
}
