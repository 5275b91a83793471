package startwater.record;

import java.util.ArrayList;
import java.util.List;
import startwater.drill.DippedStrip;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.score.Review;
import startwater.score.Verdict;
import startwater.score.WorkingMark;

/** A learner who does what stands in a file: each line is done on the run and told, and so written by the program itself. */
final class Again {
    private final Resumed at;
    private final List<Verdict> verdicts;

    Again(Resumed at) {
        this.at = at;
        this.verdicts = new ArrayList<>(at.verdicts());
    }

    void act(Entry.OfAttempt e) {
        if (e instanceof Entry.Dipped d) {
            DippedStrip strip = d.chloride() ? at.run().dipChloride() : at.run().dip(d.dilution());
            at.steps().dipped(strip, d.chloride());
        } else if (e instanceof Entry.Wrote w) {
            Written written = new Written(w.pad(), w.stop(), w.dilution(), w.strip());
            at.run().write(written);
            at.steps().wrote(written);
        } else if (e instanceof Entry.Erased x) {
            Written gone = at.run().now().written().stream()
                    .filter(w -> w.pad() == x.pad() && w.strip() == x.strip())
                    .findFirst()
                    .orElseThrow();
            at.run().erase(gone);
            at.steps().erased(gone);
        } else if (e instanceof Entry.Worked w) {
            at.steps().worked(w.skill(), WorkingMark.of(w.given(), w.exact()));
        } else if (e instanceof Entry.Decided d) {
            at.run().decide(d.decision(), d.prediction());
            at.steps().decided(d.decision(), d.prediction());
        } else if (e instanceof Entry.Marked) {
            mark();
        } else if (e instanceof Entry.Finished) {
            at.steps().finished(Review.of(at.run(), verdicts));
        }
    }

    private void mark() {
        List<VisitRecord> decided = Marking.decided(at.run());
        VisitRecord last = decided.get(decided.size() - 1);
        if (verdicts.size() < decided.size()) {
            verdicts.add(MarkCheck.judged(at.run(), last, at.steps().care()));
        }
        at.steps().marked(last, verdicts.get(verdicts.size() - 1));
    }
}
