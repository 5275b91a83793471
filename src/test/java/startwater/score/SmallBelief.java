package startwater.score;

import java.util.List;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;

/** Beliefs of a few waters: rough, and quick enough to be made in a test. */
final class SmallBelief {
    private SmallBelief() {}

    /** The first visit of a drill with these readings, undecided. */
    static VisitRecord visit(Scenario s, Written... readings) {
        VisitRecord v = DrillRun.start(s, 5, DrillRun.Pace.LEARNER).now();
        for (Written w : readings) {
            v = v.with(w);
        }
        return v;
    }

    /** After the first visit with these readings. */
    static Belief of(Scenario s, int waters, Written... readings) {
        return Belief.of(s, new DrillLog(List.of(visit(s, readings))), waters);
    }

    /** What a keeper has in the book at this visit. */
    static Notebook book(Belief belief) {
        return Notebook.of(belief.scenario(), belief.calendar(), belief.log().visits());
    }
}
