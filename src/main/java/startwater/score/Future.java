package startwater.score;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import startwater.drill.Calendar;
import startwater.drill.Scenario;
import startwater.drill.Scenario.Happening;

/**
 * One way in which things may go on by themselves, as far as a keeper can know. What is forecast comes as it will. Of a
 * device that fails in this drill the keeper knows that it does so now and then, and at what hour, but not on which day:
 * as likely on one day of the drill as on another.
 *
 * @param chance of this way, 0..1; those of all ways add up to 1
 * @param events what happens by itself in it
 * @param failure what fails in it, or null where all goes as it should
 */
record Future(
        double chance, List<Happening> events, Happening.@Nullable Kind failure) {
    /** What is less likely than this before anybody acts again is left out: each way is followed on every tank. */
    static final double LEAST_CHANCE = 0.05;

    Future {
        events = List.copyOf(events);
    }

    /** A kind of failure at its hour of the day. */
    private record Fault(Happening.Kind kind, int minuteOfDay) {}

    /**
     * All ways that are likely enough, that without a failure first.
     *
     * @param now minute of the visit
     * @param acts minute at which somebody next acts by the rules: a failure after that is the same for all options
     */
    static List<Future> of(Scenario s, int now, int acts) {
        List<Happening> foretold = s.events().stream()
                .filter(h -> h.kind().foretold() && h.minute() >= now)
                .toList();
        Map<Fault, List<Happening>> faults = new LinkedHashMap<>();
        int first = s.start().day() * Calendar.DAY;
        for (Happening h : s.events()) {
            if (!h.kind().foretold() && h.minute() >= first) {
                Fault fault = new Fault(h.kind(), Math.floorMod(h.minute(), Calendar.DAY));
                faults.computeIfAbsent(fault, f -> new ArrayList<>()).add(h);
            }
        }
        List<Future> failing = new ArrayList<>();
        double none = 1;
        double sum = 0;
        for (Map.Entry<Fault, List<Happening>> e : faults.entrySet()) {
            List<Integer> times = times(e.getKey(), now, acts);
            double perDay = Math.min(1, (double) e.getValue().size() / s.keeper().days());
            double chance = 1 - StrictMath.pow(1 - perDay, times.size());
            if (chance >= LEAST_CHANCE) {
                Happening h = e.getValue().get(0);
                double at = (double) times.get(times.size() / 2) / Calendar.DAY;
                List<Happening> events = new ArrayList<>(foretold);
                events.add(new Happening(at, h.kind(), h.hours(), h.amount()));
                failing.add(new Future(chance, events, h.kind()));
                none *= 1 - chance;
                sum += chance;
            }
        }
        List<Future> all = new ArrayList<>();
        all.add(new Future(none, foretold, null));
        for (Future f : failing) {
            all.add(new Future((1 - none) * f.chance() / sum, f.events(), f.failure()));
        }
        return List.copyOf(all);
    }

    /** The hours at which it may fail before somebody acts again. */
    private static List<Integer> times(Fault fault, int now, int acts) {
        List<Integer> times = new ArrayList<>();
        for (int t = Math.floorDiv(now, Calendar.DAY) * Calendar.DAY + fault.minuteOfDay(); t < acts; t += Calendar.DAY) {
            if (t >= now) {
                times.add(t);
            }
        }
        return times;
    }

    /** The way that a point of the unit interval falls in, each as wide as its chance. @param u 0 (inclusive) .. 1 */
    static Future at(List<Future> all, double u) {
        double sum = 0;
        for (Future f : all) {
            sum += f.chance();
            if (u < sum) {
                return f;
            }
        }
        return all.get(all.size() - 1);
    }
}
