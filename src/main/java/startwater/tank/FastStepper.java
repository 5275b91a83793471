package startwater.tank;

import static startwater.tank.TankLayout.*;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import startwater.fish.Species;
import startwater.fish.Stressor;
import startwater.quantity.Molar;
import startwater.water.CarbonateSystem;

/**
 * The production stepper: an exponential midpoint rule with two evaluations a step. Each quantity is written y' = P - L y
 * and advanced by y phi(L dt) + P dt psi(L dt) with rational phi and psi, so nothing turns negative. Nitrogen is handed
 * on by difference - what ammonia loses to oxidation is what nitrite gains - so nitrogen and alkalinity close to
 * rounding. Hazards are integrated by Simpson's rule. One object per thread.
 */
public final class FastStepper implements Stepper {
    private static final double MINUTE = 1.0 / 1440;
    private static final double STEP = 30 * MINUTE;
    private static final double SHORT_STEP = 5 * MINUTE;
    private static final double SHORTEST_STEP = MINUTE;
    /** Below this oxygen, mg/L, minutes matter. */
    private static final double SCARCE_OXYGEN = 2.5;

    private static final double TRACE_OF_DAMAGE = 1e-3;
    private static final double LONGEST_INTERVAL = 0.125;
    private static final double LONGEST_WHEN_WARMING = 0.0625;
    private static final double MOVING_C = 0.5;
    private static final double MG_N_PER_MEQ = Molar.N;

    private final Kinetics rates = new Kinetics();
    private double[] mid = new double[0];
    private double[] hazardStart = new double[0];
    private double[] hazardMid = new double[0];
    private @Nullable IntervalConstants constants;
    private @Nullable TankParameters lastParameters;

    @Override
    public void advance(double[] y, TankParameters p, Controls c, double days) {
        ready(y, p);
        ChlorineReactions.combine(y);
        double left = days;
        while (left > 1e-12) {
            double span = Math.min(left, longestInterval(y, c));
            double temperature = y[TEMPERATURE];
            double fall = StrictMath.exp(-p.temperatureRatePerDay() * span);
            double end = c.setPointC() + (temperature - c.setPointC()) * fall;
            IntervalConstants k = IntervalConstants.of(p, c, y, (temperature + end) / 2, constants);
            constants = k;
            interval(y, p, c, k, span, temperature, end);
            y[TEMPERATURE] = end;
            left -= span;
        }
        if (!c.pump()) {
            y[STAGNANT_HOURS] += 24 * days;
        }
    }

    /** Constants of one system do not serve another: the very same record means the same system. */
    @SuppressWarnings("ReferenceEquality")
    private void ready(double[] y, TankParameters p) {
        if (lastParameters != p) {
            lastParameters = p;
            constants = null;
        }
        if (mid.length != y.length) {
            mid = new double[y.length];
            hazardStart = new double[p.strata() * Stressor.COUNT];
            hazardMid = new double[p.strata() * Stressor.COUNT];
        }
    }

    private static double longestInterval(double[] y, Controls c) {
        return Math.abs(c.setPointC() - y[TEMPERATURE]) > MOVING_C ? LONGEST_WHEN_WARMING : LONGEST_INTERVAL;
    }

    private void interval(
            double[] y, TankParameters p, Controls c, IntervalConstants k, double span, double startC, double endC) {
        double done = 0;
        while (span - done > 1e-12) {
            double longest = longestStep(y, c);
            double remaining = span - done;
            double dt = remaining / Math.ceil(remaining / longest - 1e-9);
            step(y, p, c, k, dt);
            done += dt;
            y[TEMPERATURE] = startC + (endC - startC) * (done / span);
        }
    }

    private static double longestStep(double[] y, Controls c) {
        if (y[STOCKED] > 0 && y[OXYGEN] < SCARCE_OXYGEN) {
            return SHORTEST_STEP;
        }
        boolean pressed = !c.air() || y[DAMAGE + Stressor.LOW_OXYGEN.ordinal()] > TRACE_OF_DAMAGE;
        return pressed ? SHORT_STEP : STEP;
    }

    private void step(double[] y, TankParameters p, Controls c, IntervalConstants k, double dt) {
        CarbonateSystem water = k.carbonate;
        double h = y[H_ION];
        rates.evaluate(y, p, k, h);
        keepHazards(hazardStart, y);
        halfStep(y, p, c, k, dt / 2);
        double hMid = water.newtonStep(mid[ALKALINITY], mid[DIC], mid[TAN], h);
        rates.evaluate(mid, p, k, hMid);
        keepHazards(hazardMid, y);
        wholeStep(y, p, c, k, dt);
        y[H_ION] = water.newtonStep(y[ALKALINITY], y[DIC], y[TAN], hMid * hMid / h);
        if (y[STOCKED] > 0) {
            survive(y, p, k, dt);
        }
    }

    /** The state half a step on, with the rates of its start; good enough to take the rates of the middle from. */
    private void halfStep(double[] y, TankParameters p, Controls c, IntervalConstants k, double dt) {
        double q = c.exchangePerDay();
        SourceWater in = c.exchangeSource();
        System.arraycopy(y, 0, mid, 0, y.length);
        double gut = Kinetics.GUT_RATE_PER_DAY + rates.hazard;
        mid[GUT_1] = relax(y[GUT_1], 0, gut, dt);
        mid[GUT_2] = relax(y[GUT_2], Kinetics.GUT_RATE_PER_DAY * y[GUT_1], gut, dt);
        mid[ORGANIC_N] = relax(y[ORGANIC_N], 0, rates.mineralisationLoss + q, dt);
        mid[FREE_CHLORINE] = relax(y[FREE_CHLORINE], 0, ChlorineReactions.FREE_DECAY_PER_DAY + q, dt);
        mid[COMBINED_CHLORINE] = relax(y[COMBINED_CHLORINE], 0, ChlorineReactions.COMBINED_DECAY_PER_DAY + q, dt);
        double mineralised = rates.mineralisationLoss * y[ORGANIC_N];
        double freed = ChlorineReactions.COMBINED_DECAY_PER_DAY
                * y[COMBINED_CHLORINE]
                * ChlorineReactions.NITROGEN_PER_COMBINED;
        double madeAmmonia = rates.gutExcretion + rates.fastingExcretion + mineralised;
        double oxidised = rates.ammoniaLoss * y[TAN];
        mid[TAN] =
                relax(y[TAN], madeAmmonia + freed + (in == null ? 0 : q * in.tanMgPerL()), rates.ammoniaLoss + q, dt);
        mid[NITRITE] = relax(y[NITRITE], oxidised, rates.nitriteLoss + q, dt);
        mid[ALKALINITY] = y[ALKALINITY]
                + dt
                        * ((madeAmmonia - 2 * oxidised) / MG_N_PER_MEQ
                                + (in == null ? 0 : q * (in.alkalinityMeqPerL() - y[ALKALINITY])));
        mid[DIC] = carbon(y[DIC], y[DIC], c, k, dt);
        mid[OXYGEN] = oxygen(y[OXYGEN], c, k, dt);
        mid[AOB] = relax(y[AOB], rates.aobGain * y[AOB], rates.aobLoss, dt);
        mid[NOB] = relax(y[NOB], rates.nobGain * y[NOB], rates.nobLoss, dt);
        damages(y, mid, p, dt);
    }

    private double carbon(double dic, double dicOfRates, Controls c, IntervalConstants k, double dt) {
        double q = c.exchangePerDay();
        double gas = k.kLaCo2PerDay * rates.co2PerDic;
        double made = rates.respirationDic
                + k.kLaCo2PerDay * (k.co2InBalance - rates.carbonDioxide + rates.co2PerDic * dicOfRates)
                + (c.exchangeSource() == null ? 0 : q * c.exchangeSource().dicMmolPerL());
        return relax(dic, made, gas + q, dt);
    }

    private double oxygen(double oxygen, Controls c, IntervalConstants k, double dt) {
        double q = c.exchangePerDay();
        double brought = c.exchangeSource() == null ? 0 : q * c.exchangeSource().oxygenMgPerL();
        return relax(oxygen, k.kLaPerDay * k.oxygenSaturation + brought, k.kLaPerDay + rates.oxygenLoss + q, dt);
    }

    private void damages(double[] from, double[] to, TankParameters p, double dt) {
        Species species = p.species();
        if (species == null || !(from[STOCKED] > 0)) {
            return;
        }
        for (int i = 0; i < Stressor.COUNT; i++) {
            double exposure = rates.exposure[i];
            double damage = from[DAMAGE + i];
            if (exposure != 0 || damage != 0) {
                double kd = species.curves().get(i).killRatePerDay();
                to[DAMAGE + i] = relax(damage, kd * exposure, kd, dt);
            }
        }
    }

    /** The whole step with the rates of its middle; nitrogen is handed on by difference. */
    private void wholeStep(double[] y, TankParameters p, Controls c, IntervalConstants k, double dt) {
        double q = c.exchangePerDay();
        SourceWater in = c.exchangeSource();
        double volume = p.volumeL();
        // Fish: gut one -> gut two -> water; the dead take their share out with them.
        double gut = Kinetics.GUT_RATE_PER_DAY + rates.hazard;
        double passing = Kinetics.GUT_RATE_PER_DAY / gut;
        double gut1 = relax(y[GUT_1], 0, gut, dt);
        double lost1 = y[GUT_1] - gut1;
        double gut2 = relax(y[GUT_2], lost1 * passing / dt, gut, dt);
        double lost2 = y[GUT_2] + lost1 * passing - gut2;
        double living = relax(y[FISH_N], 0, rates.hazard, dt);
        double fasting = Math.min(living, rates.fastingExcretion * volume * dt);
        double excreted = (lost2 * passing + fasting) / volume;
        y[REMOVED] += (lost1 + lost2) * (1 - passing) + y[FISH_N] - living;
        y[GUT_1] = gut1;
        y[GUT_2] = gut2;
        y[FISH_N] = living - fasting;
        // Water: organic -> ammonia -> nitrite -> nitrate.
        double out = 0;
        double organic = relax(y[ORGANIC_N], 0, rates.mineralisationLoss + q, dt);
        double organicLost = y[ORGANIC_N] - organic;
        double mineralised = share(organicLost, rates.mineralisationLoss, q);
        out += organicLost - mineralised;
        double combined = relax(y[COMBINED_CHLORINE], 0, ChlorineReactions.COMBINED_DECAY_PER_DAY + q, dt);
        double combinedLostN = (y[COMBINED_CHLORINE] - combined) * ChlorineReactions.NITROGEN_PER_COMBINED;
        double freed = share(combinedLostN, ChlorineReactions.COMBINED_DECAY_PER_DAY, q);
        out += combinedLostN - freed;
        double broughtTan = in == null ? 0 : q * in.tanMgPerL() * dt;
        double gained = excreted + mineralised + freed + broughtTan;
        double tan = relax(y[TAN], gained / dt, rates.ammoniaLoss + q, dt);
        double tanLost = y[TAN] + gained - tan;
        double oxidised = share(tanLost, rates.ammoniaLoss, q);
        out += tanLost - oxidised;
        double broughtNitrite = in == null ? 0 : q * in.nitriteMgPerL() * dt;
        double nitrite = relax(y[NITRITE], (oxidised + broughtNitrite) / dt, rates.nitriteLoss + q, dt);
        double nitriteLost = y[NITRITE] + oxidised + broughtNitrite - nitrite;
        double toNitrate = share(nitriteLost, rates.nitriteLoss, q);
        out += nitriteLost - toNitrate;
        double broughtNitrate = in == null ? 0 : q * in.nitrateMgPerL() * dt;
        double nitrate = relax(y[NITRATE], (toNitrate + broughtNitrate) / dt, q, dt);
        out += y[NITRATE] + toNitrate + broughtNitrate - nitrate;
        y[BROUGHT_IN] += (broughtTan + broughtNitrite + broughtNitrate) * volume;
        if (q > 0) {
            y[EXCHANGED_OUT] += out * volume;
        }
        double dic = carbon(y[DIC], mid[DIC], c, k, dt);
        double oxygen = oxygen(y[OXYGEN], c, k, dt);
        y[ORGANIC_N] = organic;
        y[COMBINED_CHLORINE] = combined;
        y[FREE_CHLORINE] = relax(y[FREE_CHLORINE], 0, ChlorineReactions.FREE_DECAY_PER_DAY + q, dt);
        y[TAN] = tan;
        y[NITRITE] = nitrite;
        y[NITRATE] = nitrate;
        y[ALKALINITY] += (excreted + mineralised - 2 * oxidised) / MG_N_PER_MEQ;
        if (in != null) {
            y[ALKALINITY] = relax(y[ALKALINITY], q * in.alkalinityMeqPerL(), q, dt);
            y[CHLORIDE] = relax(y[CHLORIDE], q * in.chlorideMgPerL(), q, dt);
        }
        y[DIC] = dic;
        y[OXYGEN] = oxygen;
        y[AOB] = relax(y[AOB], rates.aobGain * mid[AOB], rates.aobLoss, dt);
        y[NOB] = relax(y[NOB], rates.nobGain * mid[NOB], rates.nobLoss, dt);
        y[STRESS] += rates.stress * dt;
        y[DELAY] += rates.delay * dt;
        y[VOLUMES] += q * dt;
        damages(y, y, p, dt);
    }

    private void survive(double[] y, TankParameters p, IntervalConstants k, double dt) {
        Species species = Objects.requireNonNull(p.species());
        for (int s = 0; s < p.strata(); s++) {
            double sum = 0;
            for (int i = 0; i < Stressor.COUNT; i++) {
                double damage = y[DAMAGE + i];
                int at = s * Stressor.COUNT + i;
                if (damage > 0 || hazardMid[at] > 0 || hazardStart[at] > 0) {
                    double scale = p.sensitivity().at(s) * (i == 0 ? k.ammoniaScale : 1);
                    double end = species.curves().get(i).hazardPerDay(damage, scale);
                    double grown = dt * (hazardStart[at] + 4 * hazardMid[at] + end) / 6;
                    y[survivors(s) + 1 + i] += grown;
                    sum += grown;
                }
            }
            y[survivors(s)] *= phi(sum);
        }
    }

    private void keepHazards(double[] into, double[] y) {
        if (y[STOCKED] > 0) {
            rates.copyHazards(into);
        }
    }

    private static double share(double lost, double rate, double otherRate) {
        return otherRate == 0 ? lost : lost * (rate / (rate + otherRate));
    }

    /** y after {@code dt} of y' = P - L y with constant P and L: y phi(L dt) + P dt psi(L dt). */
    private static double relax(double y, double production, double loss, double dt) {
        double x = loss * dt;
        double half = 1 + x * (0.5 + x * (1.0 / 6 + x / 24));
        double phi = 1 / (1 + x * half);
        return (y + production * dt * half) * phi;
    }

    /** Rational exp(-x), positive for every x of 0 or more. */
    private static double phi(double x) {
        return 1 / (1 + x * (1 + x * (0.5 + x * (1.0 / 6 + x / 24))));
    }
}
