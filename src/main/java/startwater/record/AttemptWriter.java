package startwater.record;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import startwater.content.ContentHash;
import startwater.drill.Decision;
import startwater.drill.DippedStrip;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Prediction;
import startwater.drill.Scenario;
import startwater.drill.Seen;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.score.RunSummary;
import startwater.score.Verdict;
import startwater.score.WorkingMark;

/** Writes the steps of one attempt into a learner's file. */
final class AttemptWriter implements Steps {
    private final LearnerFile file;
    private final DrillRun run;
    private final String attempt;
    private final Entry.Mode mode;
    private final Map<Integer, Entry.Working> workings = new HashMap<>();
    private int n;
    private boolean ended;

    private AttemptWriter(LearnerFile file, DrillRun run, String attempt, Entry.Mode mode, int n) {
        this.file = file;
        this.run = run;
        this.attempt = attempt;
        this.mode = mode;
        this.n = n;
        file.writes(attempt, this);
    }

    /** Begins an attempt on a run that stands at its first visit. */
    static AttemptWriter begin(
            LearnerFile file, DrillRun run, Entry.Mode mode, String language, @Nullable String handout) {
        Scenario s = run.scenario();
        AttemptWriter writer = new AttemptWriter(file, run, file.means().ids().get(), mode, 0);
        file.add(new Entry.Begun(
                writer.attempt,
                writer.next(),
                s.id(),
                s.skills(),
                ContentHash.ofPlay(s),
                EngineVersion.here(),
                run.variant(),
                mode,
                language,
                handout,
                file.now()));
        return writer;
    }

    /** Goes on with an attempt. @param next place of its next line @param worked the sums so far, by visit */
    static AttemptWriter goOn(
            LearnerFile file, DrillRun run, Entry.Begun begun, int next, Map<Integer, Entry.Working> worked) {
        AttemptWriter writer = new AttemptWriter(file, run, begun.attempt(), begun.mode(), next);
        writer.workings.putAll(worked);
        return writer;
    }

    /** An attempt that was taken up again elsewhere is written there. */
    private void add(Entry.OfAttempt entry) {
        if (file.isWritten(attempt, this)) {
            file.add(entry);
        }
    }

    private int next() {
        return n++;
    }

    @Override
    public boolean exam() {
        return mode == Entry.Mode.EXAM;
    }

    @Override
    public synchronized void dipped(DippedStrip strip, boolean chloride) {
        add(new Entry.Dipped(attempt, next(), chloride, strip.number(), strip.dilution(), file.now()));
    }

    @Override
    public synchronized void wrote(Written w) {
        add(new Entry.Wrote(attempt, next(), w.pad(), w.stop(), w.dilution(), w.strip(), file.now()));
    }

    @Override
    public synchronized void erased(Written w) {
        add(new Entry.Erased(attempt, next(), w.pad(), w.strip(), file.now()));
    }

    @Override
    public synchronized void worked(String skill, WorkingMark sum) {
        int visit = run.now().visit();
        workings.put(visit, working(skill, sum));
        add(new Entry.Worked(
                attempt, next(), visit, skill, sum.given(), sum.exact(), sum.mark(), sum.slip(), file.now()));
    }

    static Entry.Working working(String skill, WorkingMark sum) {
        return new Entry.Working(skill, sum.mark(), sum.slip() != null);
    }

    @Override
    public synchronized void decided(Decision asked, @Nullable Prediction prediction) {
        List<VisitRecord> decided = Marking.decided(run);
        VisitRecord visit = decided.get(decided.size() - 1);
        add(new Entry.Decided(
                attempt,
                next(),
                visit.visit(),
                asked,
                prediction,
                sight(visit),
                logMark(run.past(), visit),
                ContentHash.of(run.hidden().state()),
                file.now()));
    }

    static Entry.Sight sight(VisitRecord visit) {
        Seen s = visit.seen();
        return new Entry.Sight(visit.day(), s.temperatureC(), s.oxygenMgPerL(), s.ph(), s.alive(), s.found());
    }

    /** The fingerprint of a log up to and with a visit of it. */
    static String logMark(DrillLog past, VisitRecord visit) {
        return ContentHash.of(past.upTo(past.visits().indexOf(visit)));
    }

    @Override
    public synchronized void marked(VisitRecord visit, Verdict verdict) {
        Entry.Marks marks = Marking.of(run, visit, verdict, workings.get(visit.visit()));
        add(new Entry.Marked(attempt, next(), visit.visit(), marks, file.now()));
    }

    @Override
    public synchronized void finished(RunSummary s) {
        if (ended) {
            return;
        }
        ended = true;
        add(finished(attempt, next(), run, s, file.now()));
    }

    static Entry.Finished finished(String attempt, int n, DrillRun run, RunSummary s, java.time.Instant at) {
        return new Entry.Finished(
                attempt,
                n,
                Double.isNaN(s.mark()) ? null : (Double) s.mark(),
                s.passed(),
                s.ownAlive(),
                s.expectedDeaths(),
                s.luck(),
                Double.isNaN(run.filterDay()) ? null : (Double) run.filterDay(),
                at);
    }

    @Override
    public void resolved(String text) {
        file.resolve(attempt, run.scenario().skills(), text);
    }

    @Override
    public boolean kept() {
        return file.trouble().isEmpty();
    }
}
