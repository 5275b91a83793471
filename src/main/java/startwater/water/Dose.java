package startwater.water;

import startwater.quantity.Molar;

/**
 * What one gram of a pure compound adds to the water it dissolves in. Formula masses from {@link Molar}; a bought product
 * may be less pure, so its label rules.
 */
public enum Dose {
    /** Salt, NaCl. */
    SODIUM_CHLORIDE(0, 0, 0, Molar.CL / Molar.NACL, 0),
    /** Baking soda, NaHCO3: 84.01 g per equivalent, one carbon with each. */
    SODIUM_BICARBONATE(1000 / Molar.NAHCO3, 1000 / Molar.NAHCO3, 0, 0, 0),
    /** Soda ash, Na2CO3: 53.0 g per equivalent, half a carbon with each; lifts pH hard. */
    SODIUM_CARBONATE(2000 / Molar.NA2CO3, 1000 / Molar.NA2CO3, 0, 0, 0),
    /** Ammonium chloride, NH4Cl: no alkalinity. */
    AMMONIUM_CHLORIDE(0, 0, 1000 * Molar.N / Molar.NH4CL, Molar.CL / Molar.NH4CL, 0),
    /** Ammonia, per gram of NH3 in the solution: each mole brings one equivalent. */
    AMMONIA(1000 / Molar.NH3, 0, 1000 * Molar.N / Molar.NH3, 0, 0),
    /** Calcium chloride, anhydrous CaCl2: no alkalinity. */
    CALCIUM_CHLORIDE(0, 0, 0, Molar.CL2 / Molar.CACL2, 0),
    /** Sodium thiosulfate pentahydrate: removes chlorine and chloramine. */
    SODIUM_THIOSULFATE(0, 0, 0, 0, 1000 / Chlorine.THIOSULFATE_MG_PER_MG);

    private final double alkalinityMeqPerG;
    private final double dicMmolPerG;
    private final double tanMgPerG;
    private final double chlorideGPerG;
    private final double chlorineRemovedMgPerG;

    Dose(
            double alkalinityMeqPerG,
            double dicMmolPerG,
            double tanMgPerG,
            double chlorideGPerG,
            double chlorineRemovedMgPerG) {
        this.alkalinityMeqPerG = alkalinityMeqPerG;
        this.dicMmolPerG = dicMmolPerG;
        this.tanMgPerG = tanMgPerG;
        this.chlorideGPerG = chlorideGPerG;
        this.chlorineRemovedMgPerG = chlorineRemovedMgPerG;
    }

    /** Alkalinity, meq per gram. */
    public double alkalinityMeqPerG() {
        return alkalinityMeqPerG;
    }

    /** Dissolved inorganic carbon, mmol per gram. */
    public double dicMmolPerG() {
        return dicMmolPerG;
    }

    /** Total ammonia nitrogen, mg N per gram. */
    public double tanMgPerG() {
        return tanMgPerG;
    }

    /** Chloride, g per gram. */
    public double chlorideGPerG() {
        return chlorideGPerG;
    }

    /** Chlorine or chloramine taken up, mg as Cl2 per gram. */
    public double chlorineRemovedMgPerG() {
        return chlorineRemovedMgPerG;
    }
}
