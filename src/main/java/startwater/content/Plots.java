package startwater.content;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import startwater.bench.Given;
import startwater.bench.Measure;
import startwater.water.Dose;

/** Draws each kind of figure from the sums of the bench and the model of the drills. */
final class Plots {
    private static final int POINTS = 80;
    private static final int MOST_CHANGES = 8;
    /** Chloride kept as an insurance whatever the nitrite, mg/L: rule 5, sheet SRAC 462. */
    private static final double LEAST_CHLORIDE = 100;

    private Plots() {}

    private static double value(Block.Figure figure, Given given, String result) {
        return figure.kind().sum().result(given, result).value();
    }

    private static Given with(Given given, String name, double value) {
        java.util.Map<String, Double> numbers = new java.util.HashMap<>(given.numbers());
        numbers.put(name, value);
        return new Given(numbers, given.speciesId());
    }

    private static Plot.Line curve(double low, double high, boolean logarithmic, DoubleUnaryOperator f) {
        List<Plot.Point> points = new ArrayList<>();
        for (int i = 0; i <= POINTS; i++) {
            double part = (double) i / POINTS;
            double x = logarithmic ? low * StrictMath.pow(high / low, part) : low + part * (high - low);
            points.add(new Plot.Point(x, f.applyAsDouble(x)));
        }
        return new Plot.Line("", points, false);
    }

    private static double highest(Plot.Line line) {
        return line.points().stream().mapToDouble(Plot.Point::y).max().orElse(1);
    }

    static Plot toxicShare(Block.Figure figure, Given given) {
        double ph = given.numbers().getOrDefault("ph", 8.0);
        Plot.Line line = curve(6, 9.5, false, x -> 100 * value(figure, with(given, "ph", x), "fraction"));
        double share = 100 * value(figure, given, "fraction");
        return new Plot(
                Plot.Axis.even("figure.ph", 6, 9.5),
                Plot.Axis.even("figure.toxicPercent", 0, 70),
                List.of(line),
                List.of(),
                List.of(new Plot.Point(ph, share)),
                "figure.toxicSaid",
                List.of(share, value(figure, given, "nh3_n")));
    }

    static Plot chlorideNitrite(Block.Figure figure, Given given) {
        double nitrite = given.numbers().getOrDefault("nitrite", 1.0);
        double chloride = given.numbers().getOrDefault("chloride", 0.0);
        double most = figure.high("nitrite", 5);
        Plot.Line line = curve(0, most, false, x -> wanted(figure, with(given, "nitrite", x)));
        double wanted = wanted(figure, given);
        double missing = Math.max(0, wanted - chloride);
        double grams =
                missing * given.numbers().getOrDefault("volume", 1000.0) / 1000 / Dose.SODIUM_CHLORIDE.chlorideGPerG();
        double top = Math.max(highest(line), figure.high("chloride", chloride));
        return new Plot(
                Plot.Axis.fromZero("figure.nitrite", most),
                Plot.Axis.fromZero("figure.chloride", top),
                List.of(new Plot.Line("figure.chlorideWanted", line.points(), false)),
                List.of(),
                List.of(new Plot.Point(nitrite, chloride)),
                missing > 0 ? "figure.chlorideShort" : "figure.chlorideEnough",
                List.of(wanted, chloride, grams));
    }

    private static double wanted(Block.Figure figure, Given given) {
        return Math.max(LEAST_CHLORIDE, value(figure, given, "target_chloride"));
    }

    static Plot changes(Block.Figure figure, Given given) {
        double now = given.numbers().getOrDefault("now", 1.0);
        List<Plot.Point> points = new ArrayList<>(List.of(new Plot.Point(0, now)));
        double value = now;
        for (int n = 1; n <= MOST_CHANGES; n++) {
            value = value(figure, with(given, "now", value), "after");
            points.add(new Plot.Point(n, value));
        }
        return new Plot(
                Plot.Axis.fromZero("figure.times", MOST_CHANGES),
                Plot.Axis.fromZero("figure.reading", Math.max(figure.high("now", now), figure.high("source", 0))),
                List.of(new Plot.Line("", points, true)),
                List.of(),
                List.of(points.get(1)),
                "figure.changesSaid",
                List.of(points.get(1).y(), points.get(2).y(), points.get(4).y()));
    }

    static Plot daysLeft(Block.Figure figure, Given given) {
        double now = given.numbers().getOrDefault("now", 100.0);
        double limit = given.numbers().getOrDefault("limit", 0.0);
        double perDay = given.numbers().getOrDefault("per-day", 1.0) * (limit < now ? -1 : 1);
        double days = value(figure, given, "days_left");
        double horizon = Math.max(5, Math.min(60, StrictMath.ceil(1.3 * days)));
        return new Plot(
                Plot.Axis.fromZero("figure.days", horizon),
                Plot.Axis.fromZero("figure.reading", Math.max(figure.high("now", now), limit)),
                List.of(curve(0, horizon, false, x -> Math.max(0, now + perDay * x))),
                List.of(new Plot.Level("figure.limit", limit)),
                List.of(new Plot.Point(days, limit)),
                "figure.daysSaid",
                List.of(days, Math.abs(perDay)));
    }

    static Plot oxygenMinutes(Block.Figure figure, Given given) {
        double now = given.numbers().getOrDefault("oxygen", 7.0);
        double limit = given.numbers().getOrDefault("limit", 2.0);
        double minutes = value(figure, given, "minutes_left");
        double perMinute = minutes > 0 ? (now - limit) / minutes : 0;
        double horizon = Math.max(30, Math.min(720, StrictMath.ceil(1.4 * minutes / 30) * 30));
        return new Plot(
                Plot.Axis.fromZero("figure.minutes", horizon),
                Plot.Axis.fromZero("figure.oxygen", Math.max(now, figure.high("oxygen", now))),
                List.of(curve(0, horizon, false, x -> Math.max(0, now - perMinute * x))),
                List.of(new Plot.Level("figure.limit", limit)),
                List.of(new Plot.Point(minutes, Math.min(now, limit))),
                "figure.oxygenSaid",
                List.of(minutes, 60 * perMinute));
    }

    static Plot startUp(Given given) {
        StartUpRun run = StartUpRun.of(given);
        Plot.Line ammonia = days(run, "figure.ammoniaLine", StartUpRun.Day::ammoniaMgPerL);
        Plot.Line nitrite = days(run, "figure.nitriteLine", StartUpRun.Day::nitriteMgPerL);
        Plot.Line nitrate = days(run, "figure.nitrateLine", StartUpRun.Day::nitrateMgPerL);
        Plot.Axis up =
                Plot.Axis.fromZero("figure.mgNPerL", Math.max(1, 1.1 * Math.max(highest(ammonia), highest(nitrite))));
        // Nitrate only gathers: it is followed up to the edge of the picture.
        List<Plot.Line> lines = List.of(ammonia, nitrite, upTo(nitrate, up.high()));
        List<Double> said = measures(given, "ammonia_peak_day", "nitrite_peak_day", "nitrite_peak", "clear_day");
        return new Plot(
                Plot.Axis.even("figure.days", 0, StartUpRun.DAYS),
                up,
                lines,
                List.of(),
                marked(given, run, StartUpRun.Day::nitriteMgPerL),
                "figure.startUpSaid",
                said);
    }

    static Plot twoGroups(Given given) {
        StartUpRun run = StartUpRun.of(given);
        return new Plot(
                Plot.Axis.even("figure.days", 0, StartUpRun.DAYS),
                Plot.Axis.logarithmic("figure.groupPercent", 0.01, 100),
                List.of(
                        days(run, "figure.aobLine", StartUpRun.Day::aobPercent),
                        days(run, "figure.nobLine", StartUpRun.Day::nobPercent)),
                List.of(),
                marked(given, run, StartUpRun.Day::nobPercent),
                "figure.groupsSaid",
                measures(given, "day", "aob_percent", "nob_percent"));
    }

    private static Plot.Line upTo(Plot.Line line, double most) {
        List<Plot.Point> within =
                line.points().stream().takeWhile(point -> point.y() <= most).toList();
        return new Plot.Line(line.key(), within, line.dots());
    }

    private static List<Plot.Point> marked(Given given, StartUpRun run, ToDoubleFunction<StartUpRun.Day> what) {
        if (!given.numbers().containsKey("day")) {
            return List.of();
        }
        double day = given.numbers().get("day");
        return List.of(new Plot.Point(day, what.applyAsDouble(run.at(day))));
    }

    private static Plot.Line days(StartUpRun run, String key, ToDoubleFunction<StartUpRun.Day> what) {
        List<Plot.Point> points = new ArrayList<>();
        for (int day = 0; day <= StartUpRun.DAYS; day++) {
            points.add(new Plot.Point(day, what.applyAsDouble(run.days().get(day))));
        }
        return new Plot.Line(key, points, false);
    }

    private static List<Double> measures(Given given, String... names) {
        List<Measure> all = Reckoning.StartUp.RUN.work(given);
        List<Double> numbers = new ArrayList<>();
        for (String name : names) {
            numbers.add(all.stream()
                    .filter(measure -> measure.name().equals(name))
                    .mapToDouble(Measure::value)
                    .findFirst()
                    .orElseGet(() -> given.numbers().getOrDefault(name, (double) StartUpRun.DAYS)));
        }
        return numbers;
    }

    static Plot ration(Block.Figure figure, Given given) {
        double mass = given.numbers().getOrDefault("mass", 10.0);
        double low = Math.max(0.1, figure.low("mass", 1));
        double high = figure.high("mass", 500);
        Plot.Line line = curve(low, high, true, x -> value(figure, with(given, "mass", x), "ration_percent"));
        double percent = value(figure, given, "ration_percent");
        return new Plot(
                Plot.Axis.logarithmic("figure.massG", low, high),
                Plot.Axis.fromZero("figure.rationPercent", Math.max(1, highest(line))),
                List.of(line),
                List.of(),
                List.of(new Plot.Point(mass, percent)),
                "figure.rationSaid",
                List.of(percent, value(figure, given, "feed_g")));
    }
}
