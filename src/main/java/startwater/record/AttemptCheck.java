package startwater.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import startwater.content.ContentHash;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.record.Difference.What;
import startwater.score.Care;
import startwater.score.Case;
import startwater.score.ReadingMark;
import startwater.score.Verdict;

/**
 * The lines of one attempt played again, in two passes: the hidden tank and the log at once, which is cheap, and the marks
 * when they are asked for. Whatever the lines say, they can do no more than fail to come out.
 */
public final class AttemptCheck {
    private final Entry.Begun begun;
    private final Rerun rerun;
    private final @Nullable Difference difference;

    private AttemptCheck(Entry.Begun begun, Rerun rerun, @Nullable Difference difference) {
        this.begun = begun;
        this.rerun = rerun;
        this.difference = difference;
    }

    /**
     * Plays lines again, as far as they come out.
     *
     * @param lines of the attempt, its first line included, in the order of the file
     */
    public static AttemptCheck of(Scenario scenario, Entry.Begun begun, List<Entry.OfAttempt> lines) {
        Rerun rerun = new Rerun(scenario, begun);
        try {
            lines.stream().skip(1).forEach(rerun::take);
            rerun.checkEnd();
            return new AttemptCheck(begun, rerun, null);
        } catch (Difference.Found found) {
            return new AttemptCheck(begun, rerun, found.difference());
        } catch (IllegalArgumentException | IllegalStateException | IndexOutOfBoundsException impossible) {
            return new AttemptCheck(begun, rerun, new Difference(What.LINES, 0, "?", "?"));
        }
    }

    public Entry.Begun begun() {
        return begun;
    }

    /** What differs first in tank and log, or empty where all comes out. */
    public Optional<Difference> difference() {
        return Optional.ofNullable(difference);
    }

    /** The run as far as it came. */
    public DrillRun run() {
        return rerun.run();
    }

    /** The marks in the file, by visit. */
    public Map<Integer, Entry.Marks> marks() {
        return rerun.marks();
    }

    /** The last line of a finished attempt. */
    public Optional<Entry.Finished> finished() {
        return Optional.ofNullable(rerun.finished());
    }

    /** The visits at which the learner decided, in order. */
    public List<VisitRecord> decided() {
        return Marking.decided(run());
    }

    /** The case of one of these visits. */
    public Case at(VisitRecord visit) {
        DrillLog past = run().past();
        return new Case(run().scenario(), past.upTo(past.visits().indexOf(visit)));
    }

    /** A name for the case of a visit and the care it is judged with: two with the same name get the same verdict. */
    public String key(VisitRecord visit) {
        Case c = at(visit);
        Care care = begun().care();
        return ContentHash.ofPlay(c.scenario()) + "-" + ContentHash.of(c.log()) + (care == Care.LIVE ? "" : "-" + care);
    }

    /** The marks of a visit as a file keeps them. */
    public Entry.Marks marks(VisitRecord visit, Verdict verdict) {
        return Marking.of(run(), visit, verdict, rerun.workings().get(visit.visit()));
    }

    /**
     * The marks of a visit, from marks of the same case by anybody's run: readings, sums and what came of the prediction are
     * this run's own.
     */
    public Entry.Marks marks(VisitRecord visit, Entry.Marks sameCase) {
        ReadingMark reading = ReadingMark.of(run(), visit);
        return new Entry.Marks(
                reading.total(),
                reading.right(),
                rerun.workings().get(visit.visit()),
                sameCase.decision(),
                sameCase.word(),
                sameCase.regret(),
                sameCase.scored(),
                sameCase.arguable(),
                sameCase.credited(),
                sameCase.decisive(),
                sameCase.own(),
                sameCase.best(),
                sameCase.foresight(),
                Marking.came(run(), visit));
    }

    /**
     * Marks of this file that do not come out.
     *
     * @param truth gives the right marks of a visit and its case
     */
    public List<Difference> wrongMarks(BiFunction<VisitRecord, Case, Entry.Marks> truth) {
        List<Difference> wrong = new ArrayList<>();
        for (VisitRecord visit : decided()) {
            Entry.Marks kept = marks().get(visit.visit());
            if (kept != null) {
                try {
                    MarkCheck.same(visit.visit(), kept, truth.apply(visit, at(visit)));
                } catch (Difference.Found found) {
                    wrong.add(found.difference());
                }
            }
        }
        return wrong;
    }
}
