package startwater.score;

import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.Decision.FollowUp;
import startwater.drill.Observation;
import startwater.drill.Scenario;
import startwater.drill.TankSim;
import startwater.drill.VisitRecord;
import startwater.quantity.Stream;
import startwater.strip.FishMood;
import startwater.strip.FishSigns;
import startwater.strip.Pad;
import startwater.tank.FastStepper;
import startwater.tank.TankLayout;
import startwater.water.Dose;

/**
 * Follows an option on plausible tanks: it stands for a day at least, then the standing rules act at every visit, on
 * readings whose errors are the same for all options. Nobody acts while the keeper is away.
 */
final class Rollout {
    static final int DAYS = 7;
    private static final int AWAY_DAYS_BEYOND = 4;
    static final int FISHLESS_DAYS = 21;
    private static final long NOISE = 4;
    private static final Pad[] PADS = Pad.values();

    private final Belief belief;
    private final Scenario scenario;
    private final Calendar calendar;
    private final VisitRecord visit;
    private final Notebook book;
    private final int end;
    private final int repeatedDays;
    private final double[][] noise;
    private final int visits;
    private final boolean loading;
    private final List<Future> futures;

    Rollout(Belief belief, Notebook book) {
        this(belief, book, 1);
    }

    /** @param repeatedDays days for which the option is done anew, once a day, before the standing rules take over */
    Rollout(Belief belief, Notebook book, int repeatedDays) {
        this.repeatedDays = repeatedDays;
        this.belief = belief;
        this.scenario = belief.scenario();
        this.loading = scenario.fish() == null;
        this.calendar = belief.calendar();
        this.visit = belief.log().last();
        this.book = book;
        int away = calendar.nextVisitAfter(visit.minute()) - visit.minute();
        int days = loading ? FISHLESS_DAYS : DAYS;
        this.end = visit.minute() + Math.max(days * Calendar.DAY, away + AWAY_DAYS_BEYOND * Calendar.DAY);
        int count = 0;
        for (int t = calendar.nextVisitAfter(visit.minute()); t <= end; t = calendar.nextVisitAfter(t)) {
            count++;
        }
        this.visits = count;
        this.noise = new double[belief.waters()][];
        this.futures = Future.of(scenario, visit.minute(), acts());
    }

    /** When somebody first acts by the standing rules, min. */
    int acts() {
        int acts = calendar.nextVisitAfter(visit.minute());
        while (acts - visit.minute() < repeatedDays * Calendar.DAY) {
            acts = calendar.nextVisitAfter(acts);
        }
        return acts;
    }

    /** The ways in which things may go on by themselves before that. */
    List<Future> futures() {
        return futures;
    }

    /** A plausible water from the visit on. The ways are shared out over the waters by their chances. */
    TankSim ahead(int water) {
        return ahead(water, Future.at(futures, evenly(water)));
    }

    private TankSim ahead(int water, Future future) {
        TankSim sim = belief.water(water).sim().copy();
        sim.expects(future.events());
        return sim;
    }

    /** Points that fill the unit interval evenly however many there are (van der Corput). */
    private static double evenly(int number) {
        return (Integer.reverse(number) >>> 1) / (double) (1L << 31);
    }

    double days() {
        return (end - visit.minute()) / (double) Calendar.DAY;
    }

    int endMinute() {
        return end;
    }

    /** Errors of all readings on one water, the same for every option. */
    private double[] noise(int water) {
        double[] known = noise[water];
        if (known == null) {
            Stream stream = Stream.of(belief.seed(), NOISE, visit.minute(), water);
            known = new double[2 * visits * PADS.length];
            for (int i = 0; i < known.length; i++) {
                known[i] = stream.normal();
            }
            noise[water] = known;
        }
        return known;
    }

    /** Sees the tank on its way. */
    interface Watcher {
        void at(int minute, double[] y);
    }

    /** Follows one option on one water, in the mean over all ways in which things may go on. */
    Bill follow(Decision option, int water, FastStepper stepper) {
        Bill mean = Bill.empty();
        for (Future future : futures) {
            mean.add(follow(option, ahead(water, future), water, stepper, null, 0), future.chance());
        }
        return mean;
    }

    /**
     * Shows how one option goes on one water, in one of the ways in which things may go on.
     *
     * @param watcher sees the state at every visit and every {@code everyMinutes}
     */
    void watch(Decision option, int water, FastStepper stepper, Watcher watcher, int everyMinutes) {
        follow(option, ahead(water), water, stepper, watcher, everyMinutes);
    }

    private Bill follow(
            Decision option, TankSim sim, int water, FastStepper stepper, @Nullable Watcher watcher, int everyMinutes) {
        sim.fromHere();
        Billing billing = new Billing(scenario, sim);
        Tally tally = loading ? new Tally(sim, Math.max(1, scenario.stockCount())) : null;
        Notebook notes = book.copy();
        does(sim, notes, option, tally);
        double jobs = jobs(option);
        double ready = loading ? Double.NaN : 0;
        int number = 0;
        int done = 1;
        Decision orders = option;
        for (int t = calendar.nextVisitAfter(visit.minute()); t <= end; t = calendar.nextVisitAfter(t)) {
            if (orders.helpers() != FollowUp.NONE) {
                int at = Calendar.attendedAt(sim.minute(), t, orders.helpers());
                run(sim, at, stepper, watcher, everyMinutes);
                jobs += jobs(acts(sim, notes, water, 2 * number + 1, orders.helpers() == FollowUp.CALL, tally)
                        .withFollowUp(FollowUp.NONE));
            }
            orders = Decision.LEAVE_ALONE;
            run(sim, t, stepper, watcher, everyMinutes);
            if (Double.isNaN(ready) && billing.proved()) {
                ready = (t - visit.minute()) / (double) Calendar.DAY;
            }
            if (t - visit.minute() >= repeatedDays * Calendar.DAY || stands(sim, option)) {
                orders = acts(sim, notes, water, 2 * number, false, tally);
                jobs += jobs(orders);
            } else if (t - visit.minute() >= done * Calendar.DAY) {
                done++;
                Decision again = notes.fromShelf(
                        option.withFollowUp(FollowUp.NONE).withStock(0).withRipeMedia(0));
                does(sim, notes, again, tally);
                jobs += jobs(again);
            } else {
                sim.visited();
            }
            number++;
        }
        run(sim, end, stepper, watcher, everyMinutes);
        Bill bill = billing.bill(jobs);
        if (tally != null) {
            tally.take(sim);
            billing.ofFishToCome(bill, tally, ready, days());
        } else {
            billing.ofFishHere(bill);
        }
        return bill;
    }

    /** Whether something stands that was to run: whoever comes sees to it and does not wait for the day to be over. */
    private static boolean stands(TankSim sim, Decision option) {
        return (!sim.controls().air() && option.air() != Decision.Air.OFF)
                || (!sim.controls().pump() && option.pump())
                || (!sim.heater() && option.heater());
    }

    /** Does what is decided, by the tank and by the book. */
    private static void does(TankSim sim, Notebook notes, Decision d, @Nullable Tally tally) {
        if (tally != null) {
            tally.take(sim);
        }
        sim.act(d);
        notes.did(d);
        if (tally != null) {
            tally.take(sim);
        }
    }

    private static void run(TankSim sim, int target, FastStepper stepper, @Nullable Watcher watcher, int everyMinutes) {
        if (watcher == null) {
            sim.goTo(target, stepper);
            return;
        }
        while (sim.minute() < target) {
            watcher.at(sim.minute(), sim.state());
            sim.goTo(Math.min(target, (Math.floorDiv(sim.minute(), everyMinutes) + 1) * everyMinutes), stepper);
        }
        watcher.at(sim.minute(), sim.state());
    }

    /** Jobs and chemicals of one decision, in % of the stock. */
    private double jobs(Decision d) {
        double ammonium = d.ammoniumChlorideG()
                * Dose.AMMONIUM_CHLORIDE.tanMgPerG()
                / scenario.system().volumeL();
        int jobs = d.jobs() - (ammonium > 0 ? 1 : 0);
        return LossWeights.JOB * jobs + LossWeights.AMMONIUM * ammonium / 2 + LossWeights.attention(d.helpers());
    }

    /**
     * Somebody comes, tests and acts by the standing rules.
     *
     * @param occasion which of the errors of reading
     * @param expert tests with a kit of their own and does not misread
     */
    private Decision acts(TankSim sim, Notebook notes, int water, int occasion, boolean expert, @Nullable Tally tally) {
        look(sim, notes);
        double[] y = sim.state();
        double[] errors = noise(water);
        for (Pad pad : Policies.CAREFUL.tests(notes)) {
            double error = errors[occasion * PADS.length + pad.ordinal()];
            int stop = expert
                    ? Observation.kitStop(pad, y, error)
                    : pad.scale()
                            .nearestStop(Observation.padPosition(pad, y, sim.draw(), 1, 0)
                                    + Observation.readingSigmaBlocks(pad) * error);
            notes.read(pad, pad.scale().stopValue(stop));
        }
        Decision d = Policies.CAREFUL.decide(notes);
        does(sim, notes, d, tally);
        return d;
    }

    private void look(TankSim sim, Notebook notes) {
        int t = sim.minute();
        double[] y = sim.state();
        FishMood mood = FishSigns.mood(y, sim.draw().parameters());
        int living = (int) Math.rint(sim.living());
        int counted = loading
                ? notes.alive() + notes.stocking().wentIn()
                : visit.seen().alive();
        notes.arrive(
                t,
                calendar.nextVisitAfter(t),
                new Notebook.Sight(
                        y[TankLayout.TEMPERATURE],
                        scenario.shelf().oxygenMeter() ? y[TankLayout.OXYGEN] : Double.NaN,
                        mood,
                        sim.controls().air(),
                        10 * (int) Math.rint(10 * sim.flowShare()),
                        Math.max(0, counted - living),
                        counted == 0 ? 0 : Math.max(1, living),
                        (int) sim.toCome()));
    }
}
