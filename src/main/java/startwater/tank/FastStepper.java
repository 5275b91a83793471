package startwater.tank;

import static startwater.tank.TankLayout.*;

import org.jspecify.annotations.Nullable;
import startwater.biofilter.Nitrification;
import startwater.fish.Species;
import startwater.quantity.Molar;
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
    private static final double NITROGEN_TOLERANCE = 0.0015;

    private static final double OXYGEN_TOLERANCE = 0.01;
    private static final double OXYGEN_TOLERANCE_WHEN_FALLING = 0.0002;
    private static final double CARBON_TOLERANCE = 0.05;
    private static final double H_TOLERANCE = 0.1;
    private static final double HAZARD_TOLERANCE = 1.5e-5;
    private static final double NITROGEN_FLOOR = 0.03;
    private static final double OXYGEN_FLOOR = 1;
    private static final double CARBON_FLOOR = 0.2;

    private static final double LONGEST_INTERVAL = 0.34;
    private static final double LONGEST_WHEN_WARMING = 0.0625;
    private static final double LONGEST_WHEN_DRIFTING = 0.125;
    private static final double WARMING_C = 0.5;
    private static final double DRIFTING_C = 0.2;
    /** Beyond this share of h the first warm step towards it is followed by a second. */
    private static final double FAR_IN_H = 0.05;

    private Kinetics before = new Kinetics();
    private Kinetics after = new Kinetics();
    private final Casualties casualties = new Casualties();
    private double[] now = new double[0];
    private double[] guess = now;
    private double[] next = now;
    private @Nullable IntervalConstants constants;
    private @Nullable SystemTerms system;
    // What the gut passes on over a step, mg N.
    private double excreted;
    private double afterC;
    private double gutSlope;
    private double excretionBend;
    // What the last pass over the water made nitrate of and what left with the exchange, mg N/L.
    private double toNitrate;
    private double carriedOut;
    private double taken;

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
            interval(p, c, k, span, rest, rate);
            now[TEMPERATURE] = end;
            double used = Kinetics.ACCLIMATION_PER_DAY;
            now[ACCLIMATED_C] = Relaxation.end(
                    now[ACCLIMATED_C], used * (temperature + end) / 2, used * (end - temperature), used, span);
            left -= span;
        }
        System.arraycopy(now, 0, y, 0, y.length);
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
            afterC = restC + away * Powers.quickExp(-temperatureRate * (done + dt));
            double error = step(p, c, k, dt);
            double growth = SAFETY / StrictMath.sqrt(Math.max(error, 1e-6));
            longest = Math.min(LONGEST_STEP, dt * Math.min(MOST_GROWTH, Math.max(LEAST_GROWTH, growth)));
            longest = Math.max(SHORTEST_STEP, longest);
            if (!(error > REJECTED && dt > SHORTEST_STEP)) {
                done += dt;
                accept(p, k, error);
            }
        }
    }

    /** How far carbon and oxygen lie from where the air draws them, as shares. */
    private double unrest(IntervalConstants k) {
        double kLa = k.kLaCo2PerDay;
        double drawn = before.carbonMade + kLa * before.co2PerAlkalinity * now[ALKALINITY];
        double loss = kLa * before.co2PerDic;
        double carbon = Math.abs(drawn / loss - now[DIC]) / now[DIC];
        double oxygen = Math.abs(k.kLaPerDay * (k.oxygenSaturation - now[OXYGEN]) - before.oxygenLoss * now[OXYGEN])
                / (k.kLaPerDay * (1 + now[OXYGEN]));
        return carbon + oxygen;
    }

    /** Takes the step; its last rates serve the next one, unless the correction has moved too far from them. */
    private void accept(TankParameters p, IntervalConstants k, double error) {
        double[] old = now;
        now = next;
        next = old;
        if (error > RENEWED) {
            rates(before, now, p, k);
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
        guess[TEMPERATURE] = afterC;
        next[TEMPERATURE] = afterC;
        boolean stocked = now[STOCKED] > 0;
        double gutLeft = Powers.quickExp(-Kinetics.GUT_RATE_PER_DAY * dt);
        fish(guess, p, before, gutLeft, stocked ? casualties.guess(now, guess, before.exposure, dt) : 1, dt);
        water(now, guess, p, c, k, before, dt);
        double h = settled(k.carbonate, guess, now[H_ION]);
        guess[H_ION] = h;
        rates(after, guess, p, k);
        double living = stocked ? casualties.step(now, next, before.exposure, after.exposure, dt) : 1;
        fish(next, p, after, gutLeft, living, dt);
        water(guess, next, p, c, k, after, dt);
        rest(p, c, k, dt);
        next[H_ION] = k.carbonate.newtonStep(next[ALKALINITY], next[DIC], next[TAN], h);
        next[STRESS] += dt * (before.stress + after.stress) / 2;
        next[DELAY] += dt * (before.delay + after.delay) / 2;
        double doubt = stocked ? casualties.doubt(next, before.exposure, after.exposure, dt) : 0;
        return Math.max(doubt / HAZARD_TOLERANCE, correction(c.air()));
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
        double perVolume = 1 / p.volumeL();
        gutSlope = g * (gut2 - now[GUT_2]) * perVolume + end.fastingExcretion - before.fastingExcretion;
        excretionBend = (6 * lost2 * passing / dt - 3 * g * (gut2 + now[GUT_2])) * perVolume;
    }

    /**
     * Organic -> ammonia -> nitrite, then carbon, oxygen and filter: all that the rates read. {@code at} is the state of
     * {@code end}.
     */
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
        double perDay = 1 / dt;
        double heldSlope = 0;
        if (trapped > 0 || now[HELD_N] > 0) {
            double heldLoss = (start.heldLoss + end.heldLoss) / 2;
            double held = Relaxation.end(now[HELD_N], trapped * volume * perDay, heldLoss + k.fouling, dt);
            double heldLost = now[HELD_N] + trapped * volume - held;
            double heldMineralised = share(heldLost, heldLoss, k.fouling);
            mineralised += heldMineralised / volume;
            heldSlope = (end.heldLoss * held - start.heldLoss * now[HELD_N]) / volume;
            to[HELD_N] = held;
            to[LOOSE_N] = now[LOOSE_N] + heldLost - heldMineralised;
        }
        double gained = excreted + mineralised;
        if (now[COMBINED_CHLORINE] > 0) {
            double combined =
                    Relaxation.end(now[COMBINED_CHLORINE], 0, ChlorineReactions.COMBINED_DECAY_PER_DAY + q, dt);
            double combinedLostN = (now[COMBINED_CHLORINE] - combined) * ChlorineReactions.NITROGEN_PER_COMBINED;
            double freed = share(combinedLostN, ChlorineReactions.COMBINED_DECAY_PER_DAY, q);
            out += combinedLostN - freed;
            gained += freed;
            to[COMBINED_CHLORINE] = combined;
        }
        double broughtNitrite = 0;
        if (in != null) {
            gained += inflow * in.tanMgPerL() * dt;
            broughtNitrite = inflow * in.nitriteMgPerL() * dt;
        }
        double tanNow = now[TAN];
        double slope =
                gutSlope + heldSlope + end.mineralisationLoss * organic - start.mineralisationLoss * now[ORGANIC_N];
        double tan = Relaxation.end(
                tanNow,
                at[TAN],
                gained * perDay - (start.ammoniaBend + end.ammoniaBend) / 2,
                slope + start.ammoniaBend - end.ammoniaBend,
                excretionBend,
                start.ammoniaSlope + q,
                end.ammoniaSlope + q,
                dt);
        if (tan < 0) {
            tan = Relaxation.end(tanNow, gained * perDay, Math.max(start.ammoniaLoss, end.ammoniaLoss) + q, dt);
        }
        double tanLost = tanNow + gained - tan;
        double oxidised = share(tanLost, (start.ammoniaLoss + end.ammoniaLoss) / 2, q);
        out += tanLost - oxidised;
        double nitriteNow = now[NITRITE];
        double oxidation0 = start.ammoniaSlope * tanNow + start.ammoniaBend;
        double oxidation1 = end.ammoniaSlope * tan + end.ammoniaBend;
        double oxidationBend = 6 * oxidised * perDay - 3 * (oxidation0 + oxidation1);
        double nitriteGained = oxidised + broughtNitrite;
        double nitrite = Relaxation.end(
                nitriteNow,
                at[NITRITE],
                nitriteGained * perDay - (start.nitriteBend + end.nitriteBend) / 2,
                oxidation1 - oxidation0 + start.nitriteBend - end.nitriteBend,
                oxidationBend,
                start.nitriteSlope + q,
                end.nitriteSlope + q,
                dt);
        if (nitrite < 0) {
            nitrite = Relaxation.end(
                    nitriteNow, nitriteGained * perDay, Math.max(start.nitriteLoss, end.nitriteLoss) + q, dt);
        }
        double nitriteLost = nitriteNow + nitriteGained - nitrite;
        toNitrate = share(nitriteLost, (start.nitriteLoss + end.nitriteLoss) / 2, q);
        carriedOut = out + nitriteLost - toNitrate;
        to[ORGANIC_N] = organic;
        to[TAN] = tan;
        to[NITRITE] = nitrite;
        double taken = k.plantUptake > 0 ? plants(to, c, end, dt) : 0;
        double alkalinity = now[ALKALINITY]
                + (excreted + mineralised + taken - Nitrification.ACID_EQ_PER_MOL_N * oxidised) * (1 / Molar.N);
        to[ALKALINITY] = in == null ? alkalinity : Relaxation.end(alkalinity, inflow * in.alkalinityMeqPerL(), q, dt);
        gases(at, to, c, k, end, dt);
        if (now[MEDICATION] > 0) {
            to[MEDICATION] = Relaxation.end(now[MEDICATION], 0, WaterJumps.DRUG_DECAY_PER_DAY + q, dt);
        }
        double half = dt / 2;
        to[AOB] = now[AOB] * Relaxation.growth(half * (start.aobGain - start.aobLoss + end.aobGain - end.aobLoss));
        to[NOB] = now[NOB] * Relaxation.growth(half * (start.nobGain - start.nobLoss + end.nobGain - end.nobLoss));
    }

    /** Nitrate that plants take up over the step, mg N/L; they give back as much alkalinity. */
    private double plants(double[] to, Controls c, Kinetics end, double dt) {
        double q = c.exchangePerDay();
        SourceWater in = c.source();
        double gained = toNitrate + (in == null ? 0 : c.inflowPerDay() * in.nitrateMgPerL() * dt);
        double uptake = (before.nitrateLoss + end.nitrateLoss) / 2;
        to[NITRATE] = Relaxation.end(now[NITRATE], gained / dt, q + uptake, dt);
        taken = share(now[NITRATE] + gained - to[NITRATE], uptake, q);
        return taken;
    }

    /** Carbon and oxygen, which the air holds tightly. */
    private void gases(double[] at, double[] to, Controls c, IntervalConstants k, Kinetics end, double dt) {
        Kinetics start = before;
        double q = c.exchangePerDay();
        double inflow = c.inflowPerDay();
        SourceWater in = c.source();
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
    }

    /** What no rate reads within a step: nitrate, ledgers, salt and disinfectant. */
    private void rest(TankParameters p, Controls c, IntervalConstants k, double dt) {
        double q = c.exchangePerDay();
        double volume = p.volumeL();
        if (now[FREE_CHLORINE] > 0) {
            next[FREE_CHLORINE] = Relaxation.end(now[FREE_CHLORINE], 0, ChlorineReactions.FREE_DECAY_PER_DAY + q, dt);
        }
        double plants = k.plantUptake > 0 ? taken : 0;
        next[TAKEN_UP] = now[TAKEN_UP] + plants * volume;
        SourceWater in = c.source();
        if (in == null) {
            next[NITRATE] = now[NITRATE] + toNitrate - plants;
            return;
        }
        double inflow = c.inflowPerDay();
        double nitrateGained = toNitrate + inflow * in.nitrateMgPerL() * dt;
        if (!(k.plantUptake > 0)) {
            next[NITRATE] = Relaxation.end(now[NITRATE], nitrateGained / dt, q, dt);
        }
        next[BROUGHT_IN] =
                now[BROUGHT_IN] + inflow * (in.tanMgPerL() + in.nitriteMgPerL() + in.nitrateMgPerL()) * dt * volume;
        if (q > 0) {
            double out = carriedOut + now[NITRATE] + nitrateGained - plants - next[NITRATE];
            next[EXCHANGED_OUT] = now[EXCHANGED_OUT] + out * volume;
        }
        next[CHLORIDE] = Relaxation.end(now[CHLORIDE], inflow * in.chlorideMgPerL(), q, dt);
        next[VOLUMES] += q * dt;
    }

    private static double share(double lost, double rate, double otherRate) {
        return otherRate == 0 ? lost : lost * (rate / (rate + otherRate));
    }
}
