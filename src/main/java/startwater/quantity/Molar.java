package startwater.quantity;

/**
 * Molar masses in g/mol, summed from the abridged standard atomic weights of IUPAC (Prohaska et al. 2022, Pure Appl.
 * Chem. 94:573-600).
 */
public final class Molar {
    public static final double H = 1.008;
    public static final double C = 12.011;
    public static final double N = 14.007;
    public static final double O = 15.999;
    public static final double NA = 22.990;
    public static final double S = 32.06;
    public static final double CL = 35.45;
    public static final double CA = 40.078;

    public static final double O2 = 2 * O;
    public static final double H2O = 2 * H + O;
    public static final double CO2 = C + 2 * O;
    public static final double CL2 = 2 * CL;
    public static final double NH3 = N + 3 * H;
    public static final double NH4 = N + 4 * H;
    public static final double NO2 = N + 2 * O;
    public static final double NO3 = N + 3 * O;
    public static final double NACL = NA + CL;
    public static final double NAHCO3 = NA + H + C + 3 * O;
    public static final double NA2CO3 = 2 * NA + C + 3 * O;
    public static final double NH4CL = NH4 + CL;
    public static final double CACL2 = CA + CL2;
    /** Sodium thiosulfate pentahydrate, the crystals a keeper buys. */
    public static final double NA2S2O3_5H2O = 2 * NA + 2 * S + 3 * O + 5 * H2O;

    private Molar() {}
}
