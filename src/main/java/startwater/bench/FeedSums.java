package startwater.bench;

import java.util.ArrayList;
import java.util.List;
import startwater.fish.Species;

/** Sums on feed. Each refuses what cannot be with a {@link RefusedInputException}. */
public final class FeedSums {
    /**
     * TAN that comes of feed, g per g of protein (Timmons and Ebeling, Recirculating Aquaculture; from memory): 0.16 N in
     * protein, 0.8 taken up, 0.8 excreted, 0.9 of that as TAN.
     */
    public static final double TAN_PER_PROTEIN = 0.092;

    /** Ration taken when none is given, % of body mass a day. Common practice for fingerlings, no source. */
    public static final double COMMON_RATION_PERCENT = 3;

    private static final double MG_PER_G = 1000;

    private FeedSums() {}

    /**
     * Feed for a day from the feed table of the species.
     *
     * @param fish number of fish, whole
     * @param massG mean body mass, g
     * @param species which fish
     * @param temperatureC 0 to 45 °C
     * @return {@code feed_g} g/day, {@code ration_percent} % of body mass a day
     */
    public static Sum ration(double fish, double massG, Species species, double temperatureC) {
        SumKind kind = SumKind.RATION;
        List<Measure> inputs = kind.measures(fish, massG, temperatureC);
        if (fish != StrictMath.rint(fish)) {
            throw new RefusedInputException("fish", RefusedInputException.Reason.NOT_WHOLE, inputs.get(0));
        }
        double fraction = species.tableRationFraction(massG, temperatureC);
        List<String> notes = new ArrayList<>(List.of(kind.note()));
        if (fraction == 0) {
            notes.add(0, "note.no-appetite");
        }
        return new Sum(
                kind,
                inputs,
                List.of(
                        new Measure("feed_g", fish * massG * fraction, Unit.GRAM_PER_DAY),
                        new Measure("ration_percent", 100 * fraction, Unit.PERCENT_PER_DAY)),
                List.of(new Measure("share", 100 * fraction, Unit.PERCENT_PER_DAY)),
                kind.working(),
                notes);
    }

    /**
     * Feed and fish that a filter carries, from the ammonia it was seen to clear.
     *
     * @param clearedMgNPerLDay ammonia cleared, mg N/L a day
     * @param volumeL litres of the whole system
     * @param protein crude protein of the feed, % (or a share, where it is 1 or less)
     * @param rationPercent feed a day, % of body mass
     * @return {@code feed_g} g of feed a day, {@code fish_kg} kg of fish
     */
    public static Sum load(double clearedMgNPerLDay, double volumeL, double protein, double rationPercent) {
        SumKind kind = SumKind.LOAD;
        double proteinPercent = protein <= 1 ? 100 * protein : protein;
        List<Measure> inputs = kind.measures(clearedMgNPerLDay, volumeL, proteinPercent, rationPercent);
        double feedG = clearedMgNPerLDay * volumeL / MG_PER_G / (TAN_PER_PROTEIN * proteinPercent / 100);
        return new Sum(
                kind,
                inputs,
                List.of(
                        new Measure("feed_g", feedG, Unit.GRAM_PER_DAY),
                        new Measure("fish_kg", feedG / (rationPercent / 100) / MG_PER_G, Unit.KILOGRAM)),
                List.of(new Measure("tan_per_protein", TAN_PER_PROTEIN, Unit.NONE)),
                kind.working(),
                List.of(kind.note()));
    }
}
