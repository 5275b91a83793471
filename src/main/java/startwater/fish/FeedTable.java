package startwater.fish;

import java.util.Arrays;
import startwater.quantity.Powers;

/** Table ration by body mass at the best temperature; between the rows the percentage is linear in the log of mass. */
public final class FeedTable {
    private final double[] logMassG;
    private final double[] fraction;

    /**
     * @param massG rising masses, g
     * @param percent ration at each, % of body mass a day
     */
    public FeedTable(double[] massG, double[] percent) {
        if (massG.length != percent.length || massG.length < 2) {
            throw new IllegalArgumentException("A feed table needs as many rations as masses, at least two: "
                    + massG.length + " and " + percent.length);
        }
        logMassG = Arrays.stream(massG).map(StrictMath::log).toArray();
        fraction = Arrays.stream(percent).map(p -> p / 100).toArray();
        for (int i = 1; i < logMassG.length; i++) {
            if (!(logMassG[i] > logMassG[i - 1])) {
                throw new IllegalArgumentException("The masses of a feed table must rise: " + Arrays.toString(massG));
            }
        }
    }

    /** Share of body mass a day at the best temperature; held at the ends of the table. @param massG g */
    public double fractionAtBest(double massG) {
        double x = Powers.quickLn(massG);
        int last = logMassG.length - 1;
        if (x <= logMassG[0]) {
            return fraction[0];
        }
        if (x >= logMassG[last]) {
            return fraction[last];
        }
        int i = 1;
        while (logMassG[i] < x) {
            i++;
        }
        double share = (x - logMassG[i - 1]) / (logMassG[i] - logMassG[i - 1]);
        return fraction[i - 1] + share * (fraction[i] - fraction[i - 1]);
    }
}
