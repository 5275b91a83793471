package startwater.drill;

import java.util.function.ObjDoubleConsumer;
import org.jspecify.annotations.Nullable;
import startwater.fish.Stressor;
import startwater.tank.Controls;
import startwater.tank.SourceWater;
import startwater.tank.Stepper;
import startwater.tank.TankEvent;
import startwater.tank.TankLayout;
import startwater.tank.TankReadings;
import startwater.tank.TankStart;
import startwater.water.Dose;

/**
 * One tank on its way through a drill: state, switches and standing orders. The hidden tank, the plausible tanks of the
 * belief and every roll-out of an option run through this one class. Mutable; {@link #copy} before branching.
 */
public final class TankSim {
    /** A gentle rinse in tank water costs this share of the bacteria, a scrub under the tap this (tuned, no source). */
    private static final double RINSE_LOSS = 0.03;

    private static final double SCRUB_LOSS = 0.6;

    private final Scenario scenario;
    private final Calendar calendar;
    private final TankDraw draw;
    private final double[] y;
    private final TankWatch watch;
    private Controls controls;
    private boolean airSwitch = true;
    private int powerBack;
    private int pumpBack;
    private int airBack;
    private double feed;
    private double weighedAtC = Double.NaN;
    private int minute;

    private TankSim(
            Scenario scenario, Calendar calendar, TankDraw draw, double[] y, Controls controls, TankWatch watch) {
        this.scenario = scenario;
        this.calendar = calendar;
        this.draw = draw;
        this.y = y;
        this.controls = controls;
        this.watch = watch;
    }

    /** A system from its filling up to the first visit, through what was done before. */
    public static TankSim atFirstVisit(Scenario s, Calendar calendar, TankDraw draw, Stepper stepper) {
        return atFirstVisit(s, calendar, draw, stepper, TankWatch.NONE);
    }

    /** The same under the eyes of {@code watch}, which stays with this tank but not with its copies. */
    public static TankSim atFirstVisit(Scenario s, Calendar calendar, TankDraw draw, Stepper stepper, TankWatch watch) {
        SourceWater water = draw.source();
        double[] y = TankStart.filled(
                draw.parameters(),
                water.neutralised(s.source().statedChlorineMgPerL())
                        .at(s.system().setPointC()),
                Math.min(1, draw.value(Unknown.AOB_SEED)),
                Math.min(1, draw.value(Unknown.NOB_SEED)));
        if (s.fish() != null) {
            TankStart.stock(y, draw.parameters(), s.fish().count(), s.fish().massG());
        }
        TankSim sim =
                new TankSim(s, calendar, draw, y, Controls.running(s.system().setPointC()), watch);
        sim.before(stepper);
        sim.goTo(calendar.first(), stepper);
        sim.handOver();
        return sim;
    }

    private void before(Stepper stepper) {
        int visitOfDay = Math.floorMod(calendar.first(), Calendar.DAY);
        double change = 0;
        int next = 0;
        for (int day = 0; day * Calendar.DAY + visitOfDay < calendar.first(); day++) {
            goTo(day * Calendar.DAY + visitOfDay, stepper);
            while (next < scenario.start().before().size()
                    && scenario.start().before().get(next).fromDay() <= day) {
                Scenario.Before orders = scenario.start().before().get(next++);
                feed = orders.feed() * draw.value(Unknown.PREDECESSOR_FEED);
                change = orders.changePerDay();
                dose(Dose.AMMONIUM_CHLORIDE, orders.ammoniumChlorideG());
                dose(Dose.SODIUM_BICARBONATE, orders.bicarbonateG());
                dose(Dose.SODIUM_CHLORIDE, orders.saltG());
            }
            weighedAtC = y[TankLayout.TEMPERATURE];
            if (change > 0 && day > 0) {
                event(new TankEvent.Change(change, treatedSource()));
            }
        }
    }

    /** At the first visit the fish are counted: the scenario's number is there, and harm counts from now. */
    private void handOver() {
        if (scenario.fish() == null) {
            return;
        }
        for (int s = 0; s < draw.parameters().strata(); s++) {
            for (Stressor stressor : Stressor.values()) {
                y[TankLayout.hazard(s, stressor)] = 0;
            }
        }
        counted(scenario.fish().count());
        y[TankLayout.STRESS] = 0;
        y[TankLayout.GROWTH_LOST] = 0;
        y[TankLayout.WASTED] = 0;
        y[TankLayout.DELAY] = 0;
        y[TankLayout.VOLUMES] = 0;
        y[TankLayout.SHOCK] = 0;
    }

    /** A branch that goes its own way from here. */
    public TankSim copy() {
        TankSim copy = new TankSim(scenario, calendar, draw, y.clone(), controls, TankWatch.NONE);
        copy.airSwitch = airSwitch;
        copy.powerBack = powerBack;
        copy.pumpBack = pumpBack;
        copy.airBack = airBack;
        copy.feed = feed;
        copy.weighedAtC = weighedAtC;
        copy.minute = minute;
        return copy;
    }

    /** Runs on to a minute under the standing orders. */
    public void goTo(int target, Stepper stepper) {
        goTo(target, stepper, null);
    }

    /** Runs on, and shows the state at least every hour to {@code each} with the day. */
    public void goTo(int target, Stepper stepper, @Nullable ObjDoubleConsumer<double[]> each) {
        while (minute < target) {
            int meal = calendar.mealFrom(minute);
            if (meal == minute) {
                event(new TankEvent.Meal(feed, 1.0 / calendar.mealsPerDay(), weighedAtC));
                meal = calendar.mealFrom(minute + 1);
            }
            happen();
            int next = Math.min(Math.min(target, meal), nextHappening());
            if (each != null) {
                next = Math.min(next, (Math.floorDiv(minute, 60) + 1) * 60);
            }
            double days = (next - minute) / (double) Calendar.DAY;
            double[] before = seen();
            stepper.advance(y, draw.parameters(), controls, days);
            minute = next;
            watch.passed(this, before, days);
            if (each != null) {
                each.accept(y, day());
            }
        }
    }

    private void happen() {
        for (Scenario.Happening h : scenario.events()) {
            if (minuteOf(h) == minute) {
                begin(h);
            }
        }
        switchOver();
    }

    private void begin(Scenario.Happening h) {
        int back = h.hours() > 0 ? minute + (int) Math.rint(h.hours() * 60) : Integer.MAX_VALUE;
        switch (h.kind()) {
            case POWER_OFF -> powerBack = back;
            case PUMP_OFF -> pumpBack = back;
            case AIR_OFF -> {
                airSwitch = false;
                airBack = back;
            }
            case SET_POINT -> controls = controls.withSetPoint(h.amount());
            case OVERFED -> event(new TankEvent.Meal(h.amount(), 1, weighedAtC));
        }
    }

    /** Follows the switches; a new record only where one has moved, so constants can be kept. */
    private void switchOver() {
        if (!airSwitch && airBack <= minute) {
            airSwitch = true;
        }
        boolean power = powerBack <= minute;
        boolean air = power && airSwitch;
        boolean pump = power && pumpBack <= minute;
        if (air != controls.air()) {
            controls = controls.withAir(air);
        }
        if (pump != controls.pump()) {
            controls = controls.withPump(pump);
        }
    }

    private int nextHappening() {
        int next = Integer.MAX_VALUE;
        for (Scenario.Happening h : scenario.events()) {
            int at = minuteOf(h);
            next = at > minute ? Math.min(next, at) : next;
        }
        next = powerBack > minute ? Math.min(next, powerBack) : next;
        next = pumpBack > minute ? Math.min(next, pumpBack) : next;
        return !airSwitch && airBack > minute ? Math.min(next, airBack) : next;
    }

    private static int minuteOf(Scenario.Happening h) {
        return (int) Math.rint(h.atDay() * Calendar.DAY);
    }

    /** Somebody is there and leaves the orders as they are; the ration is weighed for today's water. */
    public void visited() {
        weighedAtC = y[TankLayout.TEMPERATURE];
    }

    /** Does what was decided; the feeding stands until the next decision. */
    public void act(Decision d) {
        visited();
        if (d.change() > 0) {
            event(new TankEvent.Change(d.change(), d.neutralise() ? treatedSource() : draw.source()));
        }
        for (Dose compound : Dose.values()) {
            dose(compound, d.grams(compound));
        }
        switch (d.filter()) {
            case LEAVE -> {}
            case RINSE -> event(new TankEvent.FilterLoss(RINSE_LOSS));
            case SCRUB -> event(new TankEvent.FilterLoss(SCRUB_LOSS));
        }
        airSwitch = d.air() == Decision.Air.ON;
        airBack = airSwitch ? 0 : Integer.MAX_VALUE;
        switchOver();
        feed = d.feed();
    }

    private SourceWater treatedSource() {
        return draw.source().neutralised(scenario.source().statedChlorineMgPerL());
    }

    private void dose(Dose compound, double grams) {
        if (grams > 0) {
            event(new TankEvent.Dosing(compound, grams));
        }
    }

    private void event(TankEvent event) {
        double[] before = seen();
        event.apply(y, draw.parameters());
        watch.happened(this, before, event);
    }

    /** A copy of the state where somebody looks on. */
    private double[] seen() {
        return watch == TankWatch.NONE ? y : y.clone();
    }

    /** The living are counted: from now on so many eat and breathe. */
    public void counted(int alive) {
        double[] before = seen();
        TankStart.counted(y, draw.parameters(), alive);
        watch.counted(this, before);
    }

    /** The state, laid out as {@link TankLayout} says. Read it, do not write to it. */
    public double[] state() {
        return y;
    }

    public TankDraw draw() {
        return draw;
    }

    public Controls controls() {
        return controls;
    }

    public double feed() {
        return feed;
    }

    public int minute() {
        return minute;
    }

    public double day() {
        return minute / (double) Calendar.DAY;
    }

    /** Share of the handed-over fish of a stratum that would be alive, from its hazards alone. */
    public double survival(int stratum) {
        return TankReadings.survivalOf(y, stratum);
    }
}
