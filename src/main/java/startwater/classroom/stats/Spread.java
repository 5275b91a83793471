package startwater.classroom.stats;

import java.util.Arrays;

/** Middle and spread of marks. @param sd standard deviation of the sample, NaN for fewer than two */
public record Spread(int n, double mean, double sd, double low, double high) {
    public static Spread of(double[] values) {
        double[] known = Arrays.stream(values).filter(v -> !Double.isNaN(v)).toArray();
        double mean = Arrays.stream(known).average().orElse(Double.NaN);
        double squares = Arrays.stream(known).map(v -> (v - mean) * (v - mean)).sum();
        return new Spread(
                known.length,
                mean,
                known.length < 2 ? Double.NaN : Math.sqrt(squares / (known.length - 1)),
                Arrays.stream(known).min().orElse(Double.NaN),
                Arrays.stream(known).max().orElse(Double.NaN));
    }
}
