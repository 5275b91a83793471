package startwater.bench;

import java.util.ArrayList;
import java.util.List;
import startwater.fish.Species;
import startwater.quantity.Molar;
import startwater.quantity.Units;
import startwater.water.Dose;

/** Sums on feed. Each refuses what cannot be with a {@link RefusedInputException}. */
public final class FeedSums {
    /**
     * TAN that comes of feed, g per g of protein (Timmons and Ebeling, Recirculating Aquaculture; from memory): 0.16 N in
     * protein, 0.8 taken up, 0.8 excreted, 0.9 of that as TAN.
     */
    public static final double TAN_PER_PROTEIN = 0.092;

    /** Ration taken when none is given, % of body mass a day. Common practice for fingerlings, no source. */
    public static final double COMMON_RATION_PERCENT = 3;

    /** Alkalinity under which rule 7 asks for baking soda, mg/L as CaCO3. Common practice, no source. */
    public static final double LOW_ALKALINITY = 80;

    /** Two equivalents of acid for each nitrogen that nitrifies: 7.14 g of CaCO3 per g of N. */
    private static final double CACO3_PER_N = 2 * Units.MG_CACO3_PER_MEQ / Molar.N;

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

    /**
     * Days until nitrification has taken alkalinity down to a floor, and what would hold it.
     *
     * @param volumeL litres
     * @param feedGPerDay feed, g a day
     * @param protein crude protein of the feed, % (or a share, where it is 1 or less)
     * @param alkalinityMgPerL alkalinity there is, mg/L as CaCO3
     * @param floorMgPerL alkalinity not to go under, mg/L as CaCO3
     * @return {@code days}, {@code used} mg/L as CaCO3 a day, {@code hold_g} of baking soda a day
     */
    public static Sum alkalinityBudget(
            double volumeL, double feedGPerDay, double protein, double alkalinityMgPerL, double floorMgPerL) {
        SumKind kind = SumKind.ALKALINITY_BUDGET;
        double proteinPercent = protein <= 1 ? 100 * protein : protein;
        List<Measure> inputs = kind.measures(volumeL, feedGPerDay, proteinPercent, alkalinityMgPerL, floorMgPerL);
        double tanGPerDay = TAN_PER_PROTEIN * proteinPercent / 100 * feedGPerDay;
        double usedGPerDay = tanGPerDay * CACO3_PER_N;
        double used = usedGPerDay * MG_PER_G / volumeL;
        double meq = Units.meqFromCaco3(usedGPerDay * MG_PER_G);
        return new Sum(
                kind,
                inputs,
                List.of(
                        new Measure("days", StrictMath.max(0, alkalinityMgPerL - floorMgPerL) / used, Unit.NONE),
                        new Measure("used", used, Unit.MG_CACO3_PER_L),
                        new Measure("hold_g", meq / Dose.SODIUM_BICARBONATE.alkalinityMeqPerG(), Unit.GRAM_PER_DAY)),
                List.of(
                        new Measure("tan_per_protein", TAN_PER_PROTEIN, Unit.NONE),
                        new Measure("caco3_per_n", CACO3_PER_N, Unit.NONE)),
                kind.working(),
                List.of(kind.note()));
    }

    /**
     * Minutes that the oxygen in the water lasts when the air stops, without any from the surface.
     *
     * @param volumeL litres
     * @param fish number of fish, whole
     * @param massG mean body mass, g
     * @param species which fish
     * @param temperatureC 0 to 40 °C
     * @param oxygenMgPerL oxygen there is, mg/L
     * @param floorMgPerL oxygen not to go under, mg/L
     * @return {@code minutes}, {@code uptake} mg/L an hour
     */
    public static Sum oxygenLeft(
            double volumeL,
            double fish,
            double massG,
            Species species,
            double temperatureC,
            double oxygenMgPerL,
            double floorMgPerL) {
        SumKind kind = SumKind.OXYGEN_LEFT;
        List<Measure> inputs = kind.measures(volumeL, fish, massG, temperatureC, oxygenMgPerL, floorMgPerL);
        if (fish != StrictMath.rint(fish)) {
            throw new RefusedInputException("fish", RefusedInputException.Reason.NOT_WHOLE, inputs.get(1));
        }
        double uptakeOfAKilogram = species.respiration().mgPerKgHour(massG, temperatureC);
        double uptake = uptakeOfAKilogram * fish * massG / MG_PER_G / volumeL;
        double minutes = StrictMath.max(0, oxygenMgPerL - floorMgPerL) / uptake * 60;
        return new Sum(
                kind,
                inputs,
                List.of(new Measure("minutes", minutes, Unit.NONE), new Measure("uptake", uptake, Unit.MG_PER_L_HOUR)),
                List.of(new Measure("of_a_kg", uptakeOfAKilogram, Unit.NONE)),
                kind.working(),
                List.of(kind.note()));
    }
}
