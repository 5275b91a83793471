package startwater.classroom.table;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import startwater.classroom.Attempt;
import startwater.classroom.Step;
import startwater.record.Entry;
import startwater.score.Act;

/** What course systems load: a gradebook with a column a drill, and a file with a row a decision. */
public final class Gradebook {
    private static final int MARK_DECIMALS = 1;
    private static final int REGRET_DECIMALS = 4;
    private static final int FULL = 100;

    private Gradebook() {}

    /**
     * One row a learner, one column a drill with the mark 0..100 of the first finished attempt, empty where there is none.
     * The second row says what is possible.
     *
     * @param cells commas or semicolons
     * @param name gives the name of a pseudonym, from a roster; empty where it has none
     */
    public static String marks(List<Attempt> attempts, Supplier<Csv> cells, UnaryOperator<String> name) {
        Set<String> drills = new LinkedHashSet<>();
        attempts.stream()
                .sorted(Comparator.comparingInt(a -> a.scenario().number()))
                .forEach(a -> drills.add(a.scenario().id()));
        Csv csv = cells.get().words("student_id").words("name");
        drills.forEach(csv::words);
        csv.endRow().words("points possible").words("");
        drills.forEach(d -> csv.number(FULL));
        csv.endRow();
        Set<String> learners = new TreeSet<>();
        attempts.forEach(a -> learners.add(a.learner()));
        for (String learner : learners) {
            csv.words(learner).words(name.apply(learner));
            drills.forEach(drill -> csv.number(mark(attempts, learner, drill), MARK_DECIMALS));
            csv.endRow();
        }
        return csv.text();
    }

    private static double mark(List<Attempt> attempts, String learner, String drill) {
        return attempts.stream()
                .filter(a -> a.whole()
                        && a.learner().equals(learner)
                        && a.scenario().id().equals(drill))
                .min(Comparator.comparing(Attempt::begun))
                .map(Attempt::mark)
                .orElse(Double.NaN);
    }

    /** One row a decision. Times are UTC, ISO 8601; flags are 1 and 0. */
    public static String decisions(List<Attempt> attempts, Supplier<Csv> cells) {
        Csv csv = cells.get();
        for (String column : List.of(
                "student_id",
                "attempt",
                "drill",
                "variant",
                "mode",
                "decision",
                "visit",
                "at",
                "seconds",
                "act",
                "mark",
                "word",
                "scored",
                "arguable",
                "regret_percent",
                "readings",
                "readings_right",
                "foresight",
                "best_act")) {
            csv.words(column);
        }
        csv.endRow();
        for (Attempt a : attempts) {
            for (Step s : a.steps()) {
                decision(csv, a, s);
            }
        }
        return csv.text();
    }

    private static void decision(Csv csv, Attempt a, Step s) {
        csv.words(a.learner()).words(a.id().toString()).words(a.scenario().id());
        csv.number(a.variant()).words(a.exam() ? "exam" : "practice");
        csv.number(s.number()).number(s.visit());
        csv.words(DateTimeFormatter.ISO_INSTANT.format(s.at().atOffset(ZoneOffset.UTC)));
        csv.number(s.took().toMillis() / 1000.0, MARK_DECIMALS);
        csv.words(Act.of(s.decision()).code());
        if (s.marks() != null) {
            marks(csv, Objects.requireNonNull(s.marks()));
        } else {
            for (int i = 0; i < 9; i++) {
                csv.words("");
            }
        }
        csv.endRow();
    }

    private static void marks(Csv csv, Entry.Marks m) {
        csv.number(m.decision(), MARK_DECIMALS);
        csv.words(m.word().name().toLowerCase(java.util.Locale.ROOT));
        csv.number(m.scored() ? 1 : 0).number(m.arguable() ? 1 : 0);
        csv.number(m.regret(), REGRET_DECIMALS).number(m.read()).number(m.readRight());
        csv.number(m.foresight() == null ? Double.NaN : m.foresight().mark(), MARK_DECIMALS);
        csv.words(Act.of(m.best()).code());
    }
}
