package startwater.app.model;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import startwater.course.Calibration;
import startwater.course.Catalogue;
import startwater.course.Learner;
import startwater.course.Past;
import startwater.course.SkillState;
import startwater.course.SkillState.Standing;
import startwater.drill.Skill;

/** What a learner can do, how well they know it, how it went, and what comes next. Immutable. */
public final class ProgressModel {
    private final Map<Standing, List<SkillState>> skills = new EnumMap<>(Standing.class);
    private final Calibration calibration;
    private final Past past;
    private final LocalDate today;
    private final ZoneId zone;
    private final Optional<HomeNext> next;

    private ProgressModel(Catalogue catalogue, Past past, LocalDate today, ZoneId zone, long seed) {
        this.past = past;
        this.today = today;
        this.zone = zone;
        this.calibration = Calibration.of(past.said());
        Learner learner = Learner.of(past.graded(), zone);
        Set<Skill> taught = catalogue.skills();
        for (Standing standing : Standing.values()) {
            skills.put(
                    standing,
                    learner.states().stream()
                            .filter(s -> s.met() || taught.contains(s.skill()))
                            .filter(s -> s.standing(today) == standing)
                            .toList());
        }
        this.next = HomeNext.of(catalogue, learner, past, today, seed);
    }

    /**
     * Works it all out.
     *
     * @param catalogue all drills and lessons
     * @param today the learner's day
     * @param zone where the learner's days begin
     * @param seed the learner's own, for ties of the coach
     */
    public static ProgressModel of(Catalogue catalogue, Past past, LocalDate today, ZoneId zone, long seed) {
        return new ProgressModel(catalogue, past, today, zone, seed);
    }

    /** Whether there is nothing to show yet. */
    public boolean empty() {
        return past.empty();
    }

    /** The skills of one standing, in the order of the course. */
    public List<SkillState> skills(Standing standing) {
        return skills.getOrDefault(standing, List.of());
    }

    public Calibration calibration() {
        return calibration;
    }

    /** Marks of drills, oldest first. */
    public List<Past.Mark> marks() {
        return past.marks();
    }

    /** If-then sentences, the latest first. */
    public List<Past.Resolved> resolved() {
        return past.resolved();
    }

    public Optional<HomeNext> next() {
        return next;
    }

    /** Days since a skill was last seen; -1 where it never was. */
    public long daysSince(SkillState skill) {
        LocalDate last = skill.last();
        return last == null ? -1 : Math.max(0, ChronoUnit.DAYS.between(last, today));
    }

    /** Days until a skill returns, 0 where it is due, -1 where it is on no ladder. */
    public long daysUntil(SkillState skill) {
        LocalDate due = skill.due();
        return due == null ? -1 : Math.max(0, ChronoUnit.DAYS.between(today, due));
    }

    /** Days since a mark, for the axis of time. */
    public long daysSince(Past.Mark mark) {
        return Math.max(0, ChronoUnit.DAYS.between(LocalDate.ofInstant(mark.at(), zone), today));
    }
}
