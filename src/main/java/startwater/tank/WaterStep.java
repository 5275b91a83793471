package startwater.tank;

import static startwater.tank.TankLayout.*;

import org.jspecify.annotations.Nullable;
import startwater.biofilter.Nitrification;
import startwater.quantity.Molar;

/**
 * The water and the filter over one step. {@link #over} works out all that hangs on the start alone; {@link #carry} then
 * goes once over the step, for a first guess or for the corrected end. Nitrogen is handed on by difference - what ammonia
 * loses to oxidation is what nitrite gains - so nitrogen and alkalinity close to rounding. A scratch pad: one per thread.
 */
final class WaterStep {
    private final Response organic = new Response();
    private final Response ammonia = new Response();
    private final Response nitrite = new Response();
    private final Response carbon = new Response();
    private final Response oxygen = new Response();
    private final Response exchanged = new Response();
    // What belongs to the step and to its start.
    private double dt;
    private double q;
    private double inflow;
    private double carbonPull;
    private double carbonPush;
    private double oxygenPush;
    private double oxidation;
    // What the last pass handed on, mg N/L: to ammonia from solids and chloramine, to nitrite, to nitrate, out.
    private double solidsRise;
    private double oxidised;
    private double toNitrate;
    private double out;
    private double taken;
    // How much oxidation of ammonia rises over the step, mg N/L/d, and how far alkalinity bends, meq/L.
    private double oxidationRise;
    private double alkalinityBend;

    /** Takes a step of {@code days} from {@code now}, where the rates are {@code start}. */
    void over(double[] now, Kinetics start, Controls c, IntervalConstants k, double days) {
        dt = days;
        q = c.exchangePerDay();
        inflow = c.inflowPerDay();
        SourceWater in = c.source();
        organic.over(start.mineralisationLoss + start.trapping + q, days);
        ammonia.over(start.ammoniaSlope + q, days);
        nitrite.over(start.nitriteSlope + q, days);
        carbonPull = k.kLaCo2PerDay * start.co2PerDic;
        carbonPush = start.carbonMade + k.kLaCo2PerDay * start.co2PerAlkalinity * now[ALKALINITY];
        carbon.over(carbonPull + q, days);
        oxygenPush = k.kLaPerDay * start.oxygenSaturation;
        oxygen.over(k.kLaPerDay + start.oxygenSlope + q, days);
        oxidation = start.ammoniaSlope * now[TAN] + start.ammoniaBend;
        if (in != null) {
            exchanged.over(q, days);
            oxygenPush += inflow * in.oxygenMgPerL();
            carbonPush += inflow * in.dicMmolPerL();
        }
    }

    /** One pass: {@code end} are the rates at the end, {@code at} is the state that they belong to. */
    void carry(
            double[] now,
            double[] at,
            double[] to,
            TankParameters p,
            Controls c,
            IntervalConstants k,
            Kinetics start,
            Kinetics end,
            GutStep gut) {
        SourceWater in = c.source();
        double mineralised = solids(now, at, to, k, start, end, p.volumeL());
        double gained = gut.excreted + mineralised;
        double produced = gained;
        if (now[COMBINED_CHLORINE] > 0) {
            produced += chloramine(now, to);
        }
        double broughtNitrite = 0;
        if (in != null) {
            produced += inflow * in.tanMgPerL() * dt;
            broughtNitrite = inflow * in.nitriteMgPerL() * dt;
        }
        ammonia(now, at, to, start, end, gut, produced);
        nitrite(now, at, to, start, end, broughtNitrite);
        taken = k.plantUptake > 0 ? plants(now, to, c, start, end) : 0;
        alkalinity(now, to, gut, in, gained);
        carbon(now, at, to, k, end, gut, in == null ? 0 : inflow * in.dicMmolPerL());
        oxygen(now, at, to, k, start, end, gut);
        if (in != null) {
            to[CHLORIDE] = exchanged.end(now[CHLORIDE], inflow * in.chlorideMgPerL(), 0);
        }
        if (now[FREE_CHLORINE] > 0) {
            to[FREE_CHLORINE] = Relaxation.end(now[FREE_CHLORINE], 0, ChlorineReactions.FREE_DECAY_PER_DAY + q, dt);
        }
        if (now[MEDICATION] > 0) {
            to[MEDICATION] = Relaxation.end(now[MEDICATION], 0, WaterJumps.DRUG_DECAY_PER_DAY + q, dt);
        }
        double half = dt / 2;
        to[AOB] = now[AOB] * Relaxation.growth(half * (start.aobGain - start.aobLoss + end.aobGain - end.aobLoss));
        to[NOB] = now[NOB] * Relaxation.growth(half * (start.nobGain - start.nobLoss + end.nobGain - end.nobLoss));
    }

    /** Organic nitrogen, in the water and in the bed. @return what of it becomes ammonia, mg N/L */
    private double solids(
            double[] now, double[] at, double[] to, IntervalConstants k, Kinetics start, Kinetics end, double volume) {
        double there = now[ORGANIC_N];
        double less = start.mineralisationLoss + start.trapping - end.mineralisationLoss - end.trapping;
        double guess = at[ORGANIC_N];
        double left = Math.max(0, organic.end(there, less * guess, less * guess, less * (there - guess)));
        double lost = there - left;
        double mineralisation = (start.mineralisationLoss + end.mineralisationLoss) / 2;
        double trapping = (start.trapping + end.trapping) / 2;
        double mineralised = share(lost, mineralisation, q + trapping);
        double trapped = share(lost - mineralised, trapping, q);
        to[ORGANIC_N] = left;
        out = lost - mineralised - trapped;
        solidsRise = end.mineralisationLoss * left - start.mineralisationLoss * there;
        if (trapped > 0 || now[HELD_N] > 0) {
            double heldLoss = (start.heldLoss + end.heldLoss) / 2;
            double held = Relaxation.end(now[HELD_N], trapped * volume / dt, heldLoss + k.fouling, dt);
            double heldLost = now[HELD_N] + trapped * volume - held;
            double heldMineralised = share(heldLost, heldLoss, k.fouling);
            mineralised += heldMineralised / volume;
            solidsRise += (end.heldLoss * held - start.heldLoss * now[HELD_N]) / volume;
            to[HELD_N] = held;
            to[LOOSE_N] = now[LOOSE_N] + heldLost - heldMineralised;
        }
        return mineralised;
    }

    /** Chloramine decays. @return the ammonia that it frees, mg N/L */
    private double chloramine(double[] now, double[] to) {
        double combined = Relaxation.end(now[COMBINED_CHLORINE], 0, ChlorineReactions.COMBINED_DECAY_PER_DAY + q, dt);
        double lost = (now[COMBINED_CHLORINE] - combined) * ChlorineReactions.NITROGEN_PER_COMBINED;
        double freed = share(lost, ChlorineReactions.COMBINED_DECAY_PER_DAY, q);
        out += lost - freed;
        to[COMBINED_CHLORINE] = combined;
        return freed;
    }

    private void ammonia(
            double[] now, double[] at, double[] to, Kinetics start, Kinetics end, GutStep gut, double produced) {
        double there = now[TAN];
        double guess = at[TAN];
        double less = start.ammoniaSlope - end.ammoniaSlope;
        if (less != 0) {
            ammonia.over((start.ammoniaSlope + end.ammoniaSlope) / 2 + q, dt);
        }
        double made = gut.rise + solidsRise;
        double rise = made + start.ammoniaBend - end.ammoniaBend + less / 2 * (there + guess);
        double last = produced / dt + made / 2 - gut.bend * (1.0 / 6) - end.ammoniaBend + less / 2 * guess;
        double tan = ammonia.end(there, last, rise, gut.bend + less / 2 * (there - guess));
        if (tan < 0) {
            tan = Relaxation.end(there, produced / dt, Math.max(start.ammoniaLoss, end.ammoniaLoss) + q, dt);
        }
        to[TAN] = tan;
        double lost = there + produced - tan;
        oxidised = share(lost, (start.ammoniaLoss + end.ammoniaLoss) / 2, q);
        out += lost - oxidised;
    }

    private void nitrite(double[] now, double[] at, double[] to, Kinetics start, Kinetics end, double brought) {
        double there = now[NITRITE];
        double guess = at[NITRITE];
        double less = start.nitriteSlope - end.nitriteSlope;
        if (less != 0) {
            nitrite.over((start.nitriteSlope + end.nitriteSlope) / 2 + q, dt);
        }
        double gained = oxidised + brought;
        double perDay = 1 / dt;
        double oxidationAtEnd = end.ammoniaSlope * to[TAN] + end.ammoniaBend;
        double made = oxidationAtEnd - oxidation;
        oxidationRise = made;
        double bend = 6 * oxidised * perDay - 3 * (oxidation + oxidationAtEnd);
        double rise = made + start.nitriteBend - end.nitriteBend + less / 2 * (there + guess);
        double last = gained * perDay + made / 2 - bend * (1.0 / 6) - end.nitriteBend + less / 2 * guess;
        double no2 = nitrite.end(there, last, rise, bend + less / 2 * (there - guess));
        if (no2 < 0) {
            no2 = Relaxation.end(there, gained * perDay, Math.max(start.nitriteLoss, end.nitriteLoss) + q, dt);
        }
        to[NITRITE] = no2;
        double lost = there + gained - no2;
        toNitrate = share(lost, (start.nitriteLoss + end.nitriteLoss) / 2, q);
        out += lost - toNitrate;
    }

    /** Nitrate that plants take up over the step, mg N/L; they give back as much alkalinity. */
    private double plants(double[] now, double[] to, Controls c, Kinetics start, Kinetics end) {
        SourceWater in = c.source();
        double gained = toNitrate + (in == null ? 0 : inflow * in.nitrateMgPerL() * dt);
        double uptake = (start.nitrateLoss + end.nitrateLoss) / 2;
        to[NITRATE] = Relaxation.end(now[NITRATE], gained / dt, q + uptake, dt);
        return share(now[NITRATE] + gained - to[NITRATE], uptake, q);
    }

    /** What nitrogen brings and takes; on its way it bends as excretion and oxidation rise. */
    private void alkalinity(double[] now, double[] to, GutStep gut, @Nullable SourceWater in, double gained) {
        double brought = (gained + taken - Nitrification.ACID_EQ_PER_MOL_N * oxidised) * (1 / Molar.N);
        double rise = (gut.rise + solidsRise - Nitrification.ACID_EQ_PER_MOL_N * oxidationRise) * (1 / Molar.N);
        alkalinityBend = -dt / 2 * rise;
        to[ALKALINITY] = in == null
                ? now[ALKALINITY] + brought
                : exchanged.end(now[ALKALINITY], brought / dt + rise / 2 + inflow * in.alkalinityMeqPerL(), rise);
    }

    /** Carbon, which the air holds tightly. */
    private void carbon(
            double[] now, double[] at, double[] to, IntervalConstants k, Kinetics end, GutStep gut, double brought) {
        double less = carbonPull - k.kLaCo2PerDay * end.co2PerDic;
        double last = end.carbonMade
                + k.kLaCo2PerDay * end.co2PerAlkalinity * to[ALKALINITY]
                + brought
                + less * at[DIC]
                + Kinetics.DIC_PER_OXYGEN * gut.breathRise;
        double bend = less / 2 * (now[DIC] - at[DIC])
                + Kinetics.DIC_PER_OXYGEN * gut.breathBend
                + k.kLaCo2PerDay * end.co2PerAlkalinity * alkalinityBend;
        to[DIC] = Math.max(0, carbon.end(now[DIC], last, last - carbonPush, bend));
    }

    private void oxygen(
            double[] now, double[] at, double[] to, IntervalConstants k, Kinetics start, Kinetics end, GutStep gut) {
        double there = now[OXYGEN];
        double guess = at[OXYGEN];
        double less = start.oxygenSlope - end.oxygenSlope;
        double warming = k.kLaPerDay * (end.oxygenSaturation - start.oxygenSaturation);
        double last = oxygenPush + warming - end.oxygenBend - gut.breathRise + less * guess;
        double rise = warming + start.oxygenBend - end.oxygenBend - gut.breathRise + less * guess;
        double oxygenAtEnd = oxygen.end(there, last, rise, less / 2 * (there - guess) - gut.breathBend);
        to[OXYGEN] = oxygenAtEnd >= 0
                ? oxygenAtEnd
                : Relaxation.end(there, oxygenPush, k.kLaPerDay + q + Math.max(start.oxygenLoss, end.oxygenLoss), dt);
    }

    /** What no rate reads within a step: nitrate and ledgers. After the last pass. */
    void rest(double[] now, double[] to, TankParameters p, Controls c, IntervalConstants k) {
        double volume = p.volumeL();
        boolean planted = k.plantUptake > 0;
        if (planted) {
            to[TAKEN_UP] = now[TAKEN_UP] + taken * volume;
        }
        SourceWater in = c.source();
        if (in == null) {
            to[NITRATE] = now[NITRATE] + toNitrate - taken;
            return;
        }
        double nitrateGained = toNitrate + inflow * in.nitrateMgPerL() * dt;
        if (!planted) {
            to[NITRATE] = exchanged.end(now[NITRATE], nitrateGained / dt, 0);
        }
        to[BROUGHT_IN] =
                now[BROUGHT_IN] + inflow * (in.tanMgPerL() + in.nitriteMgPerL() + in.nitrateMgPerL()) * dt * volume;
        if (q > 0) {
            to[EXCHANGED_OUT] =
                    now[EXCHANGED_OUT] + (out + now[NITRATE] + nitrateGained - taken - to[NITRATE]) * volume;
        }
        to[VOLUMES] = now[VOLUMES] + q * dt;
    }

    private static double share(double lost, double rate, double otherRate) {
        return otherRate == 0 ? lost : lost * (rate / (rate + otherRate));
    }
}
