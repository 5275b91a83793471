package startwater.course;

import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import startwater.drill.Skill;

/** What one learner can do. Immutable. */
public final class Learner {
    private final Map<Skill, SkillState> states;
    private final int answers;

    Learner(Map<Skill, SkillState> states, int answers) {
        this.states = states;
        this.answers = answers;
    }

    /**
     * Traces a learner through all observations; the same observations give the same learner.
     *
     * @param observations in any order; those of one instant keep theirs
     * @param zone where the learner's days begin
     */
    public static Learner of(List<Graded> observations, ZoneId zone) {
        Tracer tracer = new Tracer(zone);
        observations.stream().sorted(Comparator.comparing(Graded::at)).forEach(tracer::add);
        return tracer.learner();
    }

    public SkillState state(Skill skill) {
        return Objects.requireNonNull(states.get(skill));
    }

    /** Chance that a skill is known, 0 to 1. */
    public double known(Skill skill) {
        return state(skill).known();
    }

    /** Observations in all. */
    public int answers() {
        return answers;
    }

    /** All skills, in their order. */
    public List<SkillState> states() {
        return List.copyOf(states.values());
    }
}
