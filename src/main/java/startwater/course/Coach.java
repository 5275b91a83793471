package startwater.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import startwater.drill.Habit;
import startwater.drill.Skill;
import startwater.quantity.Stream;

/**
 * What comes next. The value of a drill or lesson, over its skills k that are known with the chances L:
 *
 * <pre>
 *   1.0 mean of (1 - L_k), where the task is neither too hard nor too easy: success within 0.6 to 0.9
 * + 0.8 where one of its k is due again
 * </pre>
 *
 * The mean over the skills and not the weakest alone: learners simulated on the shipped drills then need about a seventh fewer. To
 * this + 0.4 where it exposes a habit seen in the last three plays, - 0.5 where its main skill is that of the play
 * before, - 0.3 where its best play is that of one of the two drills before. Ties fall by a seeded stream. A skill is met in
 * its lesson first, as a worked example, unless it is likely known (over 0.6) already; a drill or lesson is open when what it
 * needs is likely known (over 0.7); the same best play never comes a third time in a row while anything else is open. The
 * learner may pick anything: all are ranked.
 */
public final class Coach {
    static final double SKIP_AHEAD = 0.6;
    static final double NEEDED = 0.7;
    static final double GAIN = 1.0;
    static final double DUE = 0.8;
    static final double HABIT = 0.4;
    static final double SAME_SKILL = 0.5;
    static final double SAME_PLAY = 0.3;
    private static final double HARD = 0.6;
    private static final double EASY = 0.9;
    private static final int HABIT_PLAYS = 3;
    private static final int IN_A_ROW = 2;
    private static final long TIES = 0x636f_6163_68L;

    private final Catalogue catalogue;
    private final Learner learner;
    private final List<Play> plays;
    private final LocalDate today;
    private final long seed;
    private final @Nullable Skill skillBefore;
    private final List<Lever> playsBefore;
    private final Map<Source, Integer> times = new HashMap<>();
    private final Map<Source, Lever> found = new HashMap<>();
    private final @Nullable Item firstEver;
    private final Set<Habit> habits = EnumSet.noneOf(Habit.class);

    private Coach(Catalogue catalogue, Learner learner, List<Play> plays, LocalDate today, long seed) {
        this.catalogue = catalogue;
        this.learner = learner;
        this.plays = plays;
        this.today = today;
        this.seed = seed;
        this.skillBefore = plays.isEmpty()
                ? null
                : catalogue
                        .find(plays.get(plays.size() - 1).source())
                        .map(Item::main)
                        .orElse(null);
        List<Lever> levers = plays.stream().filter(Play::drill).map(Play::best).toList();
        this.playsBefore = levers.subList(Math.max(0, levers.size() - IN_A_ROW), levers.size());
        for (Play play : plays) {
            times.merge(play.source(), 1, Integer::sum);
            found.put(play.source(), play.best());
        }
        // Whoever has done nothing starts with the first drill: its first visit is a worked example.
        boolean fresh = plays.isEmpty() && learner.answers() == 0;
        this.firstEver = fresh ? catalogue.drills().stream().findFirst().orElse(null) : null;
        plays.subList(Math.max(0, plays.size() - HABIT_PLAYS), plays.size()).forEach(p -> habits.addAll(p.habits()));
    }

    /**
     * Everything that can be done, best first.
     *
     * @param plays what was done so far, in order
     * @param seed for ties; the same seed after the same plays gives the same order
     */
    public static List<Suggestion> rank(
            Catalogue catalogue, Learner learner, List<Play> plays, LocalDate today, long seed) {
        return new Coach(catalogue, learner, plays, today, seed).all();
    }

    private record Ranked(Suggestion suggestion, double tie) {}

    private List<Suggestion> all() {
        List<Ranked> ranked = new ArrayList<>();
        Stream ties = Stream.of(seed, TIES, plays.size());
        for (Item item : catalogue.items()) {
            ranked.add(new Ranked(value(item), ties.uniform()));
        }
        ranked.sort(Comparator.comparing((Ranked r) -> !r.suggestion().item().equals(firstEver))
                .thenComparing(r -> !r.suggestion().open())
                .thenComparing(r -> -Math.rint(1e9 * r.suggestion().value()))
                .thenComparing(Ranked::tie));
        return ranked.stream().map(Ranked::suggestion).toList();
    }

    private Suggestion value(Item item) {
        boolean reach = item.drill() && withinReach(item);
        double gains = 0;
        boolean due = false;
        double most = -1;
        Skill aim = item.main();
        for (Skill skill : item.skills()) {
            boolean fits = item.drill() ? reach : taught(item, skill);
            double gain = fits ? GAIN * (1 - learner.known(skill)) : 0;
            boolean back = dueAt(item, skill);
            gains += gain;
            due |= back;
            double worth = gain + (back ? DUE : 0);
            if (worth > most) {
                most = worth;
                aim = skill;
            }
        }
        Set<Habit> shown = EnumSet.noneOf(Habit.class);
        shown.addAll(item.exposes());
        shown.retainAll(habits);
        Lever best = best(item);
        double value = gains / item.skills().size() + (due ? DUE : 0) + (shown.isEmpty() ? 0 : HABIT);
        value -= item.main() == skillBefore ? SAME_SKILL : 0;
        value -= item.drill() && playsBefore.contains(best) ? SAME_PLAY : 0;
        return new Suggestion(item, aim, value, open(item, best), reason(item, aim, shown));
    }

    private boolean withinReach(Item drill) {
        double sum = 0;
        for (Skill skill : drill.skills()) {
            sum += Bkt.USUAL.success(learner.known(skill));
        }
        double success = sum / drill.skills().size();
        return success >= HARD && success <= EASY;
    }

    /** Lessons are for what is not yet likely known, and for what no drill trains; each skill has one lesson at a time. */
    private boolean taught(Item lesson, Skill skill) {
        boolean wanted = learner.known(skill) <= SKIP_AHEAD || !catalogue.drilled(skill);
        return wanted && lesson.equals(lessonNow(skill));
    }

    /** The first lesson on a skill that was read least often. */
    private @Nullable Item lessonNow(Skill skill) {
        return catalogue.lessonsOn(skill).stream()
                .min(Comparator.comparingInt(l -> times.getOrDefault(l.source(), 0)))
                .orElse(null);
    }

    private boolean dueAt(Item item, Skill skill) {
        boolean serves = item.drill() || (!catalogue.drilled(skill) && item.equals(lessonNow(skill)));
        return serves && learner.state(skill).dueOn(today);
    }

    private boolean open(Item item, Lever best) {
        boolean ready = item.needs().stream().allMatch(k -> learner.known(k) > NEEDED);
        if (!item.drill()) {
            return ready;
        }
        boolean met = learner.state(item.main()).met() || learner.known(item.main()) > SKIP_AHEAD;
        boolean third = playsBefore.size() == IN_A_ROW && playsBefore.stream().allMatch(best::equals);
        return ready && met && !third;
    }

    /** What the best choices of a drill pull: as the learner last found, else as its first rule says. */
    private Lever best(Item item) {
        return found.getOrDefault(item.source(), item.best());
    }

    private Reason reason(Item item, Skill aim, Set<Habit> shown) {
        SkillState state = learner.state(aim);
        if (item.equals(firstEver)) {
            return Reason.start(aim);
        }
        if (dueAt(item, aim)) {
            return skillBefore == null || skillBefore == aim || learner.known(skillBefore) <= NEEDED
                    ? Reason.of("coach.due", state)
                    : Reason.between("coach.goodThenDue", skillBefore, state);
        }
        if (!shown.isEmpty()) {
            return Reason.habit(shown.iterator().next(), state);
        }
        if (!item.drill()) {
            return Reason.of(state.met() ? "coach.lessonAgain" : "coach.lesson", state);
        }
        return Reason.of(state.met() ? "coach.train" : "coach.skipAhead", state);
    }
}
