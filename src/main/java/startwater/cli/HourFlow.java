package startwater.cli;

import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import startwater.tank.Controls;
import startwater.tank.SourceWater;
import startwater.tank.TankEvent;
import startwater.tank.TankFlows;
import startwater.tank.TankLayout;
import startwater.tank.TankParameters;
import startwater.water.Chlorine;

/** What moves in a tank over an hour, whole system: its rate while time passes, and what an event moves at once. */
enum HourFlow {
    EXCRETION("mg N/h", TankFlows::excretedMgN),
    MINERALISATION("mg N/h", TankFlows::mineralisedMgN),
    TRAPPING("mg N/h", TankFlows::trappedMgN),
    HELD_MINERALISATION("mg N/h", TankFlows::heldMineralisedMgN),
    LOOSENING("mg N/h", TankFlows::loosenedMgN),
    PLANT_UPTAKE("mg N/h", TankFlows::takenUpMgN),
    AMMONIA_OXIDATION("mg N/h", TankFlows::ammoniaOxidisedMgN),
    NITRITE_OXIDATION("mg N/h", TankFlows::nitriteOxidisedMgN),
    OXYGEN_FROM_AIR("mg/h", TankFlows::oxygenFromAirMg),
    OXYGEN_USED("mg/h", TankFlows::oxygenUsedMg),
    CARBON_FROM_AIR("mmol/h", TankFlows::carbonFromAirMmol),
    CARBON_MADE("mmol/h", TankFlows::carbonMadeMmol),
    FEED_OFFERED("g/h", TankEvent.Meal.class, (from, to, p) -> TankFlows.feedG(rise(TankLayout.FED, from, to), p)),
    FEED_EATEN(
            "g/h",
            TankEvent.Meal.class,
            (from, to, p) -> TankFlows.feedG(rise(TankLayout.FED, from, to), p) - rise(TankLayout.UNEATEN_G, from, to)),
    SOLIDS_FROM_MEALS("mg N/h", TankEvent.Meal.class, (from, to, p) -> amount(TankLayout.ORGANIC_N, from, to, p)),
    SOLIDS_REMOVED("mg N/h", TankEvent.RemoveSolids.class, (from, to, p) -> -amount(TankLayout.ORGANIC_N, from, to, p)),
    HELD_REMOVED("mg N/h", TankEvent.CleanMedia.class, (from, to, p) -> -rise(TankLayout.HELD_N, from, to)),
    FLUSHED_AMMONIA("mg N/h", TankEvent.FlushFilter.class, (from, to, p) -> amount(TankLayout.TAN, from, to, p)),
    FLUSHED_ORGANIC("mg N/h", TankEvent.FlushFilter.class, (from, to, p) -> amount(TankLayout.ORGANIC_N, from, to, p)),
    FLUSHED_OXYGEN("mg/h", TankEvent.FlushFilter.class, (from, to, p) -> amount(TankLayout.OXYGEN, from, to, p)),
    DOSED_AMMONIA("mg N/h", TankEvent.Dosing.class, (from, to, p) -> rise(TankLayout.DOSED, from, to)),
    DOSED_ALKALINITY("meq/h", TankEvent.Dosing.class, (from, to, p) -> amount(TankLayout.ALKALINITY, from, to, p)),
    DOSED_CARBON("mmol/h", TankEvent.Dosing.class, (from, to, p) -> amount(TankLayout.DIC, from, to, p)),
    DOSED_CHLORIDE("mg/h", TankEvent.Dosing.class, (from, to, p) -> amount(TankLayout.CHLORIDE, from, to, p)),
    EXCHANGED_AMMONIA("mg N/h", HourFlow::ammoniaWithBound, s -> s.tanMgPerL() + bound(s.combinedChlorineMgPerL())),
    EXCHANGED_NITRITE("mg N/h", y -> y[TankLayout.NITRITE], SourceWater::nitriteMgPerL),
    EXCHANGED_NITRATE("mg N/h", y -> y[TankLayout.NITRATE], SourceWater::nitrateMgPerL),
    EXCHANGED_ORGANIC("mg N/h", y -> y[TankLayout.ORGANIC_N], source -> 0),
    EXCHANGED_ALKALINITY("meq/h", y -> y[TankLayout.ALKALINITY], SourceWater::alkalinityMeqPerL),
    EXCHANGED_CARBON("mmol/h", y -> y[TankLayout.DIC], SourceWater::dicMmolPerL),
    EXCHANGED_OXYGEN("mg/h", y -> y[TankLayout.OXYGEN], SourceWater::oxygenMgPerL),
    EXCHANGED_CHLORIDE("mg/h", y -> y[TankLayout.CHLORIDE], SourceWater::chlorideMgPerL);

    /** What an event of one kind moves. */
    private interface Jump {
        double of(double[] from, double[] to, TankParameters p);
    }

    private final String unit;
    private final @Nullable ToDoubleFunction<TankFlows> rate;
    private final Class<? extends TankEvent> event;
    private final @Nullable Jump jump;
    private final @Nullable ToDoubleFunction<double[]> held;
    private final @Nullable ToDoubleFunction<SourceWater> brought;

    /** Moves only while time passes. */
    HourFlow(String unit, ToDoubleFunction<TankFlows> rate) {
        this(unit, rate, TankEvent.class, null, null, null);
    }

    /** Moves only at events of one kind. */
    HourFlow(String unit, Class<? extends TankEvent> event, Jump jump) {
        this(unit, null, event, jump, null, null);
    }

    /** Moves with water that is exchanged, slowly or at once. @param held and @param brought per L */
    HourFlow(String unit, ToDoubleFunction<double[]> held, ToDoubleFunction<SourceWater> brought) {
        this(
                unit,
                null,
                TankEvent.Change.class,
                (from, to, p) -> p.volumeL() * (held.applyAsDouble(to) - held.applyAsDouble(from)),
                held,
                brought);
    }

    HourFlow(
            String unit,
            @Nullable ToDoubleFunction<TankFlows> rate,
            Class<? extends TankEvent> event,
            @Nullable Jump jump,
            @Nullable ToDoubleFunction<double[]> held,
            @Nullable ToDoubleFunction<SourceWater> brought) {
        this.unit = unit;
        this.rate = rate;
        this.event = event;
        this.jump = jump;
        this.held = held;
        this.brought = brought;
    }

    String unit() {
        return unit;
    }

    /** Its rate in this state, per hour. */
    double rate(TankFlows flows, double[] y, TankParameters p, Controls c) {
        if (rate != null) {
            return rate.applyAsDouble(flows);
        }
        SourceWater source = c.source();
        return held == null || brought == null || source == null
                ? 0
                : p.volumeL()
                        / 24
                        * ((c.exchangePerDay() + c.evaporationPerDay()) * brought.applyAsDouble(source)
                                - c.exchangePerDay() * held.applyAsDouble(y));
    }

    /** What this event moves at once. */
    double jump(double[] from, double[] to, TankParameters p, TankEvent happened) {
        return jump != null && event.isInstance(happened) ? jump.of(from, to, p) : 0;
    }

    private static double rise(int state, double[] from, double[] to) {
        return to[state] - from[state];
    }

    private static double amount(int state, double[] from, double[] to, TankParameters p) {
        return p.volumeL() * (to[state] - from[state]);
    }

    /** Ammonia and the nitrogen that chlorine has bound, mg N/L. */
    private static double ammoniaWithBound(double[] y) {
        return y[TankLayout.TAN] + bound(y[TankLayout.COMBINED_CHLORINE]);
    }

    private static double bound(double combinedChlorineMgPerL) {
        return combinedChlorineMgPerL * Chlorine.NITROGEN_MG_PER_MG_CHLORAMINE;
    }
}
