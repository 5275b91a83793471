package startwater.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import startwater.content.ContentHash;
import startwater.drill.DippedStrip;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.record.Difference.What;
import startwater.score.Care;
import startwater.score.Review;
import startwater.score.StandIn;
import startwater.score.UnitSlip;
import startwater.score.WorkingMark;
import startwater.strip.Pad;

/** The steps of an attempt played again on its hidden tank, each compared with what the file says of it. */
final class Rerun {
    private final DrillRun run;
    private final Care care;
    private final List<DippedStrip> wet = new ArrayList<>();
    private final Map<Integer, Entry.Working> workings = new HashMap<>();
    private final Map<Integer, Entry.Marks> marks = new HashMap<>();
    private @Nullable WorkingMark openSum;
    private Entry.@Nullable Finished finished;
    private int next = 1;

    Rerun(Scenario scenario, Entry.Begun begun) {
        care = begun.care();
        run = DrillRun.start(scenario, begun.variant(), DrillRun.Pace.LEARNER, StandIn.BY_THE_RULES);
    }

    /** How its decisions were judged. */
    Care care() {
        return care;
    }

    /** Plays one line. @throws Difference.Found where it comes out otherwise */
    void take(Entry.OfAttempt e) {
        Difference.check(What.LINES, visit(), e.n(), next++);
        if (e instanceof Entry.Marked m) {
            marks.put(m.visit(), m.marks());
        } else if (e instanceof Entry.Finished f) {
            finished = f;
        } else if (!(e instanceof Entry.Abandoned)) {
            Difference.check(What.VISIT, visit(), "asked", run.over() ? "over" : "asked");
            act(e);
        }
    }

    private int visit() {
        return run.over() ? run.past().last().visit() : run.now().visit();
    }

    private void act(Entry.OfAttempt e) {
        if (e instanceof Entry.Dipped d) {
            dip(d);
        } else if (e instanceof Entry.Wrote w) {
            boolean onScale = w.stop() >= 0 && w.stop() < w.pad().scale().stops();
            boolean there = run.strip(w.pad(), w.strip()) != null;
            Difference.check(What.READING, visit(), w.stop(), onScale && there ? w.stop() : "?");
            run.write(new Written(w.pad(), w.stop(), w.dilution(), w.strip()));
        } else if (e instanceof Entry.Erased x) {
            run.erase(written(x.pad(), x.strip()));
        } else if (e instanceof Entry.Worked w) {
            worked(w);
        } else if (e instanceof Entry.Decided d) {
            decide(d);
        } else {
            throw new Difference.Found(new Difference(What.LINES, visit(), EntryText.kind(e), "?"));
        }
    }

    private void dip(Entry.Dipped d) {
        int left = d.chloride() ? run.chlorideStripsLeft() : run.stripsLeft();
        int all = d.chloride()
                ? run.scenario().shelf().chlorideStrips()
                : run.scenario().shelf().strips();
        Difference.check(What.STRIP, visit(), d.strip(), left > 0 ? (Object) (all - left) : "none");
        Difference.check(What.STRIP, visit(), d.dilution(), Math.max(1, d.dilution()));
        wet.add(d.chloride() ? run.dipChloride() : run.dip(d.dilution()));
    }

    private Written written(Pad pad, int strip) {
        return run.now().written().stream()
                .filter(w -> w.pad() == pad && w.strip() == strip)
                .findFirst()
                .orElseThrow(() -> new Difference.Found(new Difference(What.READING, visit(), ActText.name(pad), "?")));
    }

    private void worked(Entry.Worked w) {
        Difference.check(What.VISIT, visit(), w.visit(), visit());
        UnitSlip slip = w.slip();
        WorkingMark sum = new WorkingMark(w.given(), w.exact(), w.given() / w.exact() - 1, slip);
        Difference.check(What.SUM, visit(), w.mark(), sum.mark());
        workings.put(w.visit(), AttemptWriter.working(w.skill(), sum));
        openSum = sum;
    }

    private void decide(Entry.Decided d) {
        int at = visit();
        Difference.check(What.VISIT, at, d.visit(), at);
        Entry.Sight kept = d.seen();
        Entry.Sight seen = AttemptWriter.sight(run.now());
        Difference.check(What.DAY, at, kept.day(), seen.day());
        Difference.check(What.TEMPERATURE, at, kept.temperatureC(), seen.temperatureC());
        Difference.check(What.OXYGEN, at, Difference.there(kept.oxygenMgPerL()), Difference.there(seen.oxygenMgPerL()));
        Difference.check(What.PH, at, Difference.there(kept.ph()), Difference.there(seen.ph()));
        Difference.check(What.ALIVE, at, kept.alive(), seen.alive());
        Difference.check(What.FOUND, at, kept.found(), seen.found());
        run.decide(d.decision(), d.prediction());
        wet.clear();
        openSum = null;
        List<VisitRecord> decided = Marking.decided(run);
        VisitRecord done = decided.get(decided.size() - 1);
        Difference.check(What.LOG, at, d.log(), AttemptWriter.logMark(run.past(), done));
        Difference.check(What.TANK, at, d.tank(), ContentHash.of(run.hidden().state()));
    }

    /** Compares the end as far as it needs no marks. */
    void checkEnd() {
        Entry.Finished f = finished;
        if (f != null) {
            int at = visit();
            Difference.check(What.VISIT, at, "over", run.over() ? "over" : "asked");
            Difference.check(What.END_ALIVE, at, f.alive(), Review.alive(run));
            Object day = Double.isNaN(run.filterDay()) ? List.of() : run.filterDay();
            Difference.check(What.FILTER_DAY, at, Difference.there(f.filterDay()), day);
        }
    }

    DrillRun run() {
        return run;
    }

    /** Strips that were dipped at the open visit, in order. */
    List<DippedStrip> wet() {
        return List.copyOf(wet);
    }

    /** The last sum of the open visit, or null. */
    @Nullable
    WorkingMark openSum() {
        return openSum;
    }

    /** The last sums by visit. */
    Map<Integer, Entry.Working> workings() {
        return Map.copyOf(workings);
    }

    /** The marks in the file, by visit. */
    Map<Integer, Entry.Marks> marks() {
        return Map.copyOf(marks);
    }

    Entry.@Nullable Finished finished() {
        return finished;
    }

    /** Place of the next line. */
    int next() {
        return next;
    }

    /** The end of the attempt. @throws NullPointerException where it has none */
    Entry.Finished end() {
        return Objects.requireNonNull(finished);
    }
}
