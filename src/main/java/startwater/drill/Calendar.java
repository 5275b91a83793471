package startwater.drill;

import java.util.ArrayList;
import java.util.List;

/**
 * When somebody is at the tank. Time is whole minutes since the system was filled, so that no sum of fractions of a day
 * ever decides what comes first.
 */
public final class Calendar {
    public static final int DAY = 1440;

    private final Scenario scenario;
    private final List<Integer> visits;
    private final List<Integer> meals;
    private final int first;
    private final int end;

    private Calendar(Scenario scenario, List<Integer> visits, List<Integer> meals, int first, int end) {
        this.scenario = scenario;
        this.visits = List.copyOf(visits);
        this.meals = List.copyOf(meals);
        this.first = first;
        this.end = end;
    }

    public static Calendar of(Scenario s) {
        List<Integer> meals = new ArrayList<>();
        if (s.fish() != null) {
            s.fish().mealsAtHours().forEach(h -> meals.add(minuteOfDay(h)));
        } else if (s.plannedFish() != null) {
            s.plannedFish().mealsAtHours().forEach(h -> meals.add(minuteOfDay(h)));
        }
        List<Integer> visits = new ArrayList<>();
        int firstDay = s.start().day();
        int lastDay = firstDay + s.keeper().days();
        for (int day = firstDay; day <= lastDay; day++) {
            for (double hour : s.keeper().visitsAtHours()) {
                int minute = day * DAY + minuteOfDay(hour);
                if (!away(s, minute)) {
                    visits.add(minute);
                }
            }
        }
        int end = lastDay * DAY + minuteOfDay(s.keeper().visitsAtHours().get(0));
        visits.removeIf(m -> m >= end);
        return new Calendar(s, visits, meals, visits.get(0), end);
    }

    private static boolean away(Scenario s, int minute) {
        double day = (double) minute / DAY;
        return s.keeper().away().stream().anyMatch(a -> day >= a.fromDay() && day < a.toDay());
    }

    private static int minuteOfDay(double hour) {
        return (int) Math.rint(hour * 60);
    }

    /** Minutes of the keeper's visits in the drill, rising. */
    public List<Integer> visits() {
        return visits;
    }

    public int visit(int number) {
        return visits.get(number);
    }

    /** The end of the drill: the hour of a visit that is not made any more. */
    public int end() {
        return end;
    }

    public int first() {
        return first;
    }

    /** When somebody next comes after this visit: the next visit, or the end. */
    public int after(int number) {
        return number + 1 < visits.size() ? visits.get(number + 1) : end;
    }

    /** The first visit after a minute, though the drill be over by then. */
    public int nextVisitAfter(int minute) {
        for (int day = Math.floorDiv(minute, DAY); ; day++) {
            for (double hour : scenario.keeper().visitsAtHours()) {
                int at = day * DAY + minuteOfDay(hour);
                if (at > minute && !away(scenario, at)) {
                    return at;
                }
            }
        }
    }

    /** Minutes after which somebody who is called is there, unless the next visit comes first. */
    private static final int CALLED_AFTER = 240;

    /**
     * When somebody comes who was asked at one visit to come before the next: half-way, or who is called, after four hours.
     *
     * @param from minute of the visit
     * @param next minute of the next one
     */
    public static int attendedAt(int from, int next, Decision.FollowUp followUp) {
        int halfWay = from + (next - from) / 2;
        return followUp == Decision.FollowUp.CALL ? Math.min(from + CALLED_AFTER, halfWay) : halfWay;
    }

    /** When the learner is next asked by plan after this visit: the next decision visit, or the end. */
    public int nextDecisionAfter(int number) {
        for (int asked : scenario.keeper().decisionVisits()) {
            if (asked > number && asked < visits.size()) {
                return visits.get(asked);
            }
        }
        return end;
    }

    /** Meals a day. */
    public int mealsPerDay() {
        return meals.size();
    }

    /** The first meal at or after a minute; {@code Integer.MAX_VALUE} without meals. */
    public int mealFrom(int minute) {
        if (meals.isEmpty()) {
            return Integer.MAX_VALUE;
        }
        int day = Math.floorDiv(minute, DAY);
        int ofDay = Math.floorMod(minute, DAY);
        for (int meal : meals) {
            if (meal >= ofDay) {
                return day * DAY + meal;
            }
        }
        return (day + 1) * DAY + meals.get(0);
    }

    /** Hours from this visit to the next. */
    public double hoursToNext(int number) {
        return (after(number) - visit(number)) / 60.0;
    }
}
