package startwater.score;

import startwater.drill.DrillLog;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;

/**
 * Fish counted when a visit was over: those that it brought in are among them.
 *
 * @param here in the system
 * @param beside in the nursery; those to be bought where there is none
 */
record Counted(int here, int beside) {
    /** Before a visit of a log. @param at place of the visit in the log */
    static Counted before(Scenario s, DrillLog log, int at) {
        if (at == 0) {
            return new Counted(
                    s.fishCount(), s.plannedFish() == null ? 0 : s.plannedFish().count());
        }
        VisitRecord v = log.visits().get(at - 1);
        int planned = s.plannedFish() == null ? 0 : s.plannedFish().count();
        double share = v.decision() == null ? 0 : v.decision().stock();
        int went = Math.min(v.seen().toCome(), (int) Math.rint(share * planned));
        return new Counted(v.seen().alive() + went, v.seen().toCome() - went);
    }
}
