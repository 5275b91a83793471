package startwater.content;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import startwater.bench.Given;
import startwater.bench.Input;
import startwater.bench.Measure;
import startwater.bench.Unit;
import startwater.quantity.Units;
import startwater.tank.Controls;
import startwater.tank.FastStepper;
import startwater.tank.Sensitivity;
import startwater.tank.SourceWater;
import startwater.tank.TankEvent;
import startwater.tank.TankLayout;
import startwater.tank.TankParameters;
import startwater.tank.TankStart;
import startwater.water.Dose;

/**
 * How a new filter comes to life without fish, day by day, on the tank model. Ammonia is dosed at the start and, where
 * asked for, the same amount each day; alkalinity is brought back each day to what it was, so that it never holds things up.
 */
public final class StartUpRun {
    /** How long it is followed, days. */
    public static final int DAYS = 60;

    /** Bacteria that come by themselves, share of what the filter can hold: the usual prior of a drill. */
    private static final double AOB_UNSEEDED = 5e-4;

    private static final double NOB_UNSEEDED = 2e-4;
    private static final double PH = 7.8;

    static final List<Input> INPUTS = List.of(
            input("volume", Unit.LITRE, 50, 100_000, OptionalDouble.of(1000)),
            input("area", Unit.NONE, 0.1, 10_000, OptionalDouble.of(15)),
            input("temperature", Unit.CELSIUS, 5, 35, OptionalDouble.of(27)),
            input("alkalinity", Unit.MG_CACO3_PER_L, 5, 500, OptionalDouble.of(150)),
            input("ammonia", Unit.MG_N_PER_L, 0, 20, OptionalDouble.of(2)),
            input("daily", Unit.MG_N_PER_L_DAY, 0, 20, OptionalDouble.of(0)),
            input("seed", Unit.NONE, 0.1, 200, OptionalDouble.of(1)),
            input("change", Unit.PERCENT, 0, 90, OptionalDouble.of(0)),
            input("day", Unit.NONE, 0, DAYS, OptionalDouble.of(DAYS)));

    /**
     * One day of it.
     *
     * @param ammoniaMgPerL total, mg N/L, before the day's dose
     * @param nitriteMgPerL mg N/L
     * @param nitrateMgPerL mg N/L
     * @param aobPercent ammonia oxidisers, % of what the filter can hold
     * @param nobPercent nitrite oxidisers, % of what the filter can hold
     */
    public record Day(
            double ammoniaMgPerL, double nitriteMgPerL, double nitrateMgPerL, double aobPercent, double nobPercent) {}

    private final List<Day> days;
    private final double asked;

    private StartUpRun(List<Day> days, double asked) {
        this.days = List.copyOf(days);
        this.asked = asked;
    }

    private static Input input(String name, Unit unit, double low, double high, OptionalDouble preset) {
        return new Input(name, name, unit, low, high, false, false, preset);
    }

    /** The run for these inputs; those left out have their presets. @throws RefusedInputException outside the ranges */
    public static StartUpRun of(Given given) {
        Settings set = new Settings(given);
        TankParameters tank = new TankParameters(
                null, set.get("volume"), set.get("area"), 1, 1, 1, 2, 0.1, 0.4, 600e-6, 0, 0, 1, 2, Sensitivity.of(1));
        SourceWater water = SourceWater.read(set.get("temperature"), PH, set.get("alkalinity"), 0, 0, 20, 0, 0);
        double[] y = TankStart.filled(
                tank, water, Math.min(1, AOB_UNSEEDED * set.get("seed")), Math.min(1, NOB_UNSEEDED * set.get("seed")));
        dose(y, tank, set.get("ammonia"));
        FastStepper stepper = new FastStepper();
        Controls controls = Controls.running(set.get("temperature"));
        List<Day> days = new ArrayList<>(List.of(day(y, tank)));
        for (int day = 1; day <= DAYS; day++) {
            stepper.advance(y, tank, controls, 1);
            days.add(day(y, tank));
            if (set.get("change") > 0) {
                new TankEvent.Change(set.get("change") / 100, water).apply(y, tank);
            }
            dose(y, tank, set.get("daily"));
            buffer(y, tank, set.get("alkalinity"));
        }
        return new StartUpRun(days, set.get("day"));
    }

    private record Settings(Given given) {
        double get(String name) {
            Input input = INPUTS.stream()
                    .filter(one -> one.name().equals(name))
                    .findFirst()
                    .orElseThrow();
            return input.check(given.numbers().getOrDefault(name, input.preset().orElseThrow()));
        }
    }

    private static void dose(double[] y, TankParameters tank, double mgNPerL) {
        if (mgNPerL > 0) {
            double grams = mgNPerL * tank.volumeL() / Dose.AMMONIUM_CHLORIDE.tanMgPerG();
            new TankEvent.Dosing(Dose.AMMONIUM_CHLORIDE, grams).apply(y, tank);
        }
    }

    private static void buffer(double[] y, TankParameters tank, double alkalinityMgPerL) {
        double missing = Units.meqFromCaco3(alkalinityMgPerL) - y[TankLayout.ALKALINITY];
        if (missing > 0) {
            double grams = missing * tank.volumeL() / Dose.SODIUM_BICARBONATE.alkalinityMeqPerG();
            new TankEvent.Dosing(Dose.SODIUM_BICARBONATE, grams).apply(y, tank);
        }
    }

    private static Day day(double[] y, TankParameters tank) {
        return new Day(
                y[TankLayout.TAN],
                y[TankLayout.NITRITE],
                y[TankLayout.NITRATE],
                100 * y[TankLayout.AOB] / tank.aobCapacityMgPerDay(),
                100 * y[TankLayout.NOB] / tank.nobCapacityMgPerDay());
    }

    /** From the start to day {@link #DAYS}, one a day. */
    public List<Day> days() {
        return days;
    }

    /** The day that is asked for, between two days on a straight line. */
    public Day at(double day) {
        int before = (int) Math.min(DAYS - 1, StrictMath.floor(day));
        double part = day - before;
        Day a = days.get(before);
        Day b = days.get(before + 1);
        return new Day(
                between(a, b, part, Day::ammoniaMgPerL),
                between(a, b, part, Day::nitriteMgPerL),
                between(a, b, part, Day::nitrateMgPerL),
                between(a, b, part, Day::aobPercent),
                between(a, b, part, Day::nobPercent));
    }

    private static double between(Day a, Day b, double part, ToDoubleFunction<Day> what) {
        return what.applyAsDouble(a) + part * (what.applyAsDouble(b) - what.applyAsDouble(a));
    }

    /** The day on which something stands highest. */
    public int peakDay(ToDoubleFunction<Day> what) {
        int peak = 0;
        for (int day = 1; day < days.size(); day++) {
            if (what.applyAsDouble(days.get(day)) > what.applyAsDouble(days.get(peak))) {
                peak = day;
            }
        }
        return peak;
    }

    /** The first day after the nitrite peak on which ammonia and nitrite both stand under 0.5 mg N/L; {@link #DAYS} if none. */
    public int clearDay() {
        for (int day = peakDay(Day::nitriteMgPerL); day < days.size(); day++) {
            if (days.get(day).ammoniaMgPerL() < 0.5 && days.get(day).nitriteMgPerL() < 0.5) {
                return day;
            }
        }
        return DAYS;
    }

    List<Measure> measures() {
        Day then = at(asked);
        int ammoniaPeak = peakDay(Day::ammoniaMgPerL);
        int nitritePeak = peakDay(Day::nitriteMgPerL);
        return List.of(
                new Measure("ammonia", then.ammoniaMgPerL(), Unit.MG_N_PER_L),
                new Measure("nitrite", then.nitriteMgPerL(), Unit.MG_N_PER_L),
                new Measure("nitrate", then.nitrateMgPerL(), Unit.MG_N_PER_L),
                new Measure("aob_percent", then.aobPercent(), Unit.PERCENT),
                new Measure("nob_percent", then.nobPercent(), Unit.PERCENT),
                new Measure("ammonia_peak_day", ammoniaPeak, Unit.NONE),
                new Measure("ammonia_peak", days.get(ammoniaPeak).ammoniaMgPerL(), Unit.MG_N_PER_L),
                new Measure("nitrite_peak_day", nitritePeak, Unit.NONE),
                new Measure("nitrite_peak", days.get(nitritePeak).nitriteMgPerL(), Unit.MG_N_PER_L),
                new Measure("clear_day", clearDay(), Unit.NONE));
    }
}
