package startwater.score;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Observation;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.strip.Pad;
import startwater.tank.TankReadings;

/** A visit of a play, with the losses of options there: those of the grid and those a test asks about. */
final class RankedCase {
    /** Waters that a case is judged on, each with four strata of sensitivity: 64 tanks. */
    private static final int WATERS = 16;

    private static final double LEAST_BAND = 0.05;

    private static final Policy READS_ALL = new Policy() {
        @Override
        public String id() {
            return "reads-all";
        }

        @Override
        public Set<Pad> tests(Notebook book) {
            return EnumSet.allOf(Pad.class);
        }

        @Override
        public Decision decide(Notebook book) {
            return Decision.LEAVE_ALONE;
        }
    };

    private final Belief belief;
    private final Notebook book;
    private final Rollout rollout;
    private List<Decision> options = List.of();
    private Losses losses;

    private RankedCase(Belief belief, Notebook book) {
        this(belief, book, 1);
    }

    private RankedCase(Belief belief, Notebook book, int days) {
        this.belief = belief;
        this.book = book;
        this.rollout = new Rollout(belief, book, days);
        this.losses = new Losses(new double[0][][], new double[0][][], new double[0], 1);
    }

    /** The visit of this number (0 the first) when a policy has played until then on a hidden tank. */
    static RankedCase at(Scenario s, String policy, long variant, int visit) {
        DrillRun run = DrillRun.start(s, variant, DrillRun.Pace.EVERY_VISIT);
        Notebook played = new Notebook(s);
        while (run.now().visit() < visit) {
            PolicyPlayer.visit(run, Policies.byId(policy), played);
        }
        int past = run.past().size();
        PolicyPlayer.visit(run, READS_ALL, played);
        Belief belief = Belief.of(s, run.past().upTo(past), WATERS);
        return new RankedCase(
                belief, Notebook.of(s, belief.calendar(), belief.log().visits()));
    }

    /** The same visit, every option done once a day for three days. */
    RankedCase keptUp() {
        return new RankedCase(belief, book, 3);
    }

    /** The same visit with one pad written so many stops higher, or lower, than it was read; at the end of the scale there. */
    RankedCase misread(Pad pad, int stops) {
        VisitRecord last = belief.log().last();
        List<Written> written = new ArrayList<>(last.written());
        written.replaceAll(w -> w.pad() == pad ? moved(w, stops) : w);
        VisitRecord other = new VisitRecord(
                last.visit(), last.minute(), last.actor(), last.seen(), written, last.decision(), last.prediction());
        List<VisitRecord> visits = new ArrayList<>(belief.log().visits());
        visits.set(visits.size() - 1, other);
        Belief misled = Belief.of(belief.scenario(), new DrillLog(visits), WATERS);
        return new RankedCase(
                misled,
                Notebook.of(belief.scenario(), misled.calendar(), misled.log().visits()));
    }

    private static Written moved(Written w, int stops) {
        int stop = Math.max(0, Math.min(w.pad().scale().stops() - 1, w.stop() + stops));
        return new Written(w.pad(), stop, w.dilution(), w.strip());
    }

    /** What a second strip before deciding is worth over its price, % of the stock. */
    double secondStrip() {
        Verdict.Information worth = new Retest(belief, losses).worth();
        return worth.strip() - worth.price();
    }

    int oddReadings() {
        return belief.oddReadings();
    }

    /** Tries the whole grid of options, and more. */
    RankedCase tried(Decision... more) {
        List<Decision> all = new ArrayList<>(Options.grid(belief, book));
        for (Decision d : more) {
            if (!all.contains(d)) {
                all.add(d);
            }
        }
        return with(all);
    }

    /** Tries just these. */
    RankedCase with(List<Decision> these) {
        options = List.copyOf(these);
        losses = new LossTable(belief, rollout).of(options);
        return this;
    }

    Notebook book() {
        return book;
    }

    List<Decision> options() {
        return options;
    }

    Losses losses() {
        return losses;
    }

    double toxicAmmonia() {
        return belief.band(w -> TankReadings.toxicAmmoniaMgPerL(w.sim().state()))
                .middle();
    }

    double effectiveNitrite() {
        return belief.band(w -> TankReadings.effectiveNitriteMgPerL(
                        w.sim().state(), w.sim().draw().parameters().chlorideHalfMgPerL()))
                .middle();
    }

    double pad(Pad pad) {
        return belief.band(w -> Observation.padValue(pad, w.sim().state())).middle();
    }

    /** Least expected loss among the options of a kind, % of the stock. */
    double least(Predicate<Decision> kind) {
        return losses.mean(leastAt(kind));
    }

    private int leastAt(Predicate<Decision> kind) {
        return IntStream.range(0, options.size())
                .filter(i -> kind.test(options.get(i)))
                .boxed()
                .min(java.util.Comparator.comparingDouble(losses::mean))
                .orElseThrow(() -> new AssertionError("no option of this kind"));
    }

    double loss(Decision d) {
        return losses.mean(place(d));
    }

    double deaths(Decision d) {
        return losses.mean(place(d), Component.DEATHS);
    }

    private int place(Decision d) {
        int at = options.indexOf(d);
        if (at < 0) {
            throw new AssertionError("not tried: " + d);
        }
        return at;
    }

    /** Regret of a choice above what cannot be told from none, % of the stock. */
    double regret(Decision d) {
        return over(place(d), losses.best());
    }

    /** Whether the best option of a kind lies within what cannot be told from the best of all. */
    boolean amongBest(Predicate<Decision> kind) {
        return over(leastAt(kind), losses.best()) == 0;
    }

    private double over(int one, int other) {
        double band = Math.max(2 * losses.standardError(one, other), LEAST_BAND);
        return Math.max(0, losses.mean(one) - losses.mean(other) - band);
    }

    /** Whether expected deaths are over the best option's by more than 1 % of the stock. */
    boolean dangerous(Decision d) {
        return deaths(d) - losses.mean(losses.best(), Component.DEATHS) > 1;
    }

    Decision best() {
        return options.get(losses.best());
    }

    /** Greatest expected loss among the options of a kind, % of the stock. */
    double most(Predicate<Decision> kind) {
        return IntStream.range(0, options.size())
                .filter(i -> kind.test(options.get(i)))
                .mapToDouble(losses::mean)
                .max()
                .orElseThrow(() -> new AssertionError("no option of this kind"));
    }

    /** What the standing rules do. */
    Decision patient() {
        return Policies.CAREFUL.decide(book).withFollowUp(Decision.FollowUp.NONE);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(belief.scenario().id());
        text.append(String.format(
                Locale.ROOT,
                " NH3 %.3f nitrite %.2f/%.2f TAN %.1f pH %.2f alk %.0f Cl %.0f:",
                belief.scenario().fish() == null ? 0 : toxicAmmonia(),
                pad(Pad.NITRITE),
                belief.scenario().fish() == null ? 0 : effectiveNitrite(),
                pad(Pad.AMMONIA),
                pad(Pad.PH),
                pad(Pad.ALKALINITY),
                pad(Pad.CHLORIDE)));
        IntStream.range(0, options.size())
                .boxed()
                .sorted(java.util.Comparator.comparingDouble(losses::mean))
                .forEach(i -> {
                    text.append(String.format(
                            Locale.ROOT,
                            "\n  %.3f %s",
                            losses.mean(i),
                            WhyText.in(Locale.ENGLISH).decision(options.get(i))));
                    for (Component part : Component.values()) {
                        if (Math.abs(losses.mean(i, part)) >= 0.005) {
                            text.append(String.format(
                                    Locale.ROOT,
                                    " %s %.2f",
                                    part.name().toLowerCase(Locale.ROOT),
                                    losses.mean(i, part)));
                        }
                    }
                });
        return text.toString();
    }
}
