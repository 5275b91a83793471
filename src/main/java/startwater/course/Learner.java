package startwater.course;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import startwater.drill.Skill;

/** What one learner can do, traced through all observations. Immutable; the same observations give the same learner. */
public final class Learner {
    private final Map<Skill, SkillState> states = new EnumMap<>(Skill.class);
    private final int answers;

    /**
     * Traces a learner.
     *
     * @param observations in any order; those of one instant keep theirs
     * @param zone where the learner's days begin
     */
    public Learner(List<Graded> observations, ZoneId zone) {
        this(observations, zone, Bkt.USUAL);
    }

    Learner(List<Graded> observations, ZoneId zone, Bkt tracing) {
        Map<Skill, Mastery> traces = new EnumMap<>(Skill.class);
        double right = 0;
        double all = 0;
        List<Graded> sorted = observations.stream()
                .sorted(Comparator.comparing(Graded::at, Comparator.<Instant>naturalOrder()))
                .toList();
        for (Graded g : sorted) {
            Mastery trace = traces.computeIfAbsent(g.skill(), Mastery::new);
            double before = trace.none() ? tracing.prior(right, all) : trace.known();
            double known = tracing.among(g.options()).after(before, g.x(), g.weight());
            trace.add(LocalDate.ofInstant(g.at(), zone), g, known);
            right += g.weight() * g.x();
            all += g.weight();
        }
        double untouched = tracing.prior(right, all);
        for (Skill skill : Skill.values()) {
            Mastery trace = traces.get(skill);
            states.put(
                    skill,
                    trace == null ? new SkillState(skill, untouched, 0, null, false, false, 0, null) : trace.state());
        }
        this.answers = sorted.size();
    }

    public SkillState state(Skill skill) {
        return java.util.Objects.requireNonNull(states.get(skill));
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
