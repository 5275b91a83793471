package startwater.fish;

import java.util.Arrays;
import startwater.quantity.OutOfRangeException;
import startwater.quantity.Powers;
import startwater.quantity.Validity;

/** Table ration by body mass at the best temperature; between the rows the percentage is linear in the log of mass. */
public final class FeedTable {
    private final double[] logMassG;
    private final double[] fraction;
    private final Validity massRangeG;
    /** Rations, % of body mass a day: larvae eat up to about a third of their mass. */
    public static final Validity PERCENT_PER_DAY =
            new Validity("feed table", "ration in % of body mass a day", 0, 40, "common practice, no source");
    /** Masses that can be asked about at all, g: 0 is a tank whose last fish has died. */
    public static final Validity ANY_MASS_G =
            new Validity("feed table", "body mass in g", 0, 1e6, "no fish weighs less than nothing");

    /**
     * @param massG rising masses, g
     * @param percent ration at each, % of body mass a day
     * @throws OutOfRangeException for a mass that is not positive, or a ration outside 0 to 40 %
     * @throws IllegalArgumentException when there are not two of each, or the masses do not rise
     */
    public FeedTable(double[] massG, double[] percent) {
        if (massG.length != percent.length || massG.length < 2) {
            throw new IllegalArgumentException("A feed table needs as many rations as masses, at least two: "
                    + massG.length + " and " + percent.length);
        }
        Arrays.stream(massG).forEach(Species.Respiration.MASS_G::check);
        Arrays.stream(percent).forEach(PERCENT_PER_DAY::check);
        logMassG = Arrays.stream(massG).map(StrictMath::log).toArray();
        fraction = Arrays.stream(percent).map(p -> p / 100).toArray();
        for (int i = 1; i < logMassG.length; i++) {
            if (!(logMassG[i] > logMassG[i - 1])) {
                throw new IllegalArgumentException("The masses of a feed table must rise: " + Arrays.toString(massG));
            }
        }
        massRangeG = new Validity(
                "feed table", "body mass in g", massG[0], massG[massG.length - 1], "the species file names its source");
    }

    /** The masses of the table: beyond them the ration is held at its ends, which a drill should not rest on. */
    public Validity massRangeG() {
        return massRangeG;
    }

    /**
     * Share of body mass a day at the best temperature; held at the ends of the table, see {@link #massRangeG}.
     *
     * @param massG g
     * @throws OutOfRangeException for a negative mass
     */
    public double fractionAtBest(double massG) {
        ANY_MASS_G.check(massG);
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
