package startwater.course;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import startwater.drill.Prediction.Sureness;
import startwater.drill.Skill;
import startwater.score.Verdict;
import startwater.strip.Pad;

/**
 * Which skills a mark tells of.
 *
 * <table>
 * <caption>One judged visit</caption>
 * <tr><th>mark</th><th>skill</th><th>x</th><th>weight</th></tr>
 * <tr><td>reading, where something was written</td><td>read-strip</td><td>share of readings within one block</td><td>1</td></tr>
 * <tr><td>log that contradicts the world</td><td>read-strip</td><td>0</td><td>1</td></tr>
 * <tr><td>working, where a sum was worked</td><td>that of the sum</td><td>mark / 100</td><td>1</td></tr>
 * <tr><td>working</td><td>units</td><td>0 after a slip of unit, 1 for a right sum</td><td>1 after a slip, else 1/2</td></tr>
 * <tr><td>foresight, where something was foretold</td><td>by pad: ammonia and nitrite cycle-sense, pH and alkalinity
 * alkalinity-ph, chloride water-change, nitrate routine, chlorine source-water</td><td>mark / 100</td><td>1 where the drill
 * trains it, else 1/2</td></tr>
 * <tr><td>decision, at scored visits with a credited log</td><td>each skill of the drill that is in no row above</td>
 * <td>mark / 100</td><td>1 for the skills of what the learner's or the best option pulls and of the deciding variable, else
 * 1/2</td></tr>
 * </table>
 *
 * <p>A choice that another reasonable view would accept has the full mark already, see {@link Verdict#arguable}. An answer in
 * a lesson tells of the skills of the lesson: the first with weight 1, the others with 1/2.
 */
public final class Grading {
    private static final double FULL = 100;
    private static final double PART = 0.5;

    private final Instant at;
    private final Source source;
    private final @Nullable MarkedVisit visit;
    private final List<Graded> all = new ArrayList<>();
    private final Set<Skill> told = EnumSet.noneOf(Skill.class);
    private @Nullable Sureness sureness;

    private Grading(Instant at, Source source, @Nullable MarkedVisit visit) {
        this.at = at;
        this.source = source;
        this.visit = visit;
    }

    /**
     * What a judged visit of a drill tells.
     *
     * @param drill id of the drill
     * @param skills what the drill trains, the main one first
     */
    public static List<Graded> of(Instant at, String drill, List<Skill> skills, MarkedVisit visit) {
        Grading grading = new Grading(at, Source.drill(drill), visit);
        grading.reading(visit);
        grading.working(visit);
        grading.foresight(visit, skills);
        grading.decision(visit, skills);
        return List.copyOf(grading.all);
    }

    /**
     * What an answer in a lesson tells.
     *
     * @param lesson id of the lesson
     * @param skills what the lesson teaches, the main one first
     * @param x how right, 0 to 1: the first answer counts, not one after the solution was shown
     * @param options how many options there were to pick from, 0 for a number or a reading
     * @param sureness how sure the learner was, or null where nobody asked
     */
    public static List<Graded> answer(
            Instant at, String lesson, List<Skill> skills, double x, int options, @Nullable Sureness sureness) {
        Grading grading = new Grading(at, Source.lesson(lesson), null);
        grading.sureness = sureness;
        for (Skill skill : skills) {
            grading.add(skill, x, skill == skills.get(0) ? 1 : PART, options);
        }
        return List.copyOf(grading.all);
    }

    private void reading(MarkedVisit v) {
        if (!v.credited()) {
            add(Skill.READ_STRIP, 0, 1, 0);
        } else if (v.read() > 0) {
            add(Skill.READ_STRIP, (double) v.readRight() / v.read(), 1, 0);
        }
    }

    private void working(MarkedVisit v) {
        MarkedVisit.Worked sum = v.worked();
        if (sum == null) {
            return;
        }
        add(sum.skill(), sum.mark() / FULL, 1, 0);
        if (sum.slip()) {
            add(Skill.UNITS, 0, 1, 0);
        } else if (sum.mark() >= FULL) {
            add(Skill.UNITS, 1, PART, 0);
        }
    }

    private void foresight(MarkedVisit v, List<Skill> skills) {
        MarkedVisit.Foreseen said = v.foreseen();
        if (said != null) {
            Skill skill = foresees(said.pad());
            sureness = said.sureness();
            add(skill, said.mark() / FULL, skills.contains(skill) ? 1 : PART, 0);
            sureness = null;
        }
    }

    /** The skill that foretells a pad. */
    static Skill foresees(Pad pad) {
        return switch (pad) {
            case AMMONIA, NITRITE -> Skill.CYCLE_SENSE;
            case PH, ALKALINITY -> Skill.ALKALINITY_PH;
            case CHLORIDE -> Skill.WATER_CHANGE;
            case NITRATE -> Skill.ROUTINE;
            case CHLORINE -> Skill.SOURCE_WATER;
        };
    }

    private void decision(MarkedVisit v, List<Skill> skills) {
        if (!v.scored() || !v.credited()) {
            return;
        }
        Set<Skill> about = EnumSet.of(decides(v.decisive()));
        for (Set<Lever> levers : List.of(Lever.of(v.own()), Lever.of(v.best()))) {
            for (Lever lever : levers) {
                Skill skill = lever.skill();
                if (skill != null) {
                    about.add(skill);
                }
            }
        }
        for (Skill skill : skills) {
            add(skill, v.mark() / FULL, about.contains(skill) ? 1 : PART, 0);
        }
    }

    private static Skill decides(Verdict.Variable variable) {
        return switch (variable) {
            case TOXIC_AMMONIA -> Skill.TOXIC_AMMONIA;
            case EFFECTIVE_NITRITE -> Skill.NITRITE_CHLORIDE;
            case OXYGEN -> Skill.OXYGEN_AIR;
            case TOTAL_AMMONIA -> Skill.FISHLESS_START;
            case CHLORINE -> Skill.SOURCE_WATER;
        };
    }

    /** One skill is told of once at a visit, by the mark that is nearest to it. */
    private void add(Skill skill, double x, double weight, int options) {
        if (told.add(skill)) {
            all.add(new Graded(
                    at,
                    source,
                    skill,
                    x,
                    weight,
                    options,
                    sureness,
                    visit != null && visit.scored() ? Lever.main(visit.best()) : null));
        }
    }
}
