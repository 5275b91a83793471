package startwater.tank;

import static startwater.tank.TankLayout.*;

import org.jspecify.annotations.Nullable;
import startwater.fish.Species;
import startwater.quantity.Powers;
import startwater.water.CarbonateSystem;

/**
 * The production stepper: an exponential rule that predicts the end of a step from the rates of its start, takes the
 * rates there and corrects. Every quantity is written y' = P(t) - L(t) y and solved in closed form with P and L on straight
 * lines, see {@link Relaxation}; excretion and damage are solved exactly. Nitrogen is handed on by difference - what
 * ammonia loses to oxidation is what nitrite gains - so nitrogen and alkalinity close to rounding. What the correction
 * moves sets the length of the step; it follows from the state alone. One object per thread.
 */
public final class FastStepper implements Stepper {
    private static final double MINUTE = 1.0 / 1440;
    private static final double FIRST_STEP = 240 * MINUTE;
    /** How much unrest of carbon and oxygen shortens the first step. */
    private static final double UNREST = 40;

    private static final double LEAST_FIRST_STEP = 5 * MINUTE;
    private static final double LONGEST_STEP = 200 * MINUTE;
    private static final double SHORTEST_STEP = MINUTE / 4;
    /** Below this oxygen, mg/L, minutes matter. */
    private static final double SCARCE_OXYGEN = 2.5;

    /** Below this oxygen, mg/L, fish eat less and a meal hangs on it. */
    private static final double APPETITE_FALLS_OXYGEN = 4.2;

    private static final double STEP_WHEN_SCARCE = 2 * MINUTE;
    /** How much longer or shorter the next step may be, and what is held back. */
    private static final double MOST_GROWTH = 4;

    private static final double LEAST_GROWTH = 0.2;
    private static final double SAFETY = 0.9;
    /** Corrections, in tolerances, beyond which a step is tried again, and beyond which rates are taken anew at its end. */
    private static final double REJECTED = 3;

    private static final double RENEWED = 2;
    /** What a correction may move of each quantity above its floor, and of the hazard. */
    private static final double NITROGEN_TOLERANCE = 0.003;

    private static final double OXYGEN_TOLERANCE = 0.01;
    private static final double OXYGEN_TOLERANCE_WHEN_FALLING = 0.0002;
    private static final double CARBON_TOLERANCE = 0.05;
    /** What h may move, as a share, times the toxic ammonia that goes with it, mg N/L. */
    private static final double H_TOLERANCE = 0.0015;

    private static final double MILD_AMMONIA = 0.1;
    private static final double HAZARD_TOLERANCE = 1.2e-5;
    /** Where many die, errors add up: how much less is allowed at a hazard of 1 per day. */
    private static final double STRICT_WHEN_DYING = 3;

    /** Shares by which a correction may move oxygen and h at the end of an interval before it is made once more. */
    private static final double POLISHED_OXYGEN = 0.0005;

    private static final double POLISHED_H = 0.002;
    private static final double NITROGEN_FLOOR = 0.03;
    private static final double OXYGEN_FLOOR = 1;
    private static final double CARBON_FLOOR = 0.2;

    private static final double LONGEST_INTERVAL = 0.34;
    private static final double LONGEST_WHEN_WARMING = 0.03;
    private static final double LONGEST_WHEN_DRIFTING = 0.125;
    private static final double DRIFTED_C = 0.005;
    private static final double WARMING_C = 0.5;
    private static final double DRIFTING_C = 0.2;
    /** Beyond this share of h the first warm step towards it is followed by a second. */
    private static final double FAR_IN_H = 0.05;

    private Kinetics before = new Kinetics();
    private Kinetics after = new Kinetics();
    private final Casualties casualties = new Casualties();
    private final GutStep gut = new GutStep();
    private final WaterStep water = new WaterStep();
    private double[] now = new double[0];
    private double[] guess = now;
    private double[] next = now;
    private @Nullable IntervalConstants constants;
    private @Nullable SystemTerms system;
    private double afterC;
    private int steps;

    /** Steps tried since this stepper was made: what a run costs, told without a clock. */
    int steps() {
        return steps;
    }

    @Override
    public void advanceSmoothly(double[] y, TankParameters p, Controls c, double days) {
        SystemTerms terms = ready(y, p);
        ChlorineReactions.combine(y);
        System.arraycopy(y, 0, now, 0, y.length);
        double left = days;
        double rest = c.restsAtC(p);
        double rate = c.temperatureRatePerDay(p);
        while (left > 1e-12) {
            double span = Math.min(left, longestInterval(now, rest));
            double temperature = now[TEMPERATURE];
            double x = rate * span;
            double fall = Powers.quickExp(-x);
            double away = temperature - rest;
            double end = rest + away * fall;
            double mean = x > 0 ? rest + away * (1 - fall) / x : temperature;
            IntervalConstants k = IntervalConstants.of(terms, c, now, mean, constants);
            constants = k;
            if (drifted(k, temperature)) {
                settleH(k.carbonate);
            }
            interval(p, c, k, span, rest, rate);
            now[TEMPERATURE] = end;
            if (drifted(k, end)) {
                settleH(k.carbonateAt(end));
            }
            double used = Kinetics.ACCLIMATION_PER_DAY;
            now[ACCLIMATED_C] = Relaxation.end(
                    now[ACCLIMATED_C], used * (temperature + end) / 2, used * (end - temperature), used, span);
            left -= span;
        }
        System.arraycopy(now, 0, y, 0, y.length);
    }

    /** Within an interval pH goes by its middle temperature, between intervals by the present one. */
    private static boolean drifted(IntervalConstants k, double temperatureC) {
        return Math.abs(temperatureC - k.temperatureC) > DRIFTED_C;
    }

    private void settleH(CarbonateSystem carbonate) {
        now[H_ION] = carbonate.newtonStep(now[ALKALINITY], now[DIC], now[TAN], now[H_ION]);
    }

    /** Constants of one system do not serve another. */
    private SystemTerms ready(double[] y, TankParameters p) {
        SystemTerms terms = system;
        if (terms == null || !terms.serve(p)) {
            terms = SystemTerms.of(p);
            system = terms;
            constants = null;
        }
        if (now.length != y.length) {
            now = new double[y.length];
            guess = new double[y.length];
            next = new double[y.length];
        }
        return terms;
    }

    private static double longestInterval(double[] y, double restsAtC) {
        double away = Math.abs(restsAtC - y[TEMPERATURE]);
        return away > WARMING_C ? LONGEST_WHEN_WARMING : away > DRIFTING_C ? LONGEST_WHEN_DRIFTING : LONGEST_INTERVAL;
    }

    private void interval(
            TankParameters p, Controls c, IntervalConstants k, double span, double restC, double temperatureRate) {
        double away = now[TEMPERATURE] - restC;
        Species species = p.species();
        if (species != null) {
            casualties.prepare(now, p, species, k.ammoniaScale);
        }
        rates(before, now, p, k);
        double done = 0;
        double longest = Math.max(LEAST_FIRST_STEP, FIRST_STEP / (1 + UNREST * unrest(k)));
        while (span - done > 1e-12) {
            if (now[OXYGEN] < SCARCE_OXYGEN && now[STOCKED] > 0) {
                longest = Math.min(longest, STEP_WHEN_SCARCE);
            }
            double remaining = span - done;
            double dt = remaining <= longest ? remaining : remaining / Math.ceil(remaining / longest - 1e-9);
            afterC = away == 0 ? restC : restC + away * Powers.quickExp(-temperatureRate * (done + dt));
            double error = step(p, c, k, dt);
            steps++;
            double growth = SAFETY / StrictMath.sqrt(Math.max(error, 1e-6));
            longest = Math.min(LONGEST_STEP, dt * Math.min(MOST_GROWTH, Math.max(LEAST_GROWTH, growth)));
            longest = Math.max(SHORTEST_STEP, longest);
            if (!(error > REJECTED && dt > SHORTEST_STEP)) {
                done += dt;
                if (!(span - done > 1e-12)) {
                    polish(p, c, k, dt);
                }
                accept(p, k, !c.air() || error > RENEWED);
            }
        }
    }

    /** How far carbon and oxygen lie from where the air draws them, as shares. */
    private double unrest(IntervalConstants k) {
        double kLa = k.kLaCo2PerDay;
        double drawn = before.carbonMade + kLa * before.co2PerAlkalinity * now[ALKALINITY];
        double loss = kLa * before.co2PerDic;
        double carbon = Math.abs(drawn / loss - now[DIC]) / now[DIC];
        double oxygen =
                Math.abs(k.kLaPerDay * (before.oxygenSaturation - now[OXYGEN]) - before.oxygenLoss * now[OXYGEN])
                        / (k.kLaPerDay * (1 + now[OXYGEN]));
        return carbon + oxygen;
    }

    /** Takes the step; its last rates serve the next one, unless the correction has moved too far from them. */
    private void accept(TankParameters p, IntervalConstants k, boolean renew) {
        double[] old = now;
        now = next;
        next = old;
        if (renew) {
            rates(before, now, p, k);
        } else {
            Kinetics start = before;
            before = after;
            after = start;
        }
    }

    /** One step from {@code now} to {@code next}. @return how far the correction moved, in tolerances */
    private double step(TankParameters p, Controls c, IntervalConstants k, double dt) {
        boolean stocked = now[STOCKED] > 0;
        System.arraycopy(now, 0, guess, 0, now.length);
        guess[TEMPERATURE] = afterC;
        water.over(now, before, c, k, dt);
        if (stocked) {
            gut.over(dt);
            gut.carry(now, guess, before, before, p.volumeL(), casualties.guess(now, guess, before.exposure, dt));
        } else {
            gut.none();
        }
        water.carry(now, now, guess, p, c, k, before, before, gut);
        guess[H_ION] = settled(k.carbonate, guess, now[H_ION]);
        correct(p, c, k, dt, stocked);
        double doubt = stocked ? casualties.doubt(next, before.exposure, after.exposure, dt) : 0;
        double dying = casualties.lately();
        double strict = 1 + STRICT_WHEN_DYING * Math.min(2, dying * dying);
        return Math.max(strict * doubt / HAZARD_TOLERANCE, correction(c.air()));
    }

    /** From {@code now} to {@code next} with the rates of {@code guess} at the end. */
    private void correct(TankParameters p, Controls c, IntervalConstants k, double dt, boolean stocked) {
        rates(after, guess, p, k);
        System.arraycopy(now, 0, next, 0, now.length);
        next[TEMPERATURE] = afterC;
        if (stocked) {
            double living = casualties.step(now, next, before.exposure, after.exposure, dt);
            gut.carry(now, next, before, after, p.volumeL(), living);
        }
        water.carry(now, guess, next, p, c, k, before, after, gut);
        water.rest(now, next, p, c, k);
        next[H_ION] = k.carbonate.newtonStep(next[ALKALINITY], next[DIC], next[TAN], guess[H_ION]);
        next[STRESS] += dt * (before.stress + after.stress) / 2;
        next[DELAY] += dt * (before.delay + after.delay) / 2;
    }

    /**
     * At the end of an interval a meal may hang on oxygen and pH, which follow at once what moves them: where the
     * correction has moved them, it is made once more.
     */
    private void polish(TankParameters p, Controls c, IntervalConstants k, double dt) {
        if (now[STOCKED] > 0 && (moved(OXYGEN, 0) > POLISHED_OXYGEN || moved(H_ION, 0) > POLISHED_H)) {
            double[] corrected = next;
            next = guess;
            guess = corrected;
            correct(p, c, k, dt, true);
        }
    }

    private static void rates(Kinetics to, double[] y, TankParameters p, IntervalConstants k) {
        to.rates(y, p, k, y[H_ION]);
        Species species = p.species();
        to.stress = species != null && y[STOCKED] > 0
                ? to.quickStress(species, y[OXYGEN], y[TEMPERATURE] - y[ACCLIMATED_C])
                : 0;
    }

    private static double settled(CarbonateSystem carbonate, double[] y, double warm) {
        double h = carbonate.newtonStep(y[ALKALINITY], y[DIC], y[TAN], warm);
        return Math.abs(h - warm) > FAR_IN_H * h ? carbonate.newtonStep(y[ALKALINITY], y[DIC], y[TAN], h) : h;
    }

    /** The greatest of the corrections, in tolerances. */
    private double correction(boolean air) {
        double nitrogen = Math.max(moved(TAN, NITROGEN_FLOOR), moved(NITRITE, NITROGEN_FLOOR)) / NITROGEN_TOLERANCE;
        double carbon = Math.max(moved(DIC, CARBON_FLOOR), moved(ALKALINITY, CARBON_FLOOR)) / CARBON_TOLERANCE;
        double oxygen = moved(OXYGEN, OXYGEN_FLOOR)
                / (air && next[OXYGEN] > APPETITE_FALLS_OXYGEN ? OXYGEN_TOLERANCE : OXYGEN_TOLERANCE_WHEN_FALLING);
        return Math.max(
                Math.max(nitrogen, carbon),
                Math.max(oxygen, moved(H_ION, 0) * Math.max(MILD_AMMONIA, after.toxicAmmonia) / H_TOLERANCE));
    }

    private double moved(int at, double floor) {
        return Math.abs(next[at] - guess[at]) / (floor + next[at]);
    }
}
