package startwater.app.model;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import startwater.drill.DippedStrip;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Prediction;
import startwater.drill.Scenario;
import startwater.drill.Skill;
import startwater.drill.Written;
import startwater.record.Resumed;
import startwater.record.Steps;
import startwater.score.Care;
import startwater.score.Case;
import startwater.score.Judge;
import startwater.score.Verdict;
import startwater.score.WorkingMark;
import startwater.strip.Pad;
import startwater.text.VisitFacts;

/** One drill in the window: the wet strips, the pad in hand, the decision that is taking shape, and what was judged. */
public final class DrillModel {
    /** One worker, so that decisions are judged in order and the window stays free. */
    private static final Executor WORKER = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "judge");
        thread.setDaemon(true);
        return thread;
    });

    private final DrillRun run;
    private final List<Verdict> verdicts = new ArrayList<>();
    private final Map<Pad, DippedStrip> wet = new EnumMap<>(Pad.class);
    private final Map<Pad, Integer> chosen = new EnumMap<>(Pad.class);

    /** Changes whenever a strip is dipped or a reading written. */
    private final IntegerProperty changes = new SimpleIntegerProperty();

    /** Changes whenever the pad in hand moves along its scale. */
    private final IntegerProperty moves = new SimpleIntegerProperty();

    private final ObjectProperty<@Nullable Pad> inHand = new SimpleObjectProperty<>();
    private final DoubleProperty feed = new SimpleDoubleProperty(1);
    private final DoubleProperty change = new SimpleDoubleProperty(0);
    private final DoubleProperty salt = new SimpleDoubleProperty(0);
    private final DoubleProperty buffer = new SimpleDoubleProperty(0);
    private final DoubleProperty ammonium = new SimpleDoubleProperty(0);
    private final BooleanProperty air = new SimpleBooleanProperty(true);
    private final BooleanProperty neutralise = new SimpleBooleanProperty(true);
    private final BooleanProperty spareAir = new SimpleBooleanProperty(false);
    private final BooleanProperty pump = new SimpleBooleanProperty(true);
    private final BooleanProperty heater = new SimpleBooleanProperty(true);
    private final ObjectProperty<Decision.FilterCare> filter = new SimpleObjectProperty<>(Decision.FilterCare.LEAVE);
    private final ObjectProperty<Decision.FollowUp> followUp = new SimpleObjectProperty<>(Decision.FollowUp.NONE);
    private final DoubleProperty stock = new SimpleDoubleProperty(0);
    private final DoubleProperty ripeMedia = new SimpleDoubleProperty(0);
    private final ObjectProperty<@Nullable WorkingMark> working = new SimpleObjectProperty<>();
    private final @Nullable String note;
    private final Steps steps;
    private @Nullable WorkingMark keptSum;
    /** Places of the decisions that are being judged, in order. */
    private final Deque<Integer> judging = new ArrayDeque<>();

    private int practised;
    private final AtomicInteger wanted = new AtomicInteger();
    private final IntegerProperty foreseen = new SimpleIntegerProperty(-1);
    private final ObjectProperty<Prediction.Sureness> sureness =
            new SimpleObjectProperty<>(Prediction.Sureness.FAIRLY_SURE);

    public DrillModel(DrillRun run) {
        this(run, List.of(), 0, null);
    }

    /** A run whose steps nobody keeps. Parameters as below. */
    public DrillModel(DrillRun run, List<Verdict> judged, int practised, @Nullable String note) {
        this(new Resumed(run, Steps.NONE, judged, List.of(), null, null), practised, note);
    }

    /**
     * An attempt, perhaps taken up again: the strips that were dipped lie there, and the sum stands on the paper.
     *
     * @param practised how often the sum was seen or worked right before
     * @param note what the learner resolved after an earlier drill, or null
     */
    public DrillModel(Resumed at, int practised, @Nullable String note) {
        this.run = at.run();
        this.steps = at.steps();
        this.verdicts.addAll(at.verdicts());
        this.practised = practised;
        this.note = note;
        open();
        at.wet().forEach(this::lay);
        working.set(at.sum());
        keptSum = at.sum();
    }

    /** Lays a wet strip on the bench; what was written of it is its choice again. */
    private void lay(DippedStrip strip) {
        for (Pad pad : strip.positions().keySet().stream().sorted().toList()) {
            wet.put(pad, strip);
            chosen.remove(pad);
            Written before = written(pad, strip);
            if (before != null) {
                chosen.put(pad, before.stop());
            }
        }
        inHand.set(firstUnwritten());
    }

    /** The first wet pad of which nothing is written, or else the first wet one. */
    private @Nullable Pad firstUnwritten() {
        Pad first = null;
        for (Pad pad : Pad.values()) {
            DippedStrip strip = wet.get(pad);
            if (strip != null && written(pad, strip) == null) {
                return pad;
            }
            first = first == null && strip != null ? pad : first;
        }
        return first;
    }

    private void open() {
        wet.clear();
        chosen.clear();
        inHand.set(null);
        if (!run.over()) {
            feed.set(run.past().size() == 0 ? 1 : lastFeed());
            air.set(run.now().seen().air());
        }
        change.set(0);
        salt.set(0);
        buffer.set(0);
        ammonium.set(0);
        neutralise.set(true);
        spareAir.set(false);
        pump.set(true);
        heater.set(true);
        filter.set(Decision.FilterCare.LEAVE);
        followUp.set(Decision.FollowUp.NONE);
        stock.set(0);
        ripeMedia.set(0);
        working.set(null);
        keptSum = null;
        foreseen.set(-1);
        changes.set(changes.get() + 1);
        getReady();
    }

    /** What is plausible by now is worked out while the learner reads on, so that the mark need not wait for it. */
    private void getReady() {
        if (run.over()) {
            return;
        }
        int number = wanted.incrementAndGet();
        Scenario scenario = run.scenario();
        DrillLog log = run.log();
        Care care = steps.care();
        WORKER.execute(() -> {
            // Only the latest is worth the time.
            if (number == wanted.get()) {
                Judge.getReady(scenario, log, care);
            }
        });
    }

    private double lastFeed() {
        Decision last = run.past().last().decision();
        return last == null ? 1 : last.feed();
    }

    public DrillRun run() {
        return run;
    }

    public VisitFacts facts() {
        return VisitFacts.of(run);
    }

    public List<Verdict> verdicts() {
        return List.copyOf(verdicts);
    }

    public IntegerProperty changesProperty() {
        return changes;
    }

    public IntegerProperty movesProperty() {
        return moves;
    }

    public ObjectProperty<@Nullable Pad> inHandProperty() {
        return inHand;
    }

    public DoubleProperty feedProperty() {
        return feed;
    }

    public DoubleProperty changeProperty() {
        return change;
    }

    public DoubleProperty saltProperty() {
        return salt;
    }

    public DoubleProperty bufferProperty() {
        return buffer;
    }

    public DoubleProperty ammoniumProperty() {
        return ammonium;
    }

    public BooleanProperty airProperty() {
        return air;
    }

    public BooleanProperty neutraliseProperty() {
        return neutralise;
    }

    /** Whether the spare air runs beside. */
    public BooleanProperty spareAirProperty() {
        return spareAir;
    }

    public BooleanProperty pumpProperty() {
        return pump;
    }

    public BooleanProperty heaterProperty() {
        return heater;
    }

    public ObjectProperty<Decision.FilterCare> filterProperty() {
        return filter;
    }

    public ObjectProperty<Decision.FollowUp> followUpProperty() {
        return followUp;
    }

    /** Share of the planned fish put in now. */
    public DoubleProperty stockProperty() {
        return stock;
    }

    /** Share of the ripe media at hand put in now. */
    public DoubleProperty ripeMediaProperty() {
        return ripeMedia;
    }

    /** The last sum worked at the open visit. */
    public ObjectProperty<@Nullable WorkingMark> workingProperty() {
        return working;
    }

    /** How much of the sum is laid out at the open visit. */
    public Support support() {
        return Support.after(practised);
    }

    /** What the learner resolved after an earlier drill, or null. */
    public @Nullable String note() {
        return note;
    }

    public IntegerProperty foreseenProperty() {
        return foreseen;
    }

    public ObjectProperty<Prediction.Sureness> surenessProperty() {
        return sureness;
    }

    /** Dips a strip with all colour pads; the first is taken in hand. @throws IllegalStateException when none is left */
    public void dip(int dilution) {
        DippedStrip strip = run.dip(dilution);
        steps.dipped(strip, false);
        for (Pad pad : strip.positions().keySet()) {
            wet.put(pad, strip);
            chosen.remove(pad);
        }
        inHand.set(Pad.AMMONIA);
        changes.set(changes.get() + 1);
    }

    /** Dips a chloride strip and takes it in hand. @throws IllegalStateException when none is left */
    public void dipChloride() {
        DippedStrip strip = run.dipChloride();
        steps.dipped(strip, true);
        wet.put(Pad.CHLORIDE, strip);
        chosen.remove(Pad.CHLORIDE);
        inHand.set(Pad.CHLORIDE);
        changes.set(changes.get() + 1);
    }

    /** The wet strip that carries this pad, or null. */
    public @Nullable DippedStrip wet(Pad pad) {
        return wet.get(pad);
    }

    /** The stop chosen for a pad; the middle of its scale where none is chosen yet. */
    public int stop(Pad pad) {
        return chosen.getOrDefault(pad, pad.scale().stops() / 2);
    }

    /** Moves the pad in hand to a stop of its scale. */
    public void choose(int stop) {
        Pad pad = inHand.get();
        if (pad != null) {
            chosen.put(pad, Math.max(0, Math.min(pad.scale().stops() - 1, stop)));
            moves.set(moves.get() + 1);
        }
    }

    /** Writes the pad in hand down and takes the next wet pad that is not written yet. */
    public void writeDown() {
        Pad pad = inHand.get();
        DippedStrip strip = pad == null ? null : wet.get(pad);
        if (pad == null || strip == null) {
            return;
        }
        Written reading = new Written(pad, stop(pad), strip.dilution(), strip.number());
        run.write(reading);
        steps.wrote(reading);
        getReady();
        for (Pad next : Pad.values()) {
            DippedStrip other = wet.get(next);
            if (other != null && written(next, other) == null) {
                inHand.set(next);
                changes.set(changes.get() + 1);
                return;
            }
        }
        changes.set(changes.get() + 1);
    }

    /** The reading that was written last at the open visit, or null. */
    public @Nullable Written lastWritten() {
        List<Written> written = run.now().written();
        return written.isEmpty() ? null : written.get(written.size() - 1);
    }

    /** Takes the last reading back; its pad is in hand again where its strip is still wet. */
    public void takeBack() {
        Written last = lastWritten();
        if (last == null) {
            return;
        }
        run.erase(last);
        steps.erased(last);
        getReady();
        DippedStrip strip = wet.get(last.pad());
        if (strip != null && strip.number() == last.strip()) {
            chosen.put(last.pad(), last.stop());
            inHand.set(last.pad());
        }
        changes.set(changes.get() + 1);
    }

    /** What was written of a pad of a strip, or null. */
    public @Nullable Written written(Pad pad, DippedStrip strip) {
        return run.now().written().stream()
                .filter(w -> w.pad() == pad && w.strip() == strip.number())
                .findFirst()
                .orElse(null);
    }

    /** The decision as it stands. */
    public Decision decision() {
        return Decision.LEAVE_ALONE
                .withFeed(feed.get())
                .withChange(change.get())
                .withSalt(salt.get())
                .withBicarbonate(buffer.get())
                .withAmmoniumChloride(ammonium.get())
                .withNeutralise(neutralise.get())
                .withAir(spareAir.get() ? Decision.Air.SPARE : air.get() ? Decision.Air.ON : Decision.Air.OFF)
                .withPump(pump.get())
                .withHeater(heater.get())
                .withFilter(filter.get())
                .withFollowUp(followUp.get())
                .withStock(stock.get())
                .withRipeMedia(ripeMedia.get());
    }

    private @Nullable Prediction prediction() {
        return foreseen.get() < 0 ? null : new Prediction(facts().padToForesee(), foreseen.get(), sureness.get());
    }

    /** A worked example counts once as practice, a sum that was right each time; one that was wrong takes a step back. */
    private void practise() {
        VisitFacts facts = facts();
        boolean laidOut = !Double.isNaN(facts.book().value(Pad.AMMONIA))
                && !Double.isNaN(facts.book().value(Pad.PH));
        WorkingMark sum = working.get();
        if (support() == Support.WORKED) {
            practised += laidOut ? 1 : 0;
        } else if (sum != null) {
            practised = Math.max(1, practised + (sum.right() ? 1 : -1));
        }
    }

    /** Does it and goes on: the run moves to the next visit at once, the verdict follows. */
    public CompletableFuture<Verdict> commit() {
        practise();
        keepSum();
        int place = run.past().size();
        Decision asked = decision();
        Prediction said = prediction();
        run.decide(asked, said);
        steps.decided(asked, said);
        judging.add(place);
        Case c = new Case(run.scenario(), run.past().upTo(place));
        Care care = steps.care();
        // The mark is asked for before the next visit is made ready: one worker does both, in this order.
        CompletableFuture<Verdict> judging = CompletableFuture.supplyAsync(() -> Judge.judge(c, care), WORKER);
        open();
        return judging;
    }

    /** Whether a decision is being judged: until then nothing more is done in the drill. */
    public boolean judging() {
        return !judging.isEmpty();
    }

    /** Keeps a verdict, in the order of the visits. */
    public void judged(Verdict verdict) {
        verdicts.add(verdict);
        steps.marked(run.past().visits().get(judging.remove()), verdict);
    }

    /** The decision that waits longest could not be judged; it is judged when the drill is taken up again. */
    public void unjudged() {
        judging.remove();
    }

    /** The sum as it stands is the learner's; one that is kept already is not kept twice. */
    public void keepSum() {
        WorkingMark sum = working.get();
        if (sum != null && !sum.equals(keptSum) && !run.over()) {
            keptSum = sum;
            steps.worked(Skill.TOXIC_AMMONIA.id(), sum);
        }
    }

    /** Where the steps of this attempt are told. */
    public Steps steps() {
        return steps;
    }
}
