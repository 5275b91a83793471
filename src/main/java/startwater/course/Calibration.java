package startwater.course;

import java.util.ArrayList;
import java.util.List;
import startwater.drill.Prediction.Sureness;
import startwater.quantity.Normal;
import startwater.score.ForecastScore;
import startwater.score.ForecastScore.Forecast;
import startwater.score.ForecastScore.Group;

/**
 * How well a learner knows what they know: how often it came, against how sure they were.
 *
 * @param score the whole of the forecasts, with their mean squared distance from what came
 * @param bins one for each word of sureness that was used, the least sure first
 * @param finding in one word
 */
public record Calibration(ForecastScore score, List<Bin> bins, Finding finding) {
    private static final int ENOUGH = 8;
    /** Nine of ten intervals hold the true rate. */
    private static final double Z = Normal.quantile(0.95);

    private static final double EVEN = 0.05;

    public Calibration {
        bins = List.copyOf(bins);
    }

    /**
     * Something said with a sureness.
     *
     * @param sureness how sure
     * @param came 1 where it came, 0 where not; the model's own chance of it where nobody looked
     */
    public record Said(Sureness sureness, double came) {}

    /**
     * All that was said with one word.
     *
     * @param word how sure
     * @param count how often
     * @param came share of it that came, 0 to 1
     * @param low end of the nine-in-ten interval of that share
     * @param high end of it
     */
    public record Bin(Sureness word, int count, double came, double low, double high) {
        /** The chance that the word stands for. */
        public double stated() {
            return word.chance();
        }
    }

    /** What the numbers say together. */
    public enum Finding {
        /** Nothing was said yet. */
        NONE,
        /** Too little to tell. */
        FEW,
        /** Surer than right. */
        OVER,
        /** Righter than sure. */
        UNDER,
        /** As sure as right. */
        WELL
    }

    /** Fits everything that was said. */
    public static Calibration of(List<Said> said) {
        ForecastScore score = ForecastScore.of(said.stream()
                .map(s -> new Forecast(s.sureness().chance(), s.came()))
                .toList());
        List<Bin> bins = new ArrayList<>();
        for (Sureness word : Sureness.values()) {
            score.groups().stream().filter(g -> g.stated() == word.chance()).forEach(g -> bins.add(bin(word, g)));
        }
        return new Calibration(score, bins, finding(bins, score.count()));
    }

    /** The interval of Wilson 1927 (from memory): it stays within 0 and 1 and holds for few. */
    private static Bin bin(Sureness word, Group g) {
        double n = g.count();
        double z2 = Z * Z;
        double middle = (g.came() + z2 / (2 * n)) / (1 + z2 / n);
        double half = Z * StrictMath.sqrt(g.came() * (1 - g.came()) / n + z2 / (4 * n * n)) / (1 + z2 / n);
        return new Bin(word, g.count(), g.came(), Math.max(0, middle - half), Math.min(1, middle + half));
    }

    private static Finding finding(List<Bin> bins, int count) {
        if (count < ENOUGH) {
            return count == 0 ? Finding.NONE : Finding.FEW;
        }
        double over = 0;
        double variance = 0;
        for (Bin b : bins) {
            over += b.count() * (b.stated() - b.came()) / count;
            variance += b.count() * b.stated() * (1 - b.stated());
        }
        double beyondChance = Math.max(EVEN, Z * StrictMath.sqrt(variance) / count);
        return over > beyondChance ? Finding.OVER : over < -beyondChance ? Finding.UNDER : Finding.WELL;
    }

    /** Mean of the chances that were stated, 0 to 1; NaN without any. */
    public double stated() {
        return bins.stream().mapToDouble(b -> b.count() * b.stated()).sum() / score.count();
    }

    /** Share that came, 0 to 1; NaN without any. */
    public double came() {
        return bins.stream().mapToDouble(b -> b.count() * b.came()).sum() / score.count();
    }
}
