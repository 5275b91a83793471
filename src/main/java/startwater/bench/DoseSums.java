package startwater.bench;

import java.util.ArrayList;
import java.util.List;
import startwater.quantity.Molar;
import startwater.quantity.Units;
import startwater.water.Chlorine;
import startwater.water.Dose;

/**
 * Sums on what to weigh out; the compounds are pure ones, see {@link Dose}. Each refuses what cannot be with a
 * {@link RefusedInputException}.
 */
public final class DoseSums {
    /** Rise of alkalinity that a stocked tank bears in a day, mg/L as CaCO3. Common practice, no source. */
    public static final double MOST_RISE_PER_DAY = 30;

    private static final double MG_PER_G = 1000;

    private DoseSums() {}

    /**
     * Salt that brings chloride to a multiple of nitrite.
     *
     * @param volumeL litres
     * @param nitriteMgNPerL nitrite, mg N/L
     * @param chlorideMgPerL chloride there is, mg/L
     * @param ratio mg of chloride wanted per mg of nitrite
     * @return {@code per_ion} g of salt where the ratio counts the nitrite ion, {@code per_n} g where it counts nitrite-N,
     *     {@code target_chloride} mg/L for the first
     */
    public static Sum salt(double volumeL, double nitriteMgNPerL, double chlorideMgPerL, double ratio) {
        SumKind kind = SumKind.SALT;
        List<Measure> inputs = kind.measures(volumeL, nitriteMgNPerL, chlorideMgPerL, ratio);
        double ion = Units.nitriteIonFromN(nitriteMgNPerL);
        double perIon = saltG(volumeL, ratio * ion - chlorideMgPerL);
        List<String> notes = new ArrayList<>(List.of(kind.note()));
        if (perIon == 0) {
            notes.add(0, "note.chloride-is-enough");
        }
        return new Sum(
                kind,
                inputs,
                List.of(
                        new Measure("per_ion", perIon, Unit.GRAM),
                        new Measure("per_n", saltG(volumeL, ratio * nitriteMgNPerL - chlorideMgPerL), Unit.GRAM),
                        new Measure("target_chloride", ratio * ion, Unit.MG_PER_L)),
                List.of(
                        new Measure("ion", Units.NITRITE_ION_PER_N, Unit.NONE),
                        new Measure("chloride", Dose.SODIUM_CHLORIDE.chlorideGPerG(), Unit.NONE)),
                kind.working(),
                notes);
    }

    private static double saltG(double volumeL, double chlorideMgPerL) {
        return volumeL * StrictMath.max(0, chlorideMgPerL) / MG_PER_G / Dose.SODIUM_CHLORIDE.chlorideGPerG();
    }

    /**
     * Baking soda that lifts alkalinity to a target.
     *
     * @param volumeL litres
     * @param alkalinityMgPerL alkalinity there is, mg/L as CaCO3
     * @param targetMgPerL alkalinity wanted, mg/L as CaCO3, not under the first
     * @return {@code baking_soda_g} g, {@code days} to spread it over
     */
    public static Sum buffer(double volumeL, double alkalinityMgPerL, double targetMgPerL) {
        SumKind kind = SumKind.BUFFER;
        List<Measure> inputs = kind.measures(volumeL, alkalinityMgPerL, targetMgPerL);
        double rise = targetMgPerL - alkalinityMgPerL;
        if (rise < 0) {
            throw new RefusedInputException(
                    "target", RefusedInputException.Reason.TARGET_UNDER_NOW, inputs.get(2), inputs.get(1));
        }
        double factor = MG_PER_G / Units.caco3FromMeq(Dose.SODIUM_BICARBONATE.alkalinityMeqPerG());
        double grams = volumeL * rise * factor / MG_PER_G;
        double days = StrictMath.ceil(rise / MOST_RISE_PER_DAY);
        return new Sum(
                kind,
                inputs,
                List.of(
                        new Measure("baking_soda_g", grams, Unit.GRAM),
                        new Measure("days", days, Unit.NONE),
                        new Measure("each_day_g", days == 0 ? 0 : grams / days, Unit.GRAM)),
                List.of(new Measure("factor", factor, Unit.NONE)),
                kind.working(),
                List.of(kind.note()));
    }

    /**
     * Ammonium chloride that feeds a filter without fish.
     *
     * @param volumeL litres
     * @param targetMgNPerL total ammonia nitrogen to add, mg N/L
     * @return {@code nh4cl_g} g
     */
    public static Sum ammoniumChloride(double volumeL, double targetMgNPerL) {
        SumKind kind = SumKind.AMMONIA_DOSE;
        List<Measure> inputs = kind.measures(volumeL, targetMgNPerL);
        double mgPerG = Dose.AMMONIUM_CHLORIDE.tanMgPerG();
        return new Sum(
                kind,
                inputs,
                List.of(new Measure("nh4cl_g", volumeL * targetMgNPerL / mgPerG, Unit.GRAM)),
                List.of(new Measure("share", mgPerG / MG_PER_G, Unit.NONE)),
                kind.working(),
                List.of(kind.note()));
    }

    /**
     * Ammonia solution that does the same.
     *
     * @param volumeL litres
     * @param targetMgNPerL total ammonia nitrogen to add, mg N/L
     * @param strengthPercent NH3 by weight, %
     * @return {@code solution_g} g of the solution, {@code nh4cl_g} g of ammonium chloride instead
     */
    public static Sum ammoniaSolution(double volumeL, double targetMgNPerL, double strengthPercent) {
        SumKind kind = SumKind.AMMONIA_DOSE;
        List<Measure> inputs = kind.measures(volumeL, targetMgNPerL, strengthPercent);
        double nitrogenMg = volumeL * targetMgNPerL;
        double grams = nitrogenMg / Dose.AMMONIA.tanMgPerG() / (strengthPercent / 100);
        return new Sum(
                kind,
                inputs,
                List.of(
                        new Measure("solution_g", grams, Unit.GRAM),
                        new Measure("nh4cl_g", nitrogenMg / Dose.AMMONIUM_CHLORIDE.tanMgPerG(), Unit.GRAM)),
                List.of(new Measure("share", Molar.N / Molar.NH3, Unit.NONE)),
                kind.working() + ".solution",
                List.of("note.millilitres", kind.note()));
    }

    /**
     * Sodium thiosulfate pentahydrate that takes up chlorine, free or combined.
     *
     * @param volumeL litres of new water
     * @param chlorineMgPerL total residual as Cl2, mg/L
     * @return {@code thiosulfate_g} g, {@code ammonia_left} mg N/L if all of it was chloramine
     */
    public static Sum dechlorinate(double volumeL, double chlorineMgPerL) {
        SumKind kind = SumKind.DECHLORINATE;
        List<Measure> inputs = kind.measures(volumeL, chlorineMgPerL);
        double factor = Chlorine.THIOSULFATE_MG_PER_MG;
        return new Sum(
                kind,
                inputs,
                List.of(
                        new Measure("thiosulfate_g", volumeL * chlorineMgPerL * factor / MG_PER_G, Unit.GRAM),
                        new Measure(
                                "ammonia_left",
                                chlorineMgPerL * Chlorine.NITROGEN_MG_PER_MG_CHLORAMINE,
                                Unit.MG_N_PER_L)),
                List.of(new Measure("factor", factor, Unit.NONE)),
                kind.working(),
                List.of(kind.note()));
    }
}
