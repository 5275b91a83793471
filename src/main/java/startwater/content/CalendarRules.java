package startwater.content;

import java.util.ArrayList;
import java.util.List;
import startwater.drill.Scenario;

/** The rules about days and hours: R17 to R21. */
final class CalendarRules {
    private static final double HOURS = 24;

    private final Fields root;
    private final Fields start;
    private final Fields keeper;
    private final Faults faults;
    private final double first;
    private final double last;

    CalendarRules(Fields root, Faults faults) {
        this.root = root;
        this.start = root.group("start");
        this.keeper = root.group("keeper");
        this.faults = faults;
        this.first = start.number("day");
        this.last = first + keeper.number("days");
    }

    void check() {
        hours(keeper, "visitsAtHours");
        hours(root.group("fish"), "mealsAtHours");
        hours(root.group("plannedFish"), "mealsAtHours");
        away();
        decisions();
        before();
        root.items("events").forEach(this::event);
    }

    private void hours(Fields block, String key) {
        double earlier = -1;
        for (Cell hour : block.items(key)) {
            if (hour.number() >= HOURS) {
                faults.add(hour.line(), Complaint.HOUR_AFTER_DAY, "key", key, "value", hour.number());
            }
            if (hour.number() <= earlier) {
                faults.add(
                        hour.line(), Complaint.HOURS_NOT_RISING, "key", key, "value", hour.number(), "before", earlier);
                return;
            }
            earlier = hour.number();
        }
    }

    private void away() {
        double free = Double.NEGATIVE_INFINITY;
        List<Double> hours = keeper.numbers("visitsAtHours");
        double opening = hours.isEmpty() ? Double.NaN : first + hours.get(0) / HOURS;
        for (Cell item : keeper.items("away")) {
            double from = item.group().number("fromDay");
            double to = item.group().number("toDay");
            if (from >= to) {
                faults.add(item.line(), Complaint.AWAY_BACKWARDS, "from", from, "to", to);
            } else if (from < first || to > last) {
                faults.add(item.line(), Complaint.AWAY_OUTSIDE, "from", from, "to", to, "first", first, "last", last);
            } else if (from < free) {
                faults.add(item.line(), Complaint.AWAY_OVERLAPS, "from", from, "to", to);
            }
            if (from <= opening && opening < to) {
                faults.add(item.line(), Complaint.AWAY_AT_FIRST_VISIT);
            }
            free = to;
        }
    }

    private void decisions() {
        List<Cell> asked = keeper.items("decisionVisits");
        if (asked.isEmpty()) {
            return;
        }
        int line = keeper.line("decisionVisits");
        double opening = asked.get(0).number();
        if (opening != 0 && asked.get(0).sound()) {
            faults.add(line, Complaint.DECISIONS_NOT_FROM_FIRST, "value", opening);
        }
        int visits = visits();
        double earlier = -1;
        boolean rising = true;
        for (Cell visit : asked) {
            rising &= !(visit.number() <= earlier);
            earlier = visit.number();
            if (visits > 0 && visit.number() >= visits) {
                faults.add(
                        visit.line(), Complaint.DECISION_AFTER_END, "value", visit.number(), "visits", (double) visits);
            }
        }
        if (!rising) {
            faults.add(line, Complaint.DECISIONS_NOT_RISING);
        }
        if (asked.size() > keeper.number("decisions")) {
            faults.add(
                    line,
                    Complaint.MORE_DECISIONS_THAN_MOST,
                    "count",
                    asked.size(),
                    "most",
                    keeper.number("decisions"));
        }
    }

    /** How often somebody comes in the drill; 0 where that cannot be told. */
    private int visits() {
        List<Double> hours = keeper.numbers("visitsAtHours");
        int visits = 0;
        for (int day = 0; day < last - first; day++) {
            for (double hour : hours) {
                visits += isAway(first + day + hour / HOURS) ? 0 : 1;
            }
        }
        return visits;
    }

    private boolean isAway(double day) {
        return keeper.groups("away").stream()
                .anyMatch(span -> day >= span.number("fromDay") && day < span.number("toDay"));
    }

    private void before() {
        double earlier = -1;
        List<Cell> all = new ArrayList<>(start.items("before"));
        if (all.isEmpty() && start.sound("before") && first > 0) {
            faults.add(start.line("before"), Complaint.BEFORE_MISSING, "first", first);
        } else if (!all.isEmpty() && all.get(0).group().number("fromDay") > 0) {
            faults.add(all.get(0).line(), Complaint.BEFORE_NOT_FROM_START);
        }
        for (Cell item : all) {
            double day = item.group().number("fromDay");
            if (day <= earlier) {
                faults.add(item.line(), Complaint.BEFORE_NOT_RISING, "day", day);
            }
            if (day >= first) {
                faults.add(item.line(), Complaint.BEFORE_TOO_LATE, "day", day, "first", first);
            }
            earlier = day;
        }
    }

    private void event(Cell cell) {
        Fields event = cell.group();
        if (event.number("atDay") >= last) {
            faults.add(cell.line(), Complaint.EVENT_OUTSIDE, "day", event.number("atDay"), "last", last);
        }
        for (Scenario.Happening.Kind kind : Scenario.Happening.Kind.values()) {
            if (ScenarioShape.eventName(kind).equals(event.text("kind"))) {
                hours(cell, kind);
                amount(cell, kind);
            }
        }
    }

    private void hours(Cell cell, Scenario.Happening.Kind kind) {
        Fields event = cell.group();
        boolean lasts =
                switch (kind) {
                    case AIR_OFF, PUMP_OFF, HEATER_OFF, POWER_OFF, ROOM_TEMPERATURE, DRIED -> true;
                    case SET_POINT, SOURCE_TEMPERATURE, OVERFED, MEDICATED, SCRUBBED -> false;
                };
        if (!lasts && event.has("hours")) {
            faults.add(cell.line(), Complaint.EVENT_HAS_NO, "kind", event.text("kind"), "key", "hours");
        }
        if (kind == Scenario.Happening.Kind.DRIED && !event.has("hours")) {
            faults.add(cell.line(), Complaint.EVENT_NEEDS, "kind", event.text("kind"), "key", "hours");
        }
    }

    private void amount(Cell cell, Scenario.Happening.Kind kind) {
        switch (kind) {
            case SET_POINT, ROOM_TEMPERATURE ->
                amount(cell, ScenarioShape.LEAST_SET_POINT_C, ScenarioShape.MOST_SET_POINT_C);
            case SOURCE_TEMPERATURE -> amount(cell, 0, ScenarioShape.MOST_SET_POINT_C);
            case OVERFED -> amount(cell, 0, ScenarioShape.MOST_RATIONS);
            case MEDICATED -> amount(cell, 0, ScenarioShape.MOST_KILLED);
            case AIR_OFF, PUMP_OFF, HEATER_OFF, POWER_OFF, DRIED, SCRUBBED -> needAmount(cell, false);
        }
    }

    private void needAmount(Cell event, boolean needed) {
        if (needed != event.group().has("amount")) {
            Complaint complaint = needed ? Complaint.EVENT_NEEDS : Complaint.EVENT_HAS_NO;
            faults.add(event.line(), complaint, "kind", event.group().text("kind"), "key", "amount");
        }
    }

    private void amount(Cell cell, double low, double high) {
        needAmount(cell, true);
        Fields event = cell.group();
        double amount = event.number("amount");
        if (amount < low || amount > high) {
            faults.add(
                    event.line("amount"),
                    Complaint.OUT_OF_RANGE,
                    "key",
                    "amount",
                    "value",
                    amount,
                    "low",
                    low,
                    "high",
                    high);
        }
    }
}
