package startwater.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.drill.Prediction.Sureness;
import startwater.drill.Skill;

/**
 * When a skill counts as known, and when it returns. Known: chance at least 0.95, at least three observations, at least one
 * on another day than the first; what lacks only the other day is due on the next. Then it returns after 1 day, 5 days, 3
 * weeks and every 3 weeks; the exact law of spacing matters little. A return goes well when the mean of that day's answers
 * is at least a half. One that does not, and an answer that was wrong and very sure, begin the ladder anew, so that the skill
 * is due the next day.
 */
final class Mastery {
    static final double KNOWN = 0.95;
    static final int ANSWERS = 3;
    private static final int[] RETURNS_AFTER_DAYS = {1, 5, 21};
    private static final double WELL = 0.5;

    private final LocalDate first;
    private final List<Graded> today = new ArrayList<>();
    private LocalDate day;
    private int answers;
    private double known;
    /** As it stood when the day began. */
    private Ladder morning = new Ladder(false, false, 0, null);

    /** Where a skill stands between two days. */
    private record Ladder(
            boolean mastered,
            boolean was,
            int returns,
            @Nullable LocalDate due) {}

    /** @param first day of the first observation @param known chance that it is known before */
    Mastery(LocalDate first, double known) {
        this.first = first;
        this.day = first;
        this.known = known;
    }

    double known() {
        return known;
    }

    /** Takes the next observation, in the order of time. @param after chance that the skill is known after it */
    void add(LocalDate on, Graded graded, double after) {
        if (!on.equals(day)) {
            morning = evening();
            today.clear();
            day = on;
        }
        today.add(graded);
        answers++;
        known = after;
    }

    SkillState state(Skill skill) {
        Ladder now = evening();
        return new SkillState(skill, known, answers, day, now.mastered(), now.was(), now.returns(), now.due());
    }

    private Ladder evening() {
        boolean likely = known >= KNOWN && answers >= ANSWERS;
        if (!likely) {
            return new Ladder(false, morning.was(), 0, null);
        }
        if (first.equals(day)) {
            return new Ladder(false, morning.was(), 0, day.plusDays(RETURNS_AFTER_DAYS[0]));
        }
        if (!morning.mastered() || surelyWrong()) {
            return due(0);
        }
        LocalDate due = morning.due();
        return due == null || day.isBefore(due) ? morning : due(mean() >= WELL ? morning.returns() + 1 : 0);
    }

    private Ladder due(int returns) {
        int after = RETURNS_AFTER_DAYS[Math.min(returns, RETURNS_AFTER_DAYS.length - 1)];
        return new Ladder(true, true, returns, day.plusDays(after));
    }

    private boolean surelyWrong() {
        return today.stream().anyMatch(g -> g.x() < WELL && g.sureness() == Sureness.SURE);
    }

    private double mean() {
        double right = 0;
        double all = 0;
        for (Graded g : today) {
            right += g.weight() * g.x();
            all += g.weight();
        }
        return right / all;
    }
}
