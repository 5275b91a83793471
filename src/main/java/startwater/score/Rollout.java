package startwater.score;

import org.jspecify.annotations.Nullable;
import startwater.biofilter.Nitrification;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.Decision.FollowUp;
import startwater.drill.Observation;
import startwater.drill.Scenario;
import startwater.drill.TankSim;
import startwater.drill.VisitRecord;
import startwater.fish.Stressor;
import startwater.quantity.Stream;
import startwater.strip.FishMood;
import startwater.strip.FishSigns;
import startwater.strip.Pad;
import startwater.tank.FastStepper;
import startwater.tank.TankLayout;
import startwater.tank.TankParameters;
import startwater.tank.TankReadings;
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

    Rollout(Belief belief, Notebook book) {
        this(belief, book, 1);
    }

    /** @param repeatedDays days for which the option is done anew, once a day, before the standing rules take over */
    Rollout(Belief belief, Notebook book, int repeatedDays) {
        this.repeatedDays = repeatedDays;
        this.belief = belief;
        this.scenario = belief.scenario();
        this.calendar = belief.calendar();
        this.visit = belief.log().last();
        this.book = book;
        int away = calendar.nextVisitAfter(visit.minute()) - visit.minute();
        int days = scenario.fish() == null ? FISHLESS_DAYS : DAYS;
        this.end = visit.minute() + Math.max(days * Calendar.DAY, away + AWAY_DAYS_BEYOND * Calendar.DAY);
        int count = 0;
        for (int t = calendar.nextVisitAfter(visit.minute()); t <= end; t = calendar.nextVisitAfter(t)) {
            count++;
        }
        this.visits = count;
        this.noise = new double[belief.waters()][];
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

    /**
     * Follows one option on one water.
     *
     * @param parts receives the loss by stratum and component, % of the stock
     * @param deaths receives deaths by stratum and cause, % of the stock
     * @param watcher sees the state at every visit and every {@code everyMinutes}, or null
     */
    void follow(
            Decision option,
            int water,
            FastStepper stepper,
            double[][] parts,
            double[][] deaths,
            @Nullable Watcher watcher,
            int everyMinutes) {
        TankSim sim = belief.water(water).sim().copy();
        double[] before = sim.state().clone();
        Notebook notes = book.copy();
        sim.act(option);
        notes.did(option);
        double jobs = jobs(option);
        double ready = scenario.fish() == null ? Double.NaN : 0;
        int number = 0;
        int done = 1;
        Decision orders = option;
        for (int t = calendar.nextVisitAfter(visit.minute()); t <= end; t = calendar.nextVisitAfter(t)) {
            if (orders.helpers() != FollowUp.NONE) {
                int at = Calendar.attendedAt(sim.minute(), t, orders.helpers());
                run(sim, at, stepper, watcher, everyMinutes);
                jobs += jobs(acts(sim, notes, water, 2 * number + 1, orders.helpers() == FollowUp.CALL)
                        .withFollowUp(FollowUp.NONE));
            }
            orders = Decision.LEAVE_ALONE;
            run(sim, t, stepper, watcher, everyMinutes);
            if (Double.isNaN(ready) && proved(sim)) {
                ready = (t - visit.minute()) / (double) Calendar.DAY;
            }
            if (t - visit.minute() >= repeatedDays * Calendar.DAY) {
                orders = acts(sim, notes, water, 2 * number, false);
                jobs += jobs(orders);
            } else if (t - visit.minute() >= done * Calendar.DAY) {
                done++;
                Decision again = notes.fromShelf(
                        option.withFollowUp(FollowUp.NONE).withStock(0).withRipeMedia(0));
                sim.act(again);
                notes.did(again);
                jobs += jobs(again);
            } else {
                sim.visited();
            }
            number++;
        }
        run(sim, end, stepper, watcher, everyMinutes);
        count(sim, before, jobs, ready, parts, deaths);
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
    private Decision acts(TankSim sim, Notebook notes, int water, int occasion, boolean expert) {
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
        sim.act(d);
        notes.did(d);
        return d;
    }

    private void look(TankSim sim, Notebook notes) {
        int t = sim.minute();
        double[] y = sim.state();
        FishMood mood = FishSigns.mood(y, sim.draw().parameters());
        int alive = visit.seen().alive();
        int living = (int)
                Math.rint(TankReadings.fishAlive(y, sim.draw().parameters().strata()));
        notes.arrive(
                t,
                calendar.nextVisitAfter(t),
                y[TankLayout.TEMPERATURE],
                scenario.shelf().oxygenMeter() ? y[TankLayout.OXYGEN] : Double.NaN,
                mood,
                sim.controls().air(),
                Math.max(0, alive - living),
                alive == 0 ? 0 : Math.max(1, living));
    }

    /** Without fish: whether the filter carries the planned ration and both readings are under 1 mg/L. */
    private boolean proved(TankSim sim) {
        double[] y = sim.state();
        return y[TankLayout.TAN] < 1 && y[TankLayout.NITRITE] < 1 && behind(sim) <= 0;
    }

    /** Days by which the lesser group is behind the planned or present full ration at its net growth; 0 or less: none. */
    private double behind(TankSim sim) {
        Scenario.Fish fish = scenario.fishHereOrPlanned();
        if (fish == null) {
            return 0;
        }
        double[] y = sim.state();
        double living = scenario.fish() != null
                ? TankReadings.fishAlive(y, sim.draw().parameters().strata())
                : fish.count();
        double mass = scenario.fish() != null
                ? TankReadings.massG(y, sim.draw().parameters().strata())
                : fish.massG();
        if (!(living > 0) || !(mass > 0)) {
            return 0;
        }
        double aob = TankReadings.aobForRation(sim.draw().parameters(), living, mass, y[TankLayout.TEMPERATURE]);
        double nob = TankReadings.nobForRation(sim.draw().parameters(), living, mass, y[TankLayout.TEMPERATURE]);
        double short1 = aob / Math.max(1e-9, y[TankLayout.AOB]);
        double short2 = nob / Math.max(1e-9, y[TankLayout.NOB]);
        return Math.min(
                LossWeights.CATCH_UP_MOST_DAYS,
                StrictMath.log(Math.max(short1, short2)) / LossWeights.CATCH_UP_PER_DAY);
    }

    /** Days that a filter which carries the planned ration needs for the ammonia and nitrite that stand over 1 mg/L. */
    private double backlog(TankSim sim) {
        Scenario.Fish fish = scenario.fishHereOrPlanned();
        if (fish == null) {
            return 0;
        }
        double[] y = sim.state();
        TankParameters p = sim.draw().parameters();
        double temperatureC = y[TankLayout.TEMPERATURE];
        double nob =
                Math.max(y[TankLayout.NOB], TankReadings.nobForRation(p, fish.count(), fish.massG(), temperatureC));
        double perDay = nob * StrictMath.exp(Nitrification.LN_THETA_NOB * (temperatureC - 20)) / p.volumeL();
        double pending = Math.max(0, y[TankLayout.TAN] + y[TankLayout.NITRITE] - 1);
        return perDay > 0 ? Math.min(LossWeights.CATCH_UP_MOST_DAYS, pending / perDay) : 0;
    }

    private void count(TankSim sim, double[] before, double jobs, double ready, double[][] parts, double[][] deaths) {
        double[] y = sim.state();
        double behind = Math.max(0, behind(sim));
        double[] common = new double[Component.values().length];
        common[Component.WATER.ordinal()] = LossWeights.WATER * (y[TankLayout.VOLUMES] - before[TankLayout.VOLUMES]);
        common[Component.JOBS.ordinal()] = jobs;
        if (scenario.fish() == null) {
            double days = Double.isNaN(ready) ? FISHLESS_DAYS + behind + backlog(sim) : ready;
            common[Component.DELAY.ordinal()] = LossWeights.FISHLESS_DELAY * days;
        } else {
            double massG = TankReadings.massG(before, sim.draw().parameters().strata());
            common[Component.GROWTH.ordinal()] =
                    LossWeights.growth(y[TankLayout.GROWTH_LOST] - before[TankLayout.GROWTH_LOST], massG);
            common[Component.WASTE.ordinal()] = LossWeights.WASTE * (y[TankLayout.WASTED] - before[TankLayout.WASTED]);
            common[Component.STRESS.ordinal()] =
                    LossWeights.STRESS * (y[TankLayout.STRESS] - before[TankLayout.STRESS]);
            common[Component.DELAY.ordinal()] =
                    LossWeights.DELAY * (y[TankLayout.DELAY] - before[TankLayout.DELAY] + behind);
            common[Component.SHOCK.ordinal()] = 100 * (y[TankLayout.SHOCK] - before[TankLayout.SHOCK]);
            double free =
                    Math.max(LossWeights.SALT_FREE_MG_PER_L, LossWeights.SALT_FREE_PER_NITRITE * y[TankLayout.NITRITE]);
            common[Component.SALT.ordinal()] =
                    LossWeights.SALT * Math.max(0, StrictMath.log(y[TankLayout.CHLORIDE] / free));
        }
        for (int k = 0; k < parts.length; k++) {
            System.arraycopy(common, 0, parts[k], 0, common.length);
            parts[k][Component.DEATHS.ordinal()] = deaths(y, before, k, deaths[k]);
        }
    }

    /** Deaths of one stratum from here on, % of the stock, split by cause. */
    private static double deaths(double[] y, double[] before, int stratum, double[] byCause) {
        double sum = 0;
        for (Stressor cause : Stressor.values()) {
            int at = TankLayout.hazard(stratum, cause);
            byCause[cause.ordinal()] = y[at] - before[at];
            sum += byCause[cause.ordinal()];
        }
        double dead = -100 * StrictMath.expm1(-sum);
        for (int i = 0; i < byCause.length; i++) {
            byCause[i] = sum > 0 ? dead * byCause[i] / sum : 0;
        }
        return dead;
    }
}
