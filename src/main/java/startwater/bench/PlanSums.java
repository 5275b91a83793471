package startwater.bench;

import java.util.List;
import startwater.quantity.Molar;
import startwater.quantity.Units;
import startwater.water.Dose;
import startwater.water.WaterChange;

/** Sums on what comes next, and when. Each refuses what cannot be with a {@link RefusedInputException}. */
public final class PlanSums {
    private static final double MG_PER_G = 1000;
    private static final double MINUTES_PER_HOUR = 60;

    /** Alkalinity taken between feed and nitrate: two equivalents of acid less the one that came with the ammonia. */
    private static final double CACO3_PER_N = Units.MG_CACO3_PER_MEQ / Molar.N;

    private PlanSums() {}

    /**
     * What a water change leaves of a value, the three in one unit of any kind.
     *
     * @param now value in the tank
     * @param changePercent share of the water changed, %
     * @param source value in the new water
     * @return {@code after}
     */
    public static Sum afterChange(double now, double changePercent, double source) {
        SumKind kind = SumKind.AFTER_CHANGE;
        List<Measure> inputs = kind.measures(now, changePercent, source);
        double after = WaterChange.after(now, source, changePercent / 100);
        return sum(kind, inputs, List.of(new Measure("after", after, Unit.NONE)), List.of());
    }

    /**
     * Where a value settles that is made every day and carried off by steady exchange.
     *
     * @param source value in the new water
     * @param made rise in a day, in the same unit
     * @param exchangePercent share of the water exchanged in a day, %
     * @return {@code settled} value and {@code half_days} days in which half the way is made
     */
    public static Sum settle(double source, double made, double exchangePercent) {
        SumKind kind = SumKind.SETTLE;
        List<Measure> inputs = kind.measures(source, made, exchangePercent);
        double share = exchangePercent / 100;
        return sum(
                kind,
                inputs,
                List.of(
                        new Measure("settled", source + made / share, Unit.NONE),
                        new Measure("half_days", StrictMath.log(2) / share, Unit.NONE)),
                List.of());
    }

    /**
     * Days until a value that moves steadily reaches a limit.
     *
     * @param now value now
     * @param limit value not to pass, above or below
     * @param perDay how much it moves towards the limit in a day
     * @return {@code days_left} days
     */
    public static Sum until(double now, double limit, double perDay) {
        SumKind kind = SumKind.UNTIL;
        List<Measure> inputs = kind.measures(now, limit, perDay);
        double way = StrictMath.abs(limit - now);
        return sum(
                kind,
                inputs,
                List.of(new Measure("days_left", way / perDay, Unit.NONE)),
                List.of(new Measure("way", way, Unit.NONE)));
    }

    /**
     * Days until something that doubles has grown to what is needed, such as the bacteria of a young filter.
     *
     * @param now what there is
     * @param needed what is needed, in the same unit
     * @param doublingDays days in which it doubles
     * @return {@code days_left} days, 0 where there is enough
     */
    public static Sum catchUp(double now, double needed, double doublingDays) {
        SumKind kind = SumKind.CATCH_UP;
        List<Measure> inputs = kind.measures(now, needed, doublingDays);
        double doublings = StrictMath.max(0, StrictMath.log(needed / now) / StrictMath.log(2));
        return sum(
                kind,
                inputs,
                List.of(new Measure("days_left", doublings * doublingDays, Unit.NONE)),
                List.of(new Measure("doublings", doublings, Unit.NONE)));
    }

    /**
     * Minutes until fish have breathed the oxygen of their water down to a limit, with nothing gained from the air.
     *
     * @param oxygenMgPerL oxygen now, mg/L
     * @param limitMgPerL oxygen not to pass, mg/L
     * @param stockKg fish, kg
     * @param volumeL litres
     * @param useMgPerKgHour oxygen that the fish use, mg/kg/h
     * @return {@code minutes_left} min, 0 where the limit is passed already
     */
    public static Sum airOff(
            double oxygenMgPerL, double limitMgPerL, double stockKg, double volumeL, double useMgPerKgHour) {
        SumKind kind = SumKind.AIR_OFF;
        List<Measure> inputs = kind.measures(oxygenMgPerL, limitMgPerL, stockKg, volumeL, useMgPerKgHour);
        double spare = StrictMath.max(0, oxygenMgPerL - limitMgPerL);
        double minutes = spare * volumeL / (stockKg * useMgPerKgHour) * MINUTES_PER_HOUR;
        return sum(
                kind,
                inputs,
                List.of(new Measure("minutes_left", minutes, Unit.NONE)),
                List.of(new Measure("spare", spare, Unit.MG_PER_L)));
    }

    /**
     * What the feed of a day does to the water when all of it is eaten.
     *
     * @param feedG g
     * @param protein crude protein, % (or a share, where it is 1 or less)
     * @param volumeL litres of the whole system
     * @return {@code tan_rise} mg N/L of total ammonia, {@code alkalinity_used} mg/L as CaCO3 once all is nitrate
     */
    public static Sum waste(double feedG, double protein, double volumeL) {
        SumKind kind = SumKind.WASTE;
        double proteinPercent = protein <= 1 ? 100 * protein : protein;
        List<Measure> inputs = kind.measures(feedG, proteinPercent, volumeL);
        double tan = feedG * FeedSums.TAN_PER_PROTEIN * proteinPercent / 100 * MG_PER_G / volumeL;
        return sum(
                kind,
                inputs,
                List.of(
                        new Measure("tan_rise", tan, Unit.MG_N_PER_L),
                        new Measure("alkalinity_used", tan * CACO3_PER_N, Unit.MG_CACO3_PER_L)),
                List.of(
                        new Measure("tan_per_protein", FeedSums.TAN_PER_PROTEIN, Unit.NONE),
                        new Measure("caco3", CACO3_PER_N, Unit.NONE)));
    }

    /**
     * A reading that counts the whole ion, as nitrogen.
     *
     * @param ionMgPerL mg/L as ion
     * @return {@code nitrite_n}, {@code nitrate_n} and {@code ammonia_n} mg N/L, for a reading of NO2, NO3 or NH3
     */
    public static Sum asNitrogen(double ionMgPerL) {
        SumKind kind = SumKind.AS_NITROGEN;
        List<Measure> inputs = kind.measures(ionMgPerL);
        return sum(
                kind,
                inputs,
                List.of(
                        new Measure("nitrite_n", Units.nitriteNFromIon(ionMgPerL), Unit.MG_N_PER_L),
                        new Measure("nitrate_n", Units.nitrateNFromIon(ionMgPerL), Unit.MG_N_PER_L),
                        new Measure("ammonia_n", Units.nitrogenFromAmmonia(ionMgPerL), Unit.MG_N_PER_L)),
                List.of(
                        new Measure("nitrite", Units.NITRITE_ION_PER_N, Unit.NONE),
                        new Measure("nitrate", Units.NITRATE_ION_PER_N, Unit.NONE),
                        new Measure("ammonia", Units.AMMONIA_PER_N, Unit.NONE)));
    }

    /**
     * What a diluted sample says of the tank.
     *
     * @param reading strip reading of the mix, in any unit
     * @param tankParts parts of tank water in it
     * @param cleanParts parts of clean water in it
     * @return {@code undiluted} value in the tank
     */
    public static Sum dilution(double reading, double tankParts, double cleanParts) {
        SumKind kind = SumKind.DILUTION;
        List<Measure> inputs = kind.measures(reading, tankParts, cleanParts);
        double undiluted = reading * (tankParts + cleanParts) / tankParts;
        return sum(kind, inputs, List.of(new Measure("undiluted", undiluted, Unit.NONE)), List.of());
    }

    /**
     * Volume of a system from the rise of its chloride when salt is dissolved in it.
     *
     * @param saltG salt dissolved, g
     * @param riseMgPerL rise of chloride once it is mixed, mg/L
     * @return {@code true_volume} L
     */
    public static Sum volumeBySalt(double saltG, double riseMgPerL) {
        SumKind kind = SumKind.VOLUME_BY_SALT;
        List<Measure> inputs = kind.measures(saltG, riseMgPerL);
        double chloride = Dose.SODIUM_CHLORIDE.chlorideGPerG();
        return sum(
                kind,
                inputs,
                List.of(new Measure("true_volume", saltG * chloride * MG_PER_G / riseMgPerL, Unit.LITRE)),
                List.of(new Measure("chloride", chloride, Unit.NONE)));
    }

    private static Sum sum(SumKind kind, List<Measure> inputs, List<Measure> values, List<Measure> steps) {
        return new Sum(kind, inputs, values, steps, kind.working(), List.of(kind.note()));
    }
}
