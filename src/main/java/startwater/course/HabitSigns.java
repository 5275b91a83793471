package startwater.course;

import java.util.EnumSet;
import java.util.Set;
import startwater.drill.Decision;
import startwater.drill.Decision.FilterCare;
import startwater.drill.Decision.FollowUp;
import startwater.drill.Habit;

/**
 * Which habits a decision that went wrong looks like, by what it pulls against the best option. A sign is no proof: it only
 * lets a drill that exposes the habit come a little sooner.
 */
final class HabitSigns {
    private static final double MORE_FEED = 0.25;
    private static final double HALF = 0.4;
    private static final double LESS_CHANGE = 0.2;
    private static final double ALL = 0.9;
    private static final double SOME = 0.5;

    private HabitSigns() {}

    /** @param tested whether anything was written down at the visit */
    static Set<Habit> of(Decision own, Decision best, boolean tested) {
        Set<Habit> habits = EnumSet.noneOf(Habit.class);
        boolean idle = own.jobs() == 0;
        boolean due = best.jobs() > 0;
        boolean full = own.feed() >= 1;
        boolean buffers = own.bicarbonateG() > 0 || own.sodaAshG() > 0;
        boolean buffersBest = best.bicarbonateG() > 0 || best.sodaAshG() > 0;
        boolean salts = own.saltG() > 0;
        add(habits, Habit.HOLD_FEED_ONLY, idle && own.feed() == 0 && (due || best.feed() > 0));
        add(habits, Habit.DO_NOTHING, idle && full && due);
        add(habits, Habit.FEEDS_BECAUSE_THEY_BEG, own.feed() >= best.feed() + MORE_FEED);
        add(habits, Habit.HALF_EVERY_DAY, own.change() >= HALF && best.change() <= own.change() - LESS_CHANGE);
        add(habits, Habit.FEEDS_NEVER_CHANGES, full && own.change() == 0 && best.change() > 0);
        add(habits, Habit.CHASES_PH, buffers && !buffersBest);
        add(habits, Habit.DOSES_AND_HOPES, !tested && (salts || buffers));
        add(habits, Habit.SALTS_EVERY_READING, tested && salts && !(best.saltG() > 0));
        add(habits, Habit.SCRUBS_FILTER, own.filter() == FilterCare.SCRUB && best.filter() != FilterCare.SCRUB);
        add(habits, Habit.STOCKS_AT_ONCE, own.stock() >= ALL && best.stock() <= SOME);
        // Who tests and does not write, and who does not test, leave the same log.
        add(habits, Habit.NEVER_TESTS, !tested);
        add(habits, Habit.NEVER_WRITES, !tested);
        add(habits, Habit.AWAY_ALL_WEEK, idle && full && best.helpers() != FollowUp.NONE);
        return habits;
    }

    private static void add(Set<Habit> habits, Habit habit, boolean is) {
        if (is) {
            habits.add(habit);
        }
    }
}
