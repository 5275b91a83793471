package startwater.score;

import java.util.Arrays;
import startwater.fish.Stressor;

/**
 * What every option would cost in every plausible tank: the one array from which regret, standard errors, the worst
 * tenth, other weights, causes of death and the worth of a test all follow.
 *
 * <p>{@code parts[option][tank][component]} in % of the stock, {@code deaths[option][tank][stressor]} in % of the stock,
 * {@code beside[option][tank]} those of the deaths that fell in a nursery, {@code weights[tank]} the belief in each tank, adding up to 1. Immutable by convention: arrays are cloned at the border.
 */
public final class Losses {
    private final double[][][] parts;
    private final double[][][] deaths;
    private final double[][] beside;
    private final double[] weights;
    private final int perWater;

    /** @param perWater tanks in a row that share one water, and so are no independent witnesses */
    Losses(double[][][] parts, double[][][] deaths, double[] weights, int perWater) {
        this(parts, deaths, new double[parts.length][weights.length], weights, perWater);
    }

    /** The same where some die in a nursery. */
    Losses(double[][][] parts, double[][][] deaths, double[][] beside, double[] weights, int perWater) {
        if (parts.length != deaths.length) {
            throw new IllegalArgumentException("Losses: " + parts.length + " options but deaths of " + deaths.length);
        }
        this.parts = parts;
        this.deaths = deaths;
        this.beside = beside;
        if (perWater < 1 || weights.length % perWater != 0) {
            throw new IllegalArgumentException(
                    "Losses: " + weights.length + " tanks cannot share waters by " + perWater + ".");
        }
        this.weights = weights.clone();
        this.perWater = perWater;
    }

    /** The same losses under another belief. @param other weights of the tanks, adding up to 1 */
    public Losses weighed(double[] other) {
        return new Losses(parts, deaths, beside, other, perWater);
    }

    /** The losses of these options and of more, over the same tanks. */
    Losses and(Losses more) {
        double[][][] allParts = Arrays.copyOf(parts, parts.length + more.parts.length);
        double[][][] allDeaths = Arrays.copyOf(deaths, deaths.length + more.deaths.length);
        System.arraycopy(more.parts, 0, allParts, parts.length, more.parts.length);
        System.arraycopy(more.deaths, 0, allDeaths, deaths.length, more.deaths.length);
        double[][] allBeside = Arrays.copyOf(beside, beside.length + more.beside.length);
        System.arraycopy(more.beside, 0, allBeside, beside.length, more.beside.length);
        return new Losses(allParts, allDeaths, allBeside, weights, perWater);
    }

    public int options() {
        return parts.length;
    }

    public int tanks() {
        return weights.length;
    }

    public double weight(int tank) {
        return weights[tank];
    }

    /** One part of one loss, % of the stock. */
    public double part(int option, int tank, Component component) {
        return parts[option][tank][component.ordinal()];
    }

    /** The whole loss of an option in a tank, % of the stock. */
    public double total(int option, int tank) {
        double sum = 0;
        for (double part : parts[option][tank]) {
            sum += part;
        }
        return sum;
    }

    /** Expected loss of an option, % of the stock. */
    public double mean(int option) {
        double sum = 0;
        for (int t = 0; t < weights.length; t++) {
            sum += weights[t] * total(option, t);
        }
        return sum;
    }

    /** Expected part of a loss, % of the stock. */
    public double mean(int option, Component component) {
        double sum = 0;
        for (int t = 0; t < weights.length; t++) {
            sum += weights[t] * part(option, t, component);
        }
        return sum;
    }

    /** Expected deaths by one cause, % of the stock. */
    public double meanDeaths(int option, Stressor cause) {
        double sum = 0;
        for (int t = 0; t < weights.length; t++) {
            sum += weights[t] * deaths[option][t][cause.ordinal()];
        }
        return sum;
    }

    /** Expected deaths in a nursery beside, % of the stock. */
    public double meanDeathsBeside(int option) {
        double sum = 0;
        for (int t = 0; t < weights.length; t++) {
            sum += weights[t] * beside[option][t];
        }
        return sum;
    }

    /** The deaths of an option under which a share {@code q} of the belief lies, % of the stock. */
    public double deathsQuantile(int option, double q) {
        double[] values = new double[weights.length];
        for (int t = 0; t < values.length; t++) {
            values[t] = part(option, t, Component.DEATHS);
        }
        return WeightedSample.quantile(values, weights, q);
    }

    /** Mean of the worst share of the belief, for example 0.1, % of the stock. */
    public double worst(int option, double share) {
        double[] values = new double[weights.length];
        for (int t = 0; t < values.length; t++) {
            values[t] = total(option, t);
        }
        return WeightedSample.worstMean(values, weights, share);
    }

    /** Mean deaths in the worst share of the belief, % of the stock. */
    public double worstDeaths(int option, double share) {
        double[] values = new double[weights.length];
        for (int t = 0; t < values.length; t++) {
            values[t] = part(option, t, Component.DEATHS);
        }
        return WeightedSample.worstMean(values, weights, share);
    }

    /** The option with the least expected loss; the first of equals. */
    public int best() {
        int best = 0;
        for (int o = 1; o < parts.length; o++) {
            if (mean(o) < mean(best)) {
                best = o;
            }
        }
        return best;
    }

    /** Expected loss of an option over that of the best, % of the stock: 0 or more. */
    public double regret(int option) {
        return mean(option) - mean(best());
    }

    /**
     * Standard error of the difference of two options over the same tanks, % of the stock. Tanks that share a water count
     * as one witness.
     */
    public double standardError(int option, int other) {
        double mean = mean(option) - mean(other);
        double sum = 0;
        for (int first = 0; first < weights.length; first += perWater) {
            double d = 0;
            for (int t = first; t < first + perWater; t++) {
                d += weights[t] * (total(option, t) - total(other, t) - mean);
            }
            sum += d * d;
        }
        return StrictMath.sqrt(sum);
    }
}
