package startwater.score;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import startwater.drill.Calendar;
import startwater.drill.Observation;
import startwater.drill.TankSim;
import startwater.drill.VisitRecord;
import startwater.fish.Species;
import startwater.fish.Stressor;
import startwater.score.Verdict.Band;
import startwater.score.Verdict.Variable;
import startwater.strip.Pad;
import startwater.tank.FastStepper;
import startwater.tank.TankReadings;

/** The tanks on their way under the learner's choice and under the best option. */
final class Paths {
    private static final int EVERY_MINUTES = 180;
    private static final Variable[] VARIABLES = Variable.values();

    private final Judge.Scored scored;
    private final int[] minutes;
    private final double[][][] own;
    private final double[][][] best;
    private final double[][] alkalinity;
    private final double[][] nextChances;
    private final double[][] nextValues;

    private Paths(Judge.Scored scored, int[] minutes, double[][][] own, double[][][] best) {
        this.scored = scored;
        this.minutes = minutes;
        this.own = own;
        this.best = best;
        this.alkalinity = new double[minutes.length][scored.belief().waters()];
        this.nextChances = new double[Pad.values().length][];
        this.nextValues = new double[Pad.values().length][];
    }

    /** Follows both; the choice also up to the next visit at which the learner is asked. */
    static Paths of(Judge.Scored scored, int own, int best) {
        Belief belief = scored.belief();
        int start = belief.log().last().minute();
        int end = scored.rollout().endMinute();
        List<Integer> ticks = new ArrayList<>();
        ticks.add(start);
        for (int t = (Math.floorDiv(start, EVERY_MINUTES) + 1) * EVERY_MINUTES; t < end; t += EVERY_MINUTES) {
            ticks.add(t);
        }
        ticks.add(end);
        int[] minutes = ticks.stream().mapToInt(i -> i).toArray();
        double[][][] ownPath = new double[VARIABLES.length][minutes.length][belief.waters()];
        double[][][] bestPath = own == best ? ownPath : new double[VARIABLES.length][minutes.length][belief.waters()];
        Paths paths = new Paths(scored, minutes, ownPath, bestPath);
        IntStream.range(0, belief.waters()).parallel().forEach(w -> {
            FastStepper stepper = new FastStepper();
            paths.record(own, w, stepper, ownPath);
            if (own != best) {
                paths.record(best, w, stepper, bestPath);
            }
        });
        paths.foresee(own);
        return paths;
    }

    private void record(int option, int water, FastStepper stepper, double[][][] into) {
        double half = scored.belief().water(water).sim().draw().parameters().chlorideHalfMgPerL();
        int[] next = {0};
        scored.rollout()
                .watch(
                        scored.options().get(option),
                        water,
                        stepper,
                        (minute, y) -> {
                            while (next[0] < minutes.length && minutes[next[0]] <= minute) {
                                for (Variable v : VARIABLES) {
                                    into[v.ordinal()][next[0]][water] = Judge.value(v, y, half);
                                }
                                if (into == own) {
                                    alkalinity[next[0]][water] = TankReadings.alkalinityMgPerL(y);
                                }
                                next[0]++;
                            }
                        },
                        EVERY_MINUTES);
    }

    /** What the next strip may show under the choice alone, before anybody acts again. */
    private void foresee(int option) {
        Belief belief = scored.belief();
        VisitRecord now = belief.log().last();
        int next = belief.calendar().nextDecisionAfter(now.visit());
        double[] weights = belief.waterWeights();
        double[][][] chances = new double[belief.waters()][Pad.values().length][];
        double[][] values = new double[Pad.values().length][belief.waters()];
        IntStream.range(0, belief.waters()).parallel().forEach(w -> {
            TankSim sim = scored.rollout().ahead(w);
            sim.act(scored.options().get(option));
            FastStepper stepper = new FastStepper();
            for (int t = belief.calendar().nextVisitAfter(now.minute());
                    t < next;
                    t = belief.calendar().nextVisitAfter(t)) {
                sim.goTo(t, stepper);
                sim.visited();
            }
            sim.goTo(next, stepper);
            for (Pad pad : Pad.values()) {
                chances[w][pad.ordinal()] = Judge.blockChances(pad, sim.state(), sim.draw());
                values[pad.ordinal()][w] = Observation.padValue(pad, sim.state());
            }
        });
        for (Pad pad : Pad.values()) {
            double[] sum = new double[pad.scale().blocks()];
            for (int w = 0; w < belief.waters(); w++) {
                for (int b = 0; b < sum.length; b++) {
                    sum[b] += weights[w] * chances[w][pad.ordinal()][b];
                }
            }
            nextChances[pad.ordinal()] = sum;
            nextValues[pad.ordinal()] = values[pad.ordinal()];
        }
    }

    /** The belief's own chance of each block of a pad at the next visit at which the learner is asked. */
    double[] nextBlocks(Pad pad) {
        return nextChances[pad.ordinal()].clone();
    }

    /** What today's and the next reading's true value may be, by pad. */
    List<Verdict.Range> ranges(Belief belief) {
        double[] weights = belief.waterWeights();
        List<Verdict.Range> ranges = new ArrayList<>();
        for (Pad pad : Pad.values()) {
            ranges.add(new Verdict.Range(
                    pad,
                    belief.band(w -> Observation.padValue(pad, w.sim().state())),
                    Belief.band(nextValues[pad.ordinal()], weights)));
        }
        return ranges;
    }

    /** The variable that tells the two options apart. */
    Verdict.Path decisive(Judge.Scored s, Losses losses, int ownOption, int bestOption) {
        Variable variable = variable(losses, ownOption, bestOption);
        Belief belief = s.belief();
        VisitRecord now = belief.log().last();
        double[] weights = belief.waterWeights();
        List<Double> hours = new ArrayList<>();
        List<Band> ownBands = new ArrayList<>();
        List<Band> bestBands = new ArrayList<>();
        for (int i = 0; i < minutes.length; i++) {
            hours.add((minutes[i] - minutes[0]) / 60.0);
            ownBands.add(Belief.band(own[variable.ordinal()][i], weights));
            bestBands.add(Belief.band(best[variable.ordinal()][i], weights));
        }
        return new Verdict.Path(
                variable,
                hours,
                ownBands,
                bestBands,
                guidance(variable),
                (scored.rollout().acts() - now.minute()) / 60.0,
                fromLog(variable));
    }

    private Variable variable(Losses losses, int ownOption, int bestOption) {
        if (scored.belief().scenario().fish() == null
                && !scored.book().fishIn()
                && !stocks(ownOption)
                && !stocks(bestOption)) {
            return Variable.TOTAL_AMMONIA;
        }
        int worst = 0;
        for (int o = 0; o < losses.options(); o++) {
            worst = losses.mean(o) > losses.mean(worst) ? o : worst;
        }
        int other = ownOption == bestOption ? worst : ownOption;
        double most = 0.02;
        Variable found = null;
        for (Stressor cause : Stressor.values()) {
            double more = losses.meanDeaths(other, cause) - losses.meanDeaths(bestOption, cause);
            Variable v = of(cause);
            if (v != null && more > most) {
                most = more;
                found = v;
            }
        }
        if (found != null) {
            return found;
        }
        double ammonia = peakShare(Variable.TOXIC_AMMONIA);
        double nitrite = peakShare(Variable.EFFECTIVE_NITRITE);
        return ammonia >= nitrite ? Variable.TOXIC_AMMONIA : Variable.EFFECTIVE_NITRITE;
    }

    private boolean stocks(int option) {
        return scored.options().get(option).stock() > 0;
    }

    private static @org.jspecify.annotations.Nullable Variable of(Stressor cause) {
        return switch (cause) {
            case AMMONIA -> Variable.TOXIC_AMMONIA;
            case NITRITE -> Variable.EFFECTIVE_NITRITE;
            case LOW_OXYGEN -> Variable.OXYGEN;
            case CHLORINE -> Variable.CHLORINE;
            case PH, TEMPERATURE -> null;
        };
    }

    /** The highest median under the choice, as a share of guidance. */
    double peakShare(Variable variable) {
        return peak(variable, false).middle() / guidance(variable);
    }

    /** The band at the hour at which the median stands highest. @param underBest under the best option, not the choice */
    Band peak(Variable variable, boolean underBest) {
        double[] weights = scored.belief().waterWeights();
        Band peak = new Band(0, 0, 0);
        for (double[] values : (underBest ? best : own)[variable.ordinal()]) {
            Band band = Belief.band(values, weights);
            peak = band.middle() > peak.middle() ? band : peak;
        }
        return peak;
    }

    /** Days from the visit until the median under the choice first passes guidance; NaN where it never does. */
    double daysToHarm(Variable variable) {
        double[] weights = scored.belief().waterWeights();
        for (int i = 0; i < minutes.length; i++) {
            if (Belief.band(own[variable.ordinal()][i], weights).middle() > guidance(variable)) {
                return (minutes[i] - minutes[0]) / (double) Calendar.DAY;
            }
        }
        return Double.NaN;
    }

    /** Fall of the alkalinity under the choice alone, until somebody acts again, mg/L as CaCO3 a day; rising is below 0. */
    double alkalinityFallPerDay() {
        double[] weights = scored.belief().waterWeights();
        int acts = scored.rollout().acts();
        int last = 0;
        while (last + 1 < minutes.length && minutes[last + 1] <= acts) {
            last++;
        }
        double first = Belief.band(alkalinity[0], weights).middle();
        double days = (minutes[last] - minutes[0]) / (double) Calendar.DAY;
        return days > 0 ? (first - Belief.band(alkalinity[last], weights).middle()) / days : 0;
    }

    /** The alkalinity when the choice is done, mg/L as CaCO3. */
    Band alkalinityNow() {
        return Belief.band(alkalinity[0], scored.belief().waterWeights());
    }

    double guidance(Variable variable) {
        Species species = scored.belief().water(0).sim().draw().parameters().species();
        if (species == null || variable == Variable.TOTAL_AMMONIA) {
            return 4;
        }
        Species.Guidance g = species.guidance();
        return switch (variable) {
            case TOXIC_AMMONIA -> g.ammoniaMgPerL();
            case EFFECTIVE_NITRITE -> g.nitriteMgPerL();
            case OXYGEN -> g.oxygenMgPerL();
            case CHLORINE -> g.chlorineMgPerL();
            case TOTAL_AMMONIA -> 4;
        };
    }

    private double fromLog(Variable variable) {
        Notebook book = scored.book();
        return switch (variable) {
            case TOXIC_AMMONIA -> book.toxicAmmonia();
            case EFFECTIVE_NITRITE ->
                book.value(Pad.NITRITE)
                        / (1 + book.value(Pad.CHLORIDE, book.scenario().source().chlorideMgPerL()) / speciesHalf());
            case OXYGEN -> book.oxygenMgPerL();
            case TOTAL_AMMONIA -> book.value(Pad.AMMONIA);
            case CHLORINE -> book.value(Pad.CHLORINE);
        };
    }

    private double speciesHalf() {
        Species species = scored.belief().water(0).sim().draw().parameters().species();
        return species == null ? 1 : species.chlorideHalfMgPerL();
    }
}
