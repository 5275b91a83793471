package startwater.drill;

import startwater.quantity.Normal;

/** What may be believed of an unknown before anything is read, as a map from a standard normal score to its value. */
public sealed interface Prior {
    /** The value at a standard normal score: rising, so quantiles carry over. */
    double at(double score);

    /** Normal in the log. @param median in the unit of the unknown, @param sd of the natural log */
    record LogNormal(double median, double sd) implements Prior {
        public LogNormal {
            if (!(median > 0) || !(sd >= 0)) {
                throw new IllegalArgumentException("A log-normal needs a median over 0 and an sd of 0 or more, not "
                        + median + " and " + sd + ".");
            }
        }

        @Override
        public double at(double score) {
            return median * StrictMath.exp(sd * score);
        }
    }

    /** Even between two values. */
    record Uniform(double low, double high) implements Prior {
        public Uniform {
            if (!(low <= high)) {
                throw new IllegalArgumentException("A range needs low before high, not " + low + " to " + high + ".");
            }
        }

        @Override
        public double at(double score) {
            return low + (high - low) * Normal.cdf(score);
        }
    }

    /** A normal around a mean. */
    record Gaussian(double mean, double sd) implements Prior {
        public Gaussian {
            if (!(sd >= 0)) {
                throw new IllegalArgumentException("A normal needs an sd of 0 or more, not " + sd + ".");
            }
        }

        @Override
        public double at(double score) {
            return mean + sd * score;
        }
    }

    /** Known. */
    record Known(double value) implements Prior {
        @Override
        public double at(double score) {
            return value;
        }
    }
}
