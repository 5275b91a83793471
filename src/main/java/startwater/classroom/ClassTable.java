package startwater.classroom;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import startwater.course.Graded;
import startwater.course.Grading;
import startwater.course.Learner;
import startwater.drill.Skill;
import startwater.record.CourseHistory;
import startwater.record.Entry;

/**
 * Learners by skills: how likely each skill is known, from what came back of the class alone.
 *
 * @param skills that anything came back on, in their order
 * @param rows by name of the learner
 */
public record ClassTable(List<Skill> skills, List<Row> rows) {
    public ClassTable {
        skills = List.copyOf(skills);
        rows = List.copyOf(rows);
    }

    /**
     * One learner.
     *
     * @param learner pseudonym
     * @param attempts how many, and how many of them were played to the end
     * @param finished those
     * @param mark mean mark of the finished attempts that have one, 0..100, or NaN
     * @param cells one a skill of the table
     */
    public record Row(String learner, int attempts, int finished, double mark, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** @param known chance that the skill is known, 0..1, NaN where nothing was seen @param seen observations behind it */
    public record Cell(double known, int seen) {}

    /** The table. @param zone where the learners' days begin */
    public static ClassTable of(List<Attempt> attempts, ZoneId zone) {
        Map<String, List<Attempt>> byLearner = new TreeMap<>();
        attempts.forEach(a ->
                byLearner.computeIfAbsent(a.learner(), l -> new ArrayList<>()).add(a));
        Map<String, List<Graded>> graded = new TreeMap<>();
        Set<Skill> skills = EnumSet.noneOf(Skill.class);
        byLearner.forEach((learner, own) -> {
            List<Graded> all = own.stream().flatMap(a -> graded(a).stream()).toList();
            all.forEach(g -> skills.add(g.skill()));
            graded.put(learner, all);
        });
        List<Skill> ordered = List.copyOf(skills);
        List<Row> rows = new ArrayList<>();
        byLearner.forEach(
                (learner, own) -> rows.add(row(learner, own, graded.getOrDefault(learner, List.of()), ordered, zone)));
        return new ClassTable(ordered, rows);
    }

    private static Row row(String learner, List<Attempt> own, List<Graded> graded, List<Skill> skills, ZoneId zone) {
        Learner traced = Learner.of(graded, zone);
        List<Cell> cells = skills.stream()
                .map(skill -> {
                    int seen = (int)
                            graded.stream().filter(g -> g.skill() == skill).count();
                    return new Cell(seen == 0 ? Double.NaN : traced.known(skill), seen);
                })
                .toList();
        double mark = own.stream()
                .filter(Attempt::whole)
                .mapToDouble(Attempt::mark)
                .filter(m -> !Double.isNaN(m))
                .average()
                .orElse(Double.NaN);
        return new Row(
                learner, own.size(), (int) own.stream().filter(Attempt::whole).count(), mark, cells);
    }

    /** What the marks of an attempt tell of skills. */
    public static List<Graded> graded(Attempt attempt) {
        List<Skill> skills = attempt.scenario().skills().stream().map(Skill::of).toList();
        List<Graded> all = new ArrayList<>();
        for (Step step : attempt.steps()) {
            Entry.Marks marks = step.marks();
            if (marks != null) {
                all.addAll(Grading.of(
                        step.at(), attempt.scenario().id(), skills, CourseHistory.marked(marks, marks.came())));
            }
        }
        return all;
    }
}
