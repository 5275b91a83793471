package startwater.course;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.Map;
import startwater.drill.Skill;

/** Follows one learner answer by answer. Not thread safe. */
public final class Tracer {
    private final ZoneId zone;
    private final Bkt tracing;
    private final Map<Skill, Mastery> skills = new EnumMap<>(Skill.class);
    private double right;
    private double weights;
    private int answers;

    /** @param zone where the learner's days begin */
    public Tracer(ZoneId zone) {
        this(zone, Bkt.USUAL);
    }

    Tracer(ZoneId zone, Bkt tracing) {
        this.zone = zone;
        this.tracing = tracing;
    }

    /** Takes the next observation, in the order of time. */
    public void add(Graded g) {
        LocalDate day = LocalDate.ofInstant(g.at(), zone);
        Mastery skill = skills.computeIfAbsent(g.skill(), k -> new Mastery(day, tracing.prior(right, weights)));
        skill.add(day, g, tracing.among(g.options()).after(skill.known(), g.x(), g.weight()));
        right += g.weight() * g.x();
        weights += g.weight();
        answers++;
    }

    /** The learner as of now. */
    public Learner learner() {
        double untouched = tracing.prior(right, weights);
        Map<Skill, SkillState> states = new EnumMap<>(Skill.class);
        for (Skill skill : Skill.values()) {
            Mastery met = skills.get(skill);
            states.put(skill, met == null ? SkillState.notMet(skill, untouched) : met.state(skill));
        }
        return new Learner(states, answers);
    }
}
