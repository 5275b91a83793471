package startwater.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import startwater.drill.Habit;
import startwater.drill.Scenario;
import startwater.score.DrillTrial.Reason;
import startwater.score.DrillTrial.Row;

/** When a drill is fit, and when a course of drills is. */
public final class TrialFit {
    /** The standing rules must pass, and stand this far above each habit that is exposed. */
    static final double PASS = 70;

    /** Share of its plays in which careful keeping must pass: no dangerous decision, and the mark. */
    private static final double PASSED_LEAST = 0.9;

    private static final double MARGIN = 30;
    /** No option may be best at the visit with most at stake in more tanks than this. */
    private static final double PIVOT_MOST = 0.6;
    /** No act may be best at more of all steps than this; no more steps may be arguable than that. */
    private static final double ACT_MOST = 1.0 / 3;

    private static final double ARGUABLE_MOST = 0.2;
    private static final int DRILLS_PER_HABIT = 2;

    private TrialFit() {}

    /** What keeps a drill from being fit; empty when nothing does. */
    static List<Reason> faults(Scenario s, List<Row> rows, DrillTrial.@Nullable Pivot pivot) {
        List<Reason> faults = new ArrayList<>();
        Row careful = row(rows, Policies.CAREFUL.id());
        Row optimal = row(rows, Optimal.ID);
        if (Double.isNaN(careful.mark())) {
            faults.add(Reason.of("trial.why.unscored"));
        } else if (careful.mark() < PASS) {
            faults.add(Reason.of("trial.why.careful", careful.mark(), PASS));
        } else if (careful.passed() < PASSED_LEAST) {
            faults.add(Reason.of("trial.why.passed", 100 * careful.passed(), 100 * PASSED_LEAST));
        }
        if (optimal.mark() + 2 * StrictMath.hypot(optimal.error(), careful.error()) < careful.mark()) {
            faults.add(Reason.of("trial.why.optimal", optimal.mark(), careful.mark()));
        }
        Row nothing = row(rows, Habit.DO_NOTHING.id());
        if (nothing.passed() > 0) {
            faults.add(Reason.of("trial.why.empty", 100 * nothing.passed()));
        }
        for (String habit : s.exposes()) {
            Row row = row(rows, habit);
            if (!marksTell(careful, row)) {
                faults.add(Reason.of("trial.why.habit", habit, row.mark(), careful.mark(), MARGIN));
            }
            if (!deathsTell(s, habit, careful, row)) {
                faults.add(Reason.of(
                        "trial.why.deaths",
                        habit,
                        100 * row.outcome().deathsFraction(),
                        100 * careful.outcome().deathsFraction()));
            }
        }
        if (pivot != null && pivot.share() > PIVOT_MOST) {
            faults.add(
                    Reason.of("trial.why.pivot", pivot.visit(), pivot.best(), 100 * pivot.share(), 100 * PIVOT_MOST));
        }
        return faults;
    }

    /** Habits that a drill names and that really do badly in it. */
    static List<String> exposed(Scenario s, List<Row> rows) {
        Row careful = row(rows, Policies.CAREFUL.id());
        return s.exposes().stream()
                .filter(habit ->
                        marksTell(careful, row(rows, habit)) && deathsTell(s, habit, careful, row(rows, habit)))
                .toList();
    }

    private static boolean marksTell(Row careful, Row habit) {
        return careful.mark() - habit.mark() >= MARGIN;
    }

    /** A habit that never gets fish in cannot kill them: there the mark must tell alone. */
    private static boolean deathsTell(Scenario s, String id, Row careful, Row habit) {
        boolean fishIn = s.fish() != null || id.equals(Habit.STOCKS_AT_ONCE.id());
        return !fishIn || habit.outcome().deathsFraction() > careful.outcome().deathsFraction();
    }

    private static Row row(List<Row> rows, String policy) {
        return rows.stream()
                .filter(r -> r.policy().equals(policy))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("Trial: no row for " + policy));
    }

    /** What keeps a whole course from being fit, beyond its drills; empty when nothing does. */
    public static List<Reason> ofCourse(List<DrillTrial> drills) {
        List<Reason> faults = new ArrayList<>();
        for (Habit habit : Habit.values()) {
            long count = drills.stream()
                    .filter(d -> d.exposed().contains(habit.id()))
                    .count();
            if (count < DRILLS_PER_HABIT) {
                faults.add(Reason.of("trial.course.habit", habit.id(), (int) count, DRILLS_PER_HABIT));
            }
        }
        Totals totals = totals(drills);
        if (totals.commonest() != null && totals.commonestShare() > ACT_MOST) {
            faults.add(Reason.of("trial.course.act", totals.commonest(), 100 * totals.commonestShare()));
        }
        if (totals.arguableShare() > ARGUABLE_MOST) {
            faults.add(Reason.of("trial.course.arguable", 100 * totals.arguableShare(), 100 * ARGUABLE_MOST));
        }
        return faults;
    }

    /**
     * What drills come to together, in the decisions of the standing rules.
     *
     * @param steps scored decisions
     * @param arguable those that another reasonable view would accept as well
     * @param commonest the act that is best most often, or null where nothing was scored
     * @param times how often it is
     */
    public record Totals(int steps, int arguable, @Nullable Act commonest, int times) {
        /** 0..1 */
        public double arguableShare() {
            return steps == 0 ? 0 : (double) arguable / steps;
        }

        /** 0..1 */
        public double commonestShare() {
            return steps == 0 ? 0 : (double) times / steps;
        }
    }

    /** Adds up what drills came to. */
    public static Totals totals(List<DrillTrial> drills) {
        Map<String, Integer> best = new TreeMap<>();
        drills.forEach(d -> d.best().forEach((act, n) -> best.merge(act.code(), n, Integer::sum)));
        Map.Entry<String, Integer> most = best.entrySet().stream()
                .max(Map.Entry.<String, Integer>comparingByValue()
                        .thenComparing(Map.Entry::getKey, Comparator.reverseOrder()))
                .orElse(null);
        return new Totals(
                drills.stream().mapToInt(DrillTrial::steps).sum(),
                drills.stream().mapToInt(DrillTrial::arguable).sum(),
                most == null ? null : Act.read(most.getKey()),
                most == null ? 0 : most.getValue());
    }
}
