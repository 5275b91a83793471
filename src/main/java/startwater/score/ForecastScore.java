package startwater.score;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How good stated chances were: the mean squared distance from what came, which is reliability less resolution plus
 * uncertainty (Brier 1950; Murphy 1973; from memory).
 *
 * @param count forecasts
 * @param score mean squared distance, 0 best
 * @param reliability how far each stated chance lies from what came when it was stated, 0 best: honesty
 * @param resolution how far what came differs from one stated chance to the next: knowing when
 * @param uncertainty variance of what came: no work of the forecaster
 * @param groups one for each chance that was stated, rising: the dots of a calibration plot
 */
public record ForecastScore(
        int count, double score, double reliability, double resolution, double uncertainty, List<Group> groups) {
    public ForecastScore {
        groups = List.copyOf(groups);
    }

    /**
     * One forecast.
     *
     * @param stated chance that was stated, 0 to 1
     * @param came 1 where it came, 0 where not; or the model's own chance of it, which takes luck out of the score
     */
    public record Forecast(double stated, double came) {
        public Forecast {
            requireChance("the stated chance", stated);
            requireChance("what came", came);
        }

        private static void requireChance(String what, double value) {
            if (!(value >= 0 && value <= 1)) {
                throw new IllegalArgumentException("Forecast: " + what + " is " + value + ". Give 0 to 1.");
            }
        }
    }

    /** Forecasts of one stated chance, and the mean of what came. */
    public record Group(double stated, int count, double came) {}

    /** Scores forecasts; without any, all parts are NaN. */
    public static ForecastScore of(List<Forecast> forecasts) {
        SortedMap<Double, List<Forecast>> byStated = new TreeMap<>();
        for (Forecast f : forecasts) {
            byStated.computeIfAbsent(f.stated(), k -> new ArrayList<>()).add(f);
        }
        int n = forecasts.size();
        double mean = meanCame(forecasts);
        double reliability = 0;
        double resolution = 0;
        List<Group> groups = new ArrayList<>();
        for (var entry : byStated.entrySet()) {
            Group g = new Group(entry.getKey(), entry.getValue().size(), meanCame(entry.getValue()));
            groups.add(g);
            reliability += g.count() * square(g.stated() - g.came()) / n;
            resolution += g.count() * square(g.came() - mean) / n;
        }
        double score = forecasts.stream()
                        .mapToDouble(f -> square(f.stated() - f.came()))
                        .sum()
                / n;
        double uncertainty =
                forecasts.stream().mapToDouble(f -> square(f.came() - mean)).sum() / n;
        boolean none = n == 0;
        return new ForecastScore(
                n, score, none ? Double.NaN : reliability, none ? Double.NaN : resolution, uncertainty, groups);
    }

    private static double meanCame(List<Forecast> forecasts) {
        return forecasts.stream().mapToDouble(Forecast::came).sum() / forecasts.size();
    }

    private static double square(double x) {
        return x * x;
    }
}
