package startwater.tank;

import static startwater.tank.TankLayout.*;

import org.jspecify.annotations.Nullable;
import startwater.fish.Species;
import startwater.quantity.Molar;
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
    private static final double FIRST_STEP = 40 * MINUTE;
    private static final double LONGEST_STEP = 180 * MINUTE;
    private static final double SHORTEST_STEP = MINUTE / 4;
    /** Below this oxygen, mg/L, minutes matter. */
    private static final double SCARCE_OXYGEN = 2.5;

    private static final double STEP_WHEN_SCARCE = 2 * MINUTE;
    /** How much longer or shorter the next step may be, and what is held back. */
    private static final double MOST_GROWTH = 3;

    private static final double LEAST_GROWTH = 0.2;
    private static final double SAFETY = 0.9;
    /** Corrections, in tolerances, beyond which a step is tried again, and beyond which rates are taken anew at its end. */
    private static final double REJECTED = 2.5;

    private static final double RENEWED = 0.5;
    /** What a correction may move of each quantity above its floor, and of the hazard. */
    private static final double NITROGEN_TOLERANCE = 0.0004;

    private static final double OXYGEN_TOLERANCE = 0.005;
    private static final double OXYGEN_TOLERANCE_WHEN_FALLING = 0.0003;
    private static final double CARBON_TOLERANCE = 0.02;
    private static final double H_TOLERANCE = 0.04;
    private static final double HAZARD_TOLERANCE = 5e-6;
    private static final double NITROGEN_FLOOR = 0.1;
    private static final double OXYGEN_FLOOR = 1;
    private static final double CARBON_FLOOR = 0.2;

    private static final double LONGEST_INTERVAL = 0.125;
    private static final double LONGEST_WHEN_WARMING = 0.0625;
    private static final double MOVING_C = 0.5;
    /** Beyond this share of h the first warm step towards it is followed by a second. */
    private static final double FAR_IN_H = 0.05;

    private Kinetics before = new Kinetics();
    private Kinetics after = new Kinetics();
    private final Casualties casualties = new Casualties();
    private double[] now = new double[0];
    private double[] guess = now;
    private double[] next = now;
    private @Nullable IntervalConstants constants;
    private @Nullable TankParameters lastParameters;
    // What the gut passes on over a step, mg N.
    private double excreted;
    private double gutSlope;

    @Override
    public void advanceSmoothly(double[] y, TankParameters p, Controls c, double days) {
        ready(y, p);
        ChlorineReactions.combine(y);
        System.arraycopy(y, 0, now, 0, y.length);
        double left = days;
        double rest = c.restsAtC(p);
        double rate = c.temperatureRatePerDay(p);
        while (left > 1e-12) {
            double span = Math.min(left, longestInterval(now, rest));
            double temperature = now[TEMPERATURE];
            double end = rest + (temperature - rest) * StrictMath.exp(-rate * span);
            IntervalConstants k = IntervalConstants.of(p, c, now, (temperature + end) / 2, constants);
            constants = k;
            interval(p, c, k, span, end);
            now[TEMPERATURE] = end;
            double used = Kinetics.ACCLIMATION_PER_DAY;
            now[ACCLIMATED_C] = Relaxation.end(
                    now[ACCLIMATED_C], used * (temperature + end) / 2, used * (end - temperature), used, span);
            left -= span;
        }
        System.arraycopy(now, 0, y, 0, y.length);
    }

    /** Constants of one system do not serve another: the very same record means the same system. */
    @SuppressWarnings("ReferenceEquality")
    private void ready(double[] y, TankParameters p) {
        if (lastParameters != p) {
            lastParameters = p;
            constants = null;
        }
        if (now.length != y.length) {
            now = new double[y.length];
            guess = new double[y.length];
            next = new double[y.length];
        }
    }

    private static double longestInterval(double[] y, double restsAtC) {
        return Math.abs(restsAtC - y[TEMPERATURE]) > MOVING_C ? LONGEST_WHEN_WARMING : LONGEST_INTERVAL;
    }

    private void interval(TankParameters p, Controls c, IntervalConstants k, double span, double endC) {
        double startC = now[TEMPERATURE];
        Species species = p.species();
        if (species != null) {
            casualties.prepare(p, species, k.ammoniaScale);
        }
        before.rates(now, p, k, now[H_ION]);
        double done = 0;
        double longest = FIRST_STEP;
        while (span - done > 1e-12) {
            if (now[OXYGEN] < SCARCE_OXYGEN && now[STOCKED] > 0) {
                longest = Math.min(longest, STEP_WHEN_SCARCE);
            }
            double remaining = span - done;
            double dt = remaining / Math.ceil(remaining / longest - 1e-9);
            double error = step(p, c, k, dt);
            double growth = SAFETY / StrictMath.sqrt(Math.max(error, 1e-6));
            longest = Math.min(LONGEST_STEP, dt * Math.min(MOST_GROWTH, Math.max(LEAST_GROWTH, growth)));
            longest = Math.max(SHORTEST_STEP, longest);
            if (!(error > REJECTED && dt > SHORTEST_STEP)) {
                done += dt;
                next[TEMPERATURE] = startC + (endC - startC) * (done / span);
                accept(p, k, error);
            }
        }
    }

    /** Takes the step; its last rates serve the next one, unless the correction has moved too far from them. */
    private void accept(TankParameters p, IntervalConstants k, double error) {
        double[] old = now;
        now = next;
        next = old;
        if (error > RENEWED) {
            before.rates(now, p, k, now[H_ION]);
        } else {
            Kinetics start = before;
            before = after;
            after = start;
        }
    }

    /** One step from {@code now} to {@code next}. @return how far the correction moved, in tolerances */
    private double step(TankParameters p, Controls c, IntervalConstants k, double dt) {
        System.arraycopy(now, 0, guess, 0, now.length);
        System.arraycopy(now, 0, next, 0, now.length);
        boolean stocked = now[STOCKED] > 0;
        double gutLeft = StrictMath.exp(-Kinetics.GUT_RATE_PER_DAY * dt);
        fish(guess, p, before, gutLeft, stocked ? casualties.guess(now, guess, before.exposure, dt) : 1, dt);
        water(now, guess, p, c, k, before, dt);
        double h = settled(k.carbonate, guess, now[H_ION]);
        guess[H_ION] = h;
        after.rates(guess, p, k, h);
        double living = stocked ? casualties.step(now, next, before.exposure, after.exposure, dt) : 1;
        fish(next, p, after, gutLeft, living, dt);
        water(guess, next, p, c, k, after, dt);
        next[H_ION] = k.carbonate.newtonStep(next[ALKALINITY], next[DIC], next[TAN], h);
        next[STRESS] += dt * (before.stress + after.stress) / 2;
        next[DELAY] += dt * (before.delay + after.delay) / 2;
        next[VOLUMES] += c.exchangePerDay() * dt;
        double doubt = stocked ? casualties.doubt(guess, before.exposure, after.exposure, dt) : 0;
        return Math.max(doubt / HAZARD_TOLERANCE, correction(c.air()));
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
                / (air && next[OXYGEN] > SCARCE_OXYGEN ? OXYGEN_TOLERANCE : OXYGEN_TOLERANCE_WHEN_FALLING);
        return Math.max(Math.max(nitrogen, carbon), Math.max(oxygen, moved(H_ION, 0) / H_TOLERANCE));
    }

    private double moved(int at, double floor) {
        return Math.abs(next[at] - guess[at]) / (floor + next[at]);
    }

    /** Gut and body: the living pass on, the dead take their share out with them. */
    private void fish(double[] to, TankParameters p, Kinetics end, double gutLeft, double living, double dt) {
        double g = Kinetics.GUT_RATE_PER_DAY;
        double gut1 = now[GUT_1] * gutLeft * living;
        double gut2 = (now[GUT_2] + g * dt * now[GUT_1]) * gutLeft * living;
        double dying = 2 * (1 - living) / (1 + living) / dt;
        double passing = g / (g + dying);
        double lost1 = now[GUT_1] - gut1;
        double lost2 = now[GUT_2] + lost1 * passing - gut2;
        double body = now[FISH_N] * living;
        double fasting = Math.min(body, (before.fastingExcretion + end.fastingExcretion) / 2 * p.volumeL() * dt);
        to[REMOVED] = now[REMOVED] + (lost1 + lost2) * (1 - passing) + now[FISH_N] - body;
        to[GUT_1] = gut1;
        to[GUT_2] = gut2;
        to[FISH_N] = body - fasting;
        excreted = (lost2 * passing + fasting) / p.volumeL();
        gutSlope = g * (gut2 - now[GUT_2]) / p.volumeL() + end.fastingExcretion - before.fastingExcretion;
    }

    /** Organic -> ammonia -> nitrite -> nitrate, then carbon, oxygen and filter. {@code at} is the state of {@code end}. */
    private void water(
            double[] at, double[] to, TankParameters p, Controls c, IntervalConstants k, Kinetics end, double dt) {
        Kinetics start = before;
        double q = c.exchangePerDay();
        double inflow = c.inflowPerDay();
        SourceWater in = c.source();
        double volume = p.volumeL();
        double out = 0;
        double mineralisation = (start.mineralisationLoss + end.mineralisationLoss) / 2;
        double trapping = (start.trapping + end.trapping) / 2;
        double organic = Relaxation.end(now[ORGANIC_N], 0, mineralisation + q + trapping, dt);
        double organicLost = now[ORGANIC_N] - organic;
        double mineralised = share(organicLost, mineralisation, q + trapping);
        double trapped = share(organicLost - mineralised, trapping, q);
        out += organicLost - mineralised - trapped;
        double heldSlope = 0;
        if (trapped > 0 || now[HELD_N] > 0) {
            double heldLoss = (start.heldLoss + end.heldLoss) / 2;
            double held = Relaxation.end(now[HELD_N], trapped * volume / dt, heldLoss + k.fouling, dt);
            double heldLost = now[HELD_N] + trapped * volume - held;
            double heldMineralised = share(heldLost, heldLoss, k.fouling);
            mineralised += heldMineralised / volume;
            heldSlope = (end.heldLoss * held - start.heldLoss * now[HELD_N]) / volume;
            to[HELD_N] = held;
            to[LOOSE_N] = now[LOOSE_N] + heldLost - heldMineralised;
        }
        double combined = Relaxation.end(now[COMBINED_CHLORINE], 0, ChlorineReactions.COMBINED_DECAY_PER_DAY + q, dt);
        double combinedLostN = (now[COMBINED_CHLORINE] - combined) * ChlorineReactions.NITROGEN_PER_COMBINED;
        double freed = share(combinedLostN, ChlorineReactions.COMBINED_DECAY_PER_DAY, q);
        out += combinedLostN - freed;
        double broughtTan = in == null ? 0 : inflow * in.tanMgPerL() * dt;
        double gained = excreted + mineralised + freed + broughtTan;
        double slope =
                gutSlope + heldSlope + end.mineralisationLoss * organic - start.mineralisationLoss * now[ORGANIC_N];
        double tan = Relaxation.end(
                now[TAN],
                at[TAN],
                gained / dt - (start.ammoniaBend + end.ammoniaBend) / 2,
                slope + start.ammoniaBend - end.ammoniaBend,
                start.ammoniaSlope + q,
                end.ammoniaSlope + q,
                dt);
        if (tan < 0) {
            tan = Relaxation.end(now[TAN], gained / dt, Math.max(start.ammoniaLoss, end.ammoniaLoss) + q, dt);
        }
        double tanLost = now[TAN] + gained - tan;
        double oxidised = share(tanLost, (start.ammoniaLoss + end.ammoniaLoss) / 2, q);
        out += tanLost - oxidised;
        double broughtNitrite = in == null ? 0 : inflow * in.nitriteMgPerL() * dt;
        double nitrite = Relaxation.end(
                now[NITRITE],
                at[NITRITE],
                (oxidised + broughtNitrite) / dt - (start.nitriteBend + end.nitriteBend) / 2,
                end.ammoniaSlope * tan
                        + end.ammoniaBend
                        - start.ammoniaSlope * now[TAN]
                        - start.ammoniaBend
                        + start.nitriteBend
                        - end.nitriteBend,
                start.nitriteSlope + q,
                end.nitriteSlope + q,
                dt);
        if (nitrite < 0) {
            nitrite = Relaxation.end(
                    now[NITRITE],
                    (oxidised + broughtNitrite) / dt,
                    Math.max(start.nitriteLoss, end.nitriteLoss) + q,
                    dt);
        }
        double nitriteLost = now[NITRITE] + oxidised + broughtNitrite - nitrite;
        double toNitrate = share(nitriteLost, (start.nitriteLoss + end.nitriteLoss) / 2, q);
        out += nitriteLost - toNitrate;
        double broughtNitrate = in == null ? 0 : inflow * in.nitrateMgPerL() * dt;
        double uptake = (start.nitrateLoss + end.nitrateLoss) / 2;
        double nitrate = Relaxation.end(now[NITRATE], (toNitrate + broughtNitrate) / dt, q + uptake, dt);
        double nitrateLost = now[NITRATE] + toNitrate + broughtNitrate - nitrate;
        double taken = uptake == 0 ? 0 : share(nitrateLost, uptake, q);
        out += nitrateLost - taken;
        to[TAKEN_UP] = now[TAKEN_UP] + taken * volume;
        to[BROUGHT_IN] = now[BROUGHT_IN] + (broughtTan + broughtNitrite + broughtNitrate) * volume;
        if (q > 0) {
            to[EXCHANGED_OUT] = now[EXCHANGED_OUT] + out * volume;
        }
        to[ORGANIC_N] = organic;
        to[COMBINED_CHLORINE] = combined;
        to[FREE_CHLORINE] = Relaxation.end(now[FREE_CHLORINE], 0, ChlorineReactions.FREE_DECAY_PER_DAY + q, dt);
        to[TAN] = tan;
        to[NITRITE] = nitrite;
        to[NITRATE] = nitrate;
        double alkalinity = now[ALKALINITY] + (excreted + mineralised + taken - 2 * oxidised) / Molar.N;
        to[ALKALINITY] = in == null ? alkalinity : Relaxation.end(alkalinity, inflow * in.alkalinityMeqPerL(), q, dt);
        if (in != null) {
            to[CHLORIDE] = Relaxation.end(now[CHLORIDE], inflow * in.chlorideMgPerL(), q, dt);
        }
        if (now[MEDICATION] > 0) {
            to[MEDICATION] = Relaxation.end(now[MEDICATION], 0, WaterJumps.DRUG_DECAY_PER_DAY + q, dt);
        }
        double gas0 = k.kLaCo2PerDay * start.co2PerDic;
        double gas1 = k.kLaCo2PerDay * end.co2PerDic;
        double brought = in == null ? 0 : inflow * in.dicMmolPerL();
        double made0 = start.carbonMade + k.kLaCo2PerDay * start.co2PerAlkalinity * now[ALKALINITY];
        double made1 = end.carbonMade + k.kLaCo2PerDay * end.co2PerAlkalinity * to[ALKALINITY];
        to[DIC] =
                Relaxation.end(now[DIC], at[DIC], (made0 + made1) / 2 + brought, made1 - made0, gas0 + q, gas1 + q, dt);
        double broughtOxygen = in == null ? 0 : inflow * in.oxygenMgPerL();
        double loss = k.kLaPerDay + q;
        double gas = k.kLaPerDay * k.oxygenSaturation + broughtOxygen;
        double oxygen = Relaxation.end(
                now[OXYGEN],
                at[OXYGEN],
                gas - (start.oxygenBend + end.oxygenBend) / 2,
                start.oxygenBend - end.oxygenBend,
                loss + start.oxygenSlope,
                loss + end.oxygenSlope,
                dt);
        to[OXYGEN] = oxygen >= 0
                ? oxygen
                : Relaxation.end(now[OXYGEN], gas, loss + Math.max(start.oxygenLoss, end.oxygenLoss), dt);
        to[AOB] = now[AOB] * Relaxation.growth(dt / 2 * (start.aobGain - start.aobLoss + end.aobGain - end.aobLoss));
        to[NOB] = now[NOB] * Relaxation.growth(dt / 2 * (start.nobGain - start.nobLoss + end.nobGain - end.nobLoss));
    }

    private static double share(double lost, double rate, double otherRate) {
        return otherRate == 0 ? lost : lost * (rate / (rate + otherRate));
    }
}
