package startwater.course;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import startwater.drill.Skill;

/**
 * How a learner stands with one skill.
 *
 * @param skill which
 * @param known chance that it is known, 0 to 1
 * @param answers observations so far
 * @param last day of the last one, or null without any
 * @param mastered whether it counts as known now: {@link Mastery}
 * @param wasMastered whether it ever did
 * @param returns how many returns in a row went well
 * @param due day on which a mastered skill returns, or one that lacks only another day; else null
 */
public record SkillState(
        Skill skill,
        double known,
        int answers,
        @Nullable LocalDate last,
        boolean mastered,
        boolean wasMastered,
        int returns,
        @Nullable LocalDate due) {
    /** What is said of a skill. */
    public enum Standing {
        /** Mastered, and not due again. */
        KNOWN,
        /** On the way. */
        LEARNING,
        /** Mastered once, and due again or lost. */
        FADING,
        /** Never seen. */
        NOT_MET
    }

    /** A skill that was never seen. */
    static SkillState notMet(Skill skill, double known) {
        return new SkillState(skill, known, 0, null, false, false, 0, null);
    }

    /** Whether it is due again. */
    public boolean dueOn(LocalDate today) {
        return due != null && !today.isBefore(due);
    }

    public boolean met() {
        return answers > 0;
    }

    public Standing standing(LocalDate today) {
        if (!met()) {
            return Standing.NOT_MET;
        }
        if (mastered) {
            return dueOn(today) ? Standing.FADING : Standing.KNOWN;
        }
        return wasMastered ? Standing.FADING : Standing.LEARNING;
    }
}
