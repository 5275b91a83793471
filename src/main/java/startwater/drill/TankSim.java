package startwater.drill;

import java.util.List;
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
import startwater.tank.Transfer;
import startwater.water.Dose;

/**
 * One tank on its way through a drill: state, switches and standing orders. The hidden tank, the plausible tanks of the
 * belief and every roll-out of an option run through this one class. A nursery runs beside it as a tank of its own, by
 * its standing orders; fish and media come over where a decision says so. Mutable; {@link #copy} before branching.
 */
public final class TankSim {
    /** A gentle rinse in tank water costs this share of the bacteria, a scrub under the tap this (tuned, no source). */
    private static final double RINSE_LOSS = 0.03;

    private static final double SCRUB_LOSS = 0.6;
    /** What a rinse takes out of the solids that the filter holds; a scrub takes all. */
    private static final double RINSED = 0.85;

    /** An expected count this near below a whole number is that number. */
    private static final double NEARLY = 1e-6;

    private final Scenario scenario;
    private final Calendar calendar;
    private final TankDraw draw;
    private final double[] y;
    private final Devices devices;
    private final TankWatch watch;
    private Controls controls;
    private SourceWater source;
    private SourceWater treated;
    private @Nullable TankSim nursery;
    private List<Scenario.Happening> events;
    private double changeEachDay;
    private double toCome;
    private double bag;
    private double feed;
    private double weighedAtC = Double.NaN;
    private int minute;

    private TankSim(Scenario scenario, Calendar calendar, TankDraw draw, double[] y, Devices devices, TankWatch watch) {
        this.scenario = scenario;
        this.calendar = calendar;
        this.draw = draw;
        this.y = y;
        this.watch = watch;
        this.devices = devices;
        this.events = scenario.events();
        this.source = draw.source();
        this.treated = source.neutralised(scenario.source().statedChlorineMgPerL());
        this.controls = devices.at(0, treated);
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
        TankSim sim = new TankSim(
                s, calendar, draw, y, new Devices(s, draw.parameters().volumeL()), watch);
        sim.toCome = s.plannedFish() == null ? 0 : s.plannedFish().count();
        sim.bag = 1;
        sim.before(stepper);
        sim.goTo(calendar.first(), stepper);
        sim.handOver();
        Scenario beside = s.beside();
        if (beside != null && s.nursery() != null) {
            TankDraw same = TankDraw.of(beside, draw.scores(), draw.parameters().sensitivity());
            sim.nursery = atFirstVisit(beside, calendar, same, stepper);
            sim.nursery.feed = s.nursery().feed();
            sim.nursery.changeEachDay = s.nursery().changePerDay();
        }
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
                event(new TankEvent.Change(change, treated));
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
        TankSim copy = new TankSim(scenario, calendar, draw, y.clone(), devices.copy(), TankWatch.NONE);
        copy.controls = controls;
        copy.source = source;
        copy.treated = treated;
        copy.nursery = nursery == null ? null : nursery.copy();
        copy.events = events;
        copy.changeEachDay = changeEachDay;
        copy.toCome = toCome;
        copy.bag = bag;
        copy.feed = feed;
        copy.weighedAtC = weighedAtC;
        copy.minute = minute;
        return copy;
    }

    /** From here on these happen by themselves, and not what the scenario holds: for branches into what may come. */
    public void expects(List<Scenario.Happening> happenings) {
        events = List.copyOf(happenings);
    }

    /** Runs on to a minute under the standing orders. */
    public void goTo(int target, Stepper stepper) {
        goTo(target, stepper, null);
    }

    /** Runs on, and shows the state at least every hour to {@code each} with the day. */
    public void goTo(int target, Stepper stepper, @Nullable ObjDoubleConsumer<double[]> each) {
        if (nursery != null) {
            nursery.goTo(target, stepper);
        }
        while (minute < target) {
            int change = nextStandingChange();
            if (change == minute) {
                visited();
                event(new TankEvent.Change(changeEachDay, treated));
                change += Calendar.DAY;
            }
            int meal = calendar.mealFrom(minute);
            if (meal == minute) {
                event(new TankEvent.Meal(feed, 1.0 / calendar.mealsPerDay(), weighedAtC));
                meal = calendar.mealFrom(minute + 1);
            }
            happen();
            int next = Math.min(Math.min(target, change), Math.min(meal, nextHappening()));
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

    /** When the water is next changed by standing orders: now or later; never for most tanks. */
    private int nextStandingChange() {
        if (changeEachDay == 0) {
            return Integer.MAX_VALUE;
        }
        int wait = Math.floorMod(calendar.first() - minute, Calendar.DAY);
        return minute + wait;
    }

    private void happen() {
        for (Scenario.Happening h : events) {
            if (h.minute() == minute) {
                begin(h);
            }
        }
        switchOver();
    }

    private void begin(Scenario.Happening h) {
        int back = h.hours() > 0 ? minute + (int) Math.rint(h.hours() * 60) : Integer.MAX_VALUE;
        devices.happens(h.kind(), h.amount(), back);
        switch (h.kind()) {
            case OVERFED -> event(new TankEvent.Meal(h.amount(), 1, weighedAtC));
            case DRIED -> event(new TankEvent.Dry(h.hours()));
            case MEDICATED -> event(new TankEvent.Medicate(h.amount()));
            case SCRUBBED -> event(new TankEvent.CleanMedia(SCRUB_LOSS, 1));
            case SOURCE_TEMPERATURE -> {
                source = source.at(h.amount());
                treated = treated.at(h.amount());
            }
            default -> {}
        }
    }

    /** Follows the switches; a new record only where one has moved, so constants can be kept. */
    private void switchOver() {
        Controls wanted = devices.at(minute, treated);
        if (wanted.pump() && !controls.pump()) {
            event(new TankEvent.FlushFilter());
        }
        if (!wanted.equals(controls)) {
            controls = wanted;
        }
    }

    /** The minute at which a filter without flow begins to foul: who looks on sees it begin. */
    private int fouling() {
        int left = (int) Math.rint(60 * TankReadings.hoursBorne(y));
        return controls.pump() || left == 0 ? Integer.MAX_VALUE : minute + left;
    }

    private int nextHappening() {
        int next = Math.min(devices.next(minute), fouling());
        for (Scenario.Happening h : events) {
            int at = h.minute();
            next = at > minute ? Math.min(next, at) : next;
        }
        return next;
    }

    /** Somebody is there and leaves the orders as they are; the ration is weighed for today's water. */
    public void visited() {
        weighedAtC = y[TankLayout.TEMPERATURE];
    }

    /** Does what was decided; the feeding stands until the next decision. */
    public void act(Decision d) {
        visited();
        if (d.change() > 0) {
            event(new TankEvent.Change(d.change(), d.neutralise() ? treated : source));
        }
        for (Dose compound : Dose.values()) {
            dose(compound, d.grams(compound));
        }
        switch (d.filter()) {
            case LEAVE -> {}
            case RINSE -> event(new TankEvent.CleanMedia(RINSE_LOSS, RINSED));
            case SCRUB -> event(new TankEvent.CleanMedia(SCRUB_LOSS, 1));
            case DRAIN -> event(new TankEvent.DrainFilter());
        }
        media(d.ripeMedia());
        stock(d.stock());
        devices.act(d);
        switchOver();
        feed = d.feed();
    }

    /** Planned fish go in: from the nursery where there is one, else as they were bought. */
    private void stock(double share) {
        Scenario.Fish planned = scenario.plannedFish();
        if (planned == null || share == 0) {
            return;
        }
        double count = Math.min(toCome(), Math.rint(share * planned.count()));
        if (nursery != null) {
            double[] before = seen();
            Transfer.fish(nursery.y, nursery.draw.parameters(), y, draw.parameters(), count);
            watch.counted(this, before);
        } else if (count > 0) {
            event(new TankEvent.Stock(count, planned.massG()));
            toCome -= count;
        }
    }

    /** Ripe media go in: a share of the bag on the shelf, or where there is none of the nursery's. */
    private void media(double share) {
        if (nursery != null && !scenario.bagged()) {
            double[] before = seen();
            Transfer.media(nursery.y, y, share);
            watch.counted(this, before);
        } else {
            double used = Math.min(bag, share);
            double ofCapacity = used * scenario.shelf().ripeMediaShare();
            event(new TankEvent.AddMedia(
                    ofCapacity * draw.parameters().aobCapacityMgPerDay(),
                    ofCapacity * draw.parameters().nobCapacityMgPerDay()));
            bag -= used;
        }
    }

    /** Fish still to come: whole ones that live in the nursery, or those not yet bought. */
    public double toCome() {
        return nursery == null
                ? toCome
                : StrictMath.floor(TankReadings.fishAlive(
                                nursery.y, nursery.draw.parameters().strata())
                        + NEARLY);
    }

    /** Mean mass of those to come, g; 0 where none are. */
    public double toComeMassG() {
        Scenario.Fish planned = scenario.plannedFish();
        return nursery != null
                ? TankReadings.massG(nursery.y, nursery.draw.parameters().strata())
                : planned == null || toCome == 0 ? 0 : planned.massG();
    }

    /** Share of the bag of ripe media that is left, 0..1; 1 beside a nursery whose own media may be taken. */
    public double bagLeft() {
        return scenario.bagged() ? bag : nursery != null ? 1 : 0;
    }

    /** The nursery beside, or null. */
    public @Nullable TankSim nursery() {
        return nursery;
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

    /** The fish still to come are counted: so many live in the nursery. */
    public void countedBeside(int alive) {
        if (nursery != null) {
            nursery.counted(alive);
        }
    }

    /** From here on harm counts, here and in the nursery: who lives now is the stock. */
    public void fromHere() {
        TankStart.fromHere(y, draw.parameters());
        if (nursery != null) {
            nursery.fromHere();
        }
    }

    /** Fish that died of a cause here and in the nursery, expected number were all as sensitive as this stratum. */
    public double dead(int stratum, Stressor cause) {
        return TankReadings.deadBy(y, stratum, cause) + deadBeside(stratum, cause);
    }

    /** Those of them that the nursery still counts: a fish that is moved takes its share of the dead along. */
    public double deadBeside(int stratum, Stressor cause) {
        return nursery == null ? 0 : nursery.dead(stratum, cause);
    }

    /** Fish alive here, expected number. */
    public double living() {
        return TankReadings.fishAlive(y, draw.parameters().strata());
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

    /** Whether there is mains power. */
    public boolean power() {
        return devices.power(minute);
    }

    /** Whether heater or cooler run. */
    public boolean heater() {
        return devices.heater(minute);
    }

    /** Flow through the filter, share of that through a clean one, pump running. */
    public double flowShare() {
        return draw.parameters().flowShare(y);
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
