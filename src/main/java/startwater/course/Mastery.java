package startwater.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.drill.Prediction.Sureness;
import startwater.drill.Skill;

/**
 * When a skill counts as known, and when it returns. Known: chance at least 0.95, at least three observations, at least one
 * on another day than the first. Then it returns after 1 day, 5 days, 3 weeks and every 3 weeks; the exact law of spacing
 * matters little. A return goes well when the mean of that day's answers is at least a half. One that does not, and an
 * answer that was wrong and very sure, begin the ladder anew, so that the skill is due the next day.
 */
final class Mastery {
    static final double KNOWN = 0.95;
    static final int ANSWERS = 3;
    private static final int[] RETURNS_AFTER_DAYS = {1, 5, 21};
    private static final double WELL = 0.5;

    private final Skill skill;
    private final List<Step> steps = new ArrayList<>();
    private boolean was;
    private int returns;
    private @Nullable LocalDate due;

    /** One observation on its day, and the chance of knowing after it. */
    private record Step(LocalDate day, Graded graded, double known) {}

    Mastery(Skill skill) {
        this.skill = skill;
    }

    /** Takes the next observation, in the order of time. */
    void add(LocalDate day, Graded graded, double known) {
        steps.add(new Step(day, graded, known));
    }

    boolean none() {
        return steps.isEmpty();
    }

    double known() {
        return steps.get(steps.size() - 1).known();
    }

    /** How the skill stands after all of them. */
    SkillState state() {
        was = false;
        returns = 0;
        due = null;
        for (int from = 0; from < steps.size(); ) {
            int to = from;
            while (to < steps.size()
                    && steps.get(to).day().equals(steps.get(from).day())) {
                to++;
            }
            closeDay(steps.subList(from, to), to);
            from = to;
        }
        Step last = steps.get(steps.size() - 1);
        return new SkillState(skill, last.known(), steps.size(), last.day(), due != null, was, returns, due);
    }

    /** @param answers observations up to the end of this day */
    private void closeDay(List<Step> today, int answers) {
        Step last = today.get(today.size() - 1);
        boolean spaced = !steps.get(0).day().equals(last.day());
        if (last.known() < KNOWN || answers < ANSWERS || !spaced) {
            due = null;
            returns = 0;
            return;
        }
        boolean surelyWrong =
                today.stream().map(Step::graded).anyMatch(g -> g.x() < WELL && g.sureness() == Sureness.SURE);
        if (due == null) {
            returns = 0;
            due = last.day().plusDays(RETURNS_AFTER_DAYS[0]);
        } else if (surelyWrong) {
            again(last.day(), 0);
        } else if (!last.day().isBefore(due)) {
            again(last.day(), mean(today) >= WELL ? returns + 1 : 0);
        }
        was = true;
    }

    private void again(LocalDate day, int well) {
        returns = well;
        due = day.plusDays(RETURNS_AFTER_DAYS[Math.min(well, RETURNS_AFTER_DAYS.length - 1)]);
    }

    private static double mean(List<Step> steps) {
        double right = 0;
        double all = 0;
        for (Step s : steps) {
            right += s.graded().weight() * s.graded().x();
            all += s.graded().weight();
        }
        return right / all;
    }
}
