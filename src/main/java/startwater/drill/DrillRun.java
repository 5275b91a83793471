package startwater.drill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import startwater.quantity.Stream;
import startwater.strip.FishMood;
import startwater.strip.Pad;
import startwater.strip.ReadingModel;
import startwater.tank.FastStepper;
import startwater.tank.TankReadings;

/**
 * One run of a drill on its hidden tank. The same scenario, variant and acts give the same run. Not thread safe.
 *
 * <p>The learner is asked at the scenario's decision visits, and sooner where the fish change or die; at the other visits
 * the orders stand and the visit is logged with what was seen.
 */
public final class DrillRun {
    /** How often the one who plays decides. */
    public enum Pace {
        /** At the scenario's decision visits. */
        LEARNER,
        /** At every visit of the keeper. */
        EVERY_VISIT
    }

    private static final long FISH = 0x6669_7368L;
    private static final long STRIP = 0x7374_7269L;
    private static final long EYES = 0x6865_6c70L;

    private final Scenario scenario;
    private final Calendar calendar;
    private final long variant;
    private final Pace pace;
    private final @Nullable Attendant attendant;
    private final TankSim sim;
    private final FastStepper stepper = new FastStepper();
    private double[] fates;
    private final HiddenCourse course;
    private final Stores stores;
    private final List<DippedStrip> dipped = new ArrayList<>();
    private DrillLog past = DrillLog.EMPTY;
    private @Nullable VisitRecord open;
    private int visit;
    private int asked;
    private int alive;

    /**
     * The hidden tank at one hour, for the reveal; bacteria as shares of what the media can carry, 0..1; fish alive here as an
     * expected number, and fish still to come.
     */
    public record TruthPoint(
            double day,
            double ammoniaMgPerL,
            double nitriteMgPerL,
            double nitrateMgPerL,
            double ph,
            double alkalinityMgPerL,
            double oxygenMgPerL,
            double chlorideMgPerL,
            double toxicAmmoniaMgPerL,
            double effectiveNitriteMgPerL,
            double aobShare,
            double nobShare,
            double expectedAlive,
            double toCome) {
        /** Fish alive, here and still to come, expected number. */
        public double stock() {
            return expectedAlive + toCome;
        }
    }

    private DrillRun(Scenario scenario, long variant, Pace pace, @Nullable Attendant attendant, TankWatch watch) {
        this.scenario = scenario;
        this.calendar = Calendar.of(scenario);
        this.variant = variant;
        this.pace = pace;
        this.attendant = attendant;
        this.sim = TankSim.atFirstVisit(scenario, calendar, TankDraw.hidden(scenario, variant), stepper, watch);
        this.alive = scenario.fishCount();
        this.fates = new double[alive];
        Stream fate = Stream.of(variant, FISH);
        Arrays.setAll(fates, i -> fate.uniform());
        this.stores = new Stores(scenario.shelf());
        this.course = new HiddenCourse(scenario, sim);
        note(sim.state(), sim.day());
        arrive(0, true);
    }

    /** A run at its first visit in which nobody can be asked to look again or be called. @param variant which hidden tank */
    public static DrillRun start(Scenario scenario, long variant, Pace pace) {
        return new DrillRun(scenario, variant, pace, null, TankWatch.NONE);
    }

    /**
     * A run at its first visit.
     *
     * @param variant which hidden tank
     * @param attendant how somebody acts who is asked to look again, or called
     */
    public static DrillRun start(Scenario scenario, long variant, Pace pace, Attendant attendant) {
        return start(scenario, variant, pace, attendant, TankWatch.NONE);
    }

    /** The same under the eyes of {@code watch}: it sees the hidden tank from its filling on. */
    public static DrillRun start(Scenario scenario, long variant, Pace pace, Attendant attendant, TankWatch watch) {
        return new DrillRun(scenario, variant, pace, attendant, watch);
    }

    /** Plays a log again: the same readings and decisions on the same hidden tank. */
    public static DrillRun replay(Scenario scenario, long variant, DrillLog log, Attendant attendant) {
        DrillRun run = start(scenario, variant, Pace.LEARNER, attendant);
        for (VisitRecord record : log.visits()) {
            if (record.asked() && !run.over()) {
                record.written().forEach(w -> {
                    while (run.stores.taken(w.pad()) <= w.strip()) {
                        run.stores.take(w.pad());
                    }
                    run.write(w);
                });
                if (record.decision() != null) {
                    run.decide(record.decision(), record.prediction());
                }
            }
        }
        return run;
    }

    private void arrive(int number, boolean ask) {
        visit = number;
        open = seenBy(ask ? Actor.LEARNER : Actor.ORDERS, visit);
        asked += ask ? 1 : 0;
    }

    /** Somebody comes, counts the fish and looks. */
    private VisitRecord seenBy(Actor actor, int number) {
        int found = count();
        sim.counted(alive);
        Seen seen = Observation.see(scenario, sim, variant, number, actor, since(number), found, alive);
        return new VisitRecord(number, sim.minute(), actor, seen, List.of(), null, null);
    }

    /** The minute of the visit before; a day before the first. */
    private int since(int number) {
        return number == 0 ? calendar.first() - Calendar.DAY : calendar.visit(number - 1);
    }

    /** Counts the living; returns how many died since. */
    private int count() {
        if (fates.length == 0) {
            return 0;
        }
        double survival = sim.survival(0);
        int now = 0;
        for (double fate : fates) {
            now += fate < survival ? 1 : 0;
        }
        int found = alive - now;
        alive = now;
        return found;
    }

    public boolean over() {
        return open == null;
    }

    public Scenario scenario() {
        return scenario;
    }

    public Calendar calendar() {
        return calendar;
    }

    public long variant() {
        return variant;
    }

    /** The open visit with what is written so far. @throws IllegalStateException when the run is over */
    public VisitRecord now() {
        if (open == null) {
            throw new IllegalStateException("The drill is over; there is no open visit.");
        }
        return open;
    }

    /** How many decisions were asked for so far, the open one included. */
    public int asked() {
        return asked;
    }

    /** The log with the open visit, if any, at its end. */
    public DrillLog log() {
        return open == null ? past : past.plus(open);
    }

    /** Finished visits only. */
    public DrillLog past() {
        return past;
    }

    public int stripsLeft() {
        return stores.strips();
    }

    public int chlorideStripsLeft() {
        return stores.chlorideStrips();
    }

    public double saltLeftG() {
        return stores.saltG();
    }

    public double bicarbonateLeftG() {
        return stores.bicarbonateG();
    }

    public double ammoniumChlorideLeftG() {
        return stores.ammoniumChlorideG();
    }

    /** Share of the ripe media at hand that is left, 0..1. */
    public double ripeMediaLeft() {
        return sim.bagLeft();
    }

    /**
     * Dips a strip with all its pads.
     *
     * @param dilution parts of mixed sample per part of tank water, 1 for none
     * @throws IllegalStateException when none is left
     */
    public DippedStrip dip(int dilution) {
        return strip(stores.take(Pad.AMMONIA), dilution, Pad.CHLORIDE, false);
    }

    /** Dips a chloride strip. @throws IllegalStateException when none is left */
    public DippedStrip dipChloride() {
        return strip(stores.take(Pad.CHLORIDE), 1, Pad.CHLORIDE, true);
    }

    private DippedStrip strip(int number, int dilution, Pad special, boolean only) {
        Map<Pad, Double> positions = new EnumMap<>(Pad.class);
        for (Pad pad : Pad.values()) {
            if ((pad == special) == only) {
                double normal = Stream.of(variant, STRIP, number, pad.ordinal()).normal();
                positions.put(pad, Observation.padPosition(pad, sim.state(), sim.draw(), dilution, normal));
            }
        }
        DippedStrip strip = new DippedStrip(number, dilution, positions);
        dipped.add(strip);
        return strip;
    }

    /** A strip that was dipped in this run, as it lay then: for the mark of the reading. Null after a replay. */
    public @Nullable DippedStrip strip(Pad pad, int number) {
        return dipped.stream()
                .filter(d -> d.number() == number && d.positions().containsKey(pad))
                .findFirst()
                .orElse(null);
    }

    /** Writes a reading down; the same pad of the same strip is corrected, not doubled. */
    public void write(Written reading) {
        VisitRecord at = now();
        List<Written> kept = new ArrayList<>(at.written());
        kept.removeIf(w -> w.pad() == reading.pad() && w.strip() == reading.strip());
        kept.add(reading);
        open = new VisitRecord(at.visit(), at.minute(), at.actor(), at.seen(), kept, null, null);
    }

    /** Takes a reading of the open visit back. */
    public void erase(Written reading) {
        open = now().without(reading);
    }

    /**
     * Does what is decided and runs on to the next visit at which to decide, or to the end.
     *
     * @throws IllegalStateException when somebody is to come and the run has nobody
     */
    public void decide(Decision decision, @Nullable Prediction prediction) {
        if (decision.helpers() != Decision.FollowUp.NONE && attendant == null) {
            throw new IllegalStateException("Nobody can be asked to come in this run. Start it with an attendant.");
        }
        Decision possible = fromShelf(decision);
        past = past.plus(now().decided(possible, prediction));
        FishMood mood = now().seen().mood();
        sim.act(possible);
        if (possible.stock() > 0) {
            arrivals();
        }
        note(sim.state(), sim.day());
        Decision orders = attended(possible);
        while (true) {
            int next = visit + 1;
            sim.goTo(calendar.after(visit), stepper, this::note);
            if (next >= calendar.visits().size()) {
                finish();
                return;
            }
            arrive(next, false);
            if (asksAt(next, mood)) {
                VisitRecord at = now();
                open = new VisitRecord(at.visit(), at.minute(), Actor.LEARNER, at.seen(), List.of(), null, null);
                asked++;
                return;
            }
            sim.visited();
            past = past.plus(now().decided(standing(orders), null));
        }
    }

    /** Lets whoever was asked come before the next visit, test and act; returns the orders that stand then. */
    private Decision attended(Decision decided) {
        Actor actor = decided.helpers().actor();
        if (attendant == null || !actor.standsIn() || (scenario.fish() != null && alive == 0)) {
            return decided;
        }
        int at = Calendar.attendedAt(sim.minute(), calendar.after(visit), decided.helpers());
        sim.goTo(at, stepper, this::note);
        open = seenBy(actor, visit);
        Set<Pad> pads = attendant.tests(scenario, calendar, log());
        if (actor == Actor.EXPERT) {
            readByKit(pads);
        } else {
            readByHelper(pads);
        }
        Decision acted = fromShelf(attendant.decide(scenario, calendar, log())).withFollowUp(Decision.FollowUp.NONE);
        past = past.plus(now().decided(acted, null));
        sim.act(acted);
        if (acted.stock() > 0) {
            arrivals();
        }
        note(sim.state(), sim.day());
        return acted;
    }

    private void readByKit(Set<Pad> pads) {
        for (Pad pad : pads) {
            double normal = Stream.of(variant, STRIP, Written.OWN_KIT, sim.minute(), pad.ordinal())
                    .normal();
            write(new Written(pad, Observation.kitStop(pad, sim.state(), normal), 1, Written.OWN_KIT));
        }
    }

    /** A helper dips what is on the shelf and reads as the learner would. */
    private void readByHelper(Set<Pad> pads) {
        boolean colours = pads.stream().anyMatch(p -> p != Pad.CHLORIDE) && stores.strips() > 0;
        DippedStrip strip = colours ? dip(1) : null;
        DippedStrip column = pads.contains(Pad.CHLORIDE) && stores.chlorideStrips() > 0 ? dipChloride() : null;
        for (Pad pad : pads) {
            DippedStrip dippedFor = pad == Pad.CHLORIDE ? column : strip;
            if (dippedFor != null) {
                double sigma = ReadingModel.readingSigmaBlocks(pad, Observation.READER_SIGMA_LAB);
                double normal = Stream.of(variant, EYES, dippedFor.number(), pad.ordinal())
                        .normal();
                int stop = ReadingModel.readStop(pad, dippedFor.position(pad), sigma, normal);
                write(new Written(pad, stop, 1, dippedFor.number()));
            }
        }
    }

    /** Fish have come in: they are counted, and every living fish gets a fate of its own from here on. */
    private void arrivals() {
        double[] y = sim.state();
        double expected = TankReadings.fishAlive(y, sim.draw().parameters().strata());
        alive = (int) Math.rint(expected);
        sim.counted(alive);
        double survival = sim.survival(0);
        fates = new double[alive];
        Stream fate = Stream.of(variant, FISH, visit + 1);
        Arrays.setAll(fates, i -> survival * fate.uniform());
    }

    private boolean asksAt(int number, @Nullable FishMood mood) {
        if (fates.length > 0 && alive == 0 && sim.toCome() == 0) {
            // Nothing is left to decide for; the days run out under the last orders.
            return false;
        }
        if (pace == Pace.EVERY_VISIT) {
            return true;
        }
        if (asked >= scenario.keeper().decisions()) {
            return false;
        }
        if (scenario.keeper().decisionVisits().contains(number)) {
            return true;
        }
        Seen seen = now().seen();
        boolean worse = mood != null && seen.mood() != null && seen.mood().compareTo(mood) > 0;
        return (seen.found() > 0 || worse) && spare(number) > 0;
    }

    /** Decisions left beyond those planned: the planned ones are never used up by a stop between. */
    private long spare(int number) {
        long planned = scenario.keeper().decisionVisits().stream()
                .filter(v -> v > number && v < calendar.visits().size())
                .count();
        return scenario.keeper().decisions() - asked - planned;
    }

    /** What the standing orders come to at a visit without a decision. */
    private static Decision standing(Decision d) {
        return Decision.LEAVE_ALONE.withFeed(d.feed()).withAir(d.air());
    }

    /** No more is given than there is. */
    private Decision fromShelf(Decision d) {
        Decision given = stores.give(d);
        if (d.stock() > 0 && sim.toCome() == 0) {
            given = given.withStock(0);
        }
        return given.withRipeMedia(Math.min(d.ripeMedia(), sim.bagLeft()));
    }

    private void finish() {
        past = past.plus(seenBy(Actor.ORDERS, visit + 1));
        open = null;
    }

    private void note(double[] y, double day) {
        course.note(y, day, alive);
    }

    /** Day on which the filter first carried the load with both readings under 1 mg/L; NaN while it has not. */
    public double filterDay() {
        return course.filterDay();
    }

    /** The hidden tank hour by hour so far: for the reveal only. */
    public List<TruthPoint> truth() {
        return course.points();
    }

    /** The hidden tank itself: for outcome, luck and the reveal only, never for a mark of the decision. */
    public TankSim hidden() {
        return sim;
    }
}
