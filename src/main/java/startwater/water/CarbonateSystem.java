package startwater.water;

import startwater.quantity.Molar;
import startwater.quantity.OutOfRangeException;
import startwater.quantity.Powers;
import startwater.quantity.Validity;

/**
 * Alkalinity, pH and carbon dioxide of a water that holds carbonate, ammonia and strong ions, at one temperature and
 * ionic strength. Immutable; build it once per interval and call its methods as often as needed: they allocate nothing
 * and, but for the solvers, call no transcendental function.
 *
 * <p>{@code h} is the <em>activity</em> of the hydrogen ion in mol/L, so pH = -log10 h. Everything else is a
 * concentration: {@code dic} and CO2 in mmol/L, {@code alk} in meq/L, {@code tan} (total ammonia nitrogen) in mg N/L.
 * Alkalinity = HCO3 + 2 CO3 + OH - H + NH3. Constants: {@link CarbonateConstants}, {@link Davies},
 * {@link UnionisedAmmonia}.
 */
public final class CarbonateSystem {
    private static final String EQUATION = "carbonate alkalinity";
    /** Partial pressures for which Henry's law is used, atm: far under that at which CO2 departs from it. */
    public static final Validity CARBON_DIOXIDE_ATM = new Validity(
            "Henry's law of CO2", "carbon dioxide in atm", 0, 1, "Plummer and Busenberg 1982, measured at 1 atm");
    /** pH between which the alkalinity of the carbonate system is solved. */
    public static final Validity PH =
            new Validity(EQUATION, "pH", 2, 13, "no water that holds fish or carbonate lies outside");

    private static final double H_AT_PH_2 = 1e-2;
    private static final double H_AT_PH_13 = 1e-13;
    private static final double LN_10 = StrictMath.log(10);
    private static final double NEUTRAL_H = 1e-7;
    /** A Newton step this short leaves an error of its square: far below rounding. */
    private static final double LAST_STEP = 1e-9;

    /** Up to this step in ln h five terms of the exponential do. */
    private static final double SHORT_STEP = 0.1;

    private static final int MOST_STEPS = 200;
    private static final int MOST_WARM_STEPS = 8;
    private static final double LAST_WARM_STEP = 1e-7;

    /** [HCO3] h / [CO2*], mol/L. */
    private final double first;
    /** [CO3] h / [HCO3], mol/L. */
    private final double second;
    /** [OH] h in mmol/L times mol/L. */
    private final double hydroxide;
    /** [H] / h in mmol per mol. */
    private final double proton;
    /** [NH3] h / [NH4] on the pH scale, mol/L. */
    private final double ammonia;

    private final double kh;

    private CarbonateSystem(CarbonateConstants k, double gamma1, double ammonia) {
        // Davies: the logarithm goes with the square of the charge.
        double gamma2 = gamma1 * gamma1 * (gamma1 * gamma1);
        this.first = k.k1() / gamma1;
        this.second = k.k2() * gamma1 / gamma2;
        this.hydroxide = 1000 * k.kw() / gamma1;
        this.proton = 1000 / gamma1;
        this.ammonia = ammonia;
        this.kh = k.kh();
    }

    /**
     * The system at a temperature and ionic strength.
     *
     * @param temperatureC 0 to 50 °C
     * @param ionicStrengthMolPerL 0 to 0.5 mol/L, see {@link #ionicStrength}
     * @throws OutOfRangeException outside those ranges
     */
    public static CarbonateSystem at(double temperatureC, double ionicStrengthMolPerL) {
        return AtTemperature.of(temperatureC).with(ionicStrengthMolPerL);
    }

    /** What of it depends on temperature alone. */
    public static final class AtTemperature {
        private final CarbonateConstants constants;
        private final double daviesSlope;
        private final double ammonia;

        private AtTemperature(double temperatureC) {
            constants = CarbonateConstants.at(temperatureC);
            daviesSlope = Davies.slope(temperatureC);
            ammonia = UnionisedAmmonia.acidConstant(temperatureC);
        }

        /** At 0 to 50 °C. @throws OutOfRangeException outside that range */
        public static AtTemperature of(double temperatureC) {
            return new AtTemperature(temperatureC);
        }

        /** Acid constant of ammonium, mol/L. */
        public double ammoniumAcidConstant() {
            return ammonia;
        }

        /** The system at 0 to 0.5 mol/L. @throws OutOfRangeException outside that range */
        public CarbonateSystem with(double ionicStrengthMolPerL) {
            return new CarbonateSystem(
                    constants, Powers.quickExp(LN_10 * -daviesSlope * Davies.salt(ionicStrengthMolPerL)), ammonia);
        }
    }

    /**
     * Ionic strength in mol/L of a water whose ions carry single charges, each anion with its cation.
     *
     * @param alkMeq alkalinity, meq/L (a negative one counts as none)
     * @param chlorideMg chloride, mg/L
     * @param nitriteMgN nitrite, mg N/L
     * @param nitrateMgN nitrate, mg N/L
     */
    public static double ionicStrength(double alkMeq, double chlorideMg, double nitriteMgN, double nitrateMgN) {
        return (StrictMath.max(0, alkMeq) + chlorideMg / Molar.CL + (nitriteMgN + nitrateMgN) / Molar.N) / 1000;
    }

    /** Solubility of CO2 in mol/L per atm. */
    public double kh() {
        return kh;
    }

    /**
     * CO2 in mmol/L in balance with a gas that holds {@code pco2Atm} of it.
     *
     * @throws OutOfRangeException outside 0 to 1 atm
     */
    public double co2InBalanceWith(double pco2Atm) {
        return 1000 * kh * CARBON_DIOXIDE_ATM.check(pco2Atm);
    }

    /** Alkalinity, meq/L. */
    public double alkalinity(double h, double dic, double tan) {
        double ratio = first * h;
        double carbonate = first * second;
        return dic * (ratio + 2 * carbonate) / (h * h + ratio + carbonate)
                + hydroxide / h
                - proton * h
                + tan / Molar.N * ammonia / (ammonia + h);
    }

    /** Dissolved CO2*, mmol/L. */
    public double co2(double h, double dic) {
        return dic * h * h / (h * h + first * h + first * second);
    }

    /** Carbonate ion, mmol/L. */
    public double co3(double h, double dic) {
        return dic * first * second / (h * h + first * h + first * second);
    }

    /** Un-ionised share of the total ammonia, 0 to 1. */
    public double nh3Fraction(double h) {
        return ammonia / (ammonia + h);
    }

    /** Dissolved inorganic carbon in mmol/L that holds this CO2* (mmol/L). */
    public double dicFromCo2(double h, double co2) {
        return co2 * (1 + first / h * (1 + second / h));
    }

    /**
     * Dissolved inorganic carbon, mmol/L, from alkalinity and pH.
     *
     * @throws OutOfRangeException when OH and NH3 alone carry more than this alkalinity: no such water exists
     */
    public double dicFromPh(double alk, double tan, double ph) {
        PH.check(ph);
        double h = Powers.ten(-ph);
        double left = alk - alkalinity(h, 0, tan);
        if (!(left >= 0)) {
            throw new OutOfRangeException(
                    EQUATION, "alkalinity in meq/L at this pH", alk, alkalinity(h, 0, tan), Double.POSITIVE_INFINITY);
        }
        double ratio = first * h;
        double carbonate = first * second;
        return left * (h * h + ratio + carbonate) / (ratio + 2 * carbonate);
    }

    /**
     * Hydrogen-ion activity, mol/L.
     *
     * @throws OutOfRangeException when the pH would lie outside 2 to 13, or an input is not a number
     */
    public double solveH(double alk, double dic, double tan) {
        return solveH(alk, dic, tan, NEUTRAL_H);
    }

    /**
     * Hydrogen-ion activity, mol/L, from a guess. Alkalinity falls as h rises, so there is one root: Newton's method in
     * ln h, kept inside a shrinking bracket, with a bisection wherever Newton leaves it or is slow.
     *
     * @throws OutOfRangeException when the pH would lie outside 2 to 13, or an input is not a number
     */
    public double solveH(double alk, double dic, double tan, double hGuess) {
        return solve(false, alk, dic, tan, hGuess);
    }

    /**
     * Hydrogen-ion activity, mol/L, of a water whose CO2* is held by the air above it.
     *
     * @param co2 CO2* in mmol/L, see {@link #co2InBalanceWith}
     * @throws OutOfRangeException when the pH would lie outside 2 to 13, or an input is not a number
     */
    public double solveHAtCo2(double alk, double co2, double tan) {
        return solve(true, alk, co2, tan, NEUTRAL_H);
    }

    /**
     * The same, by warm steps alone where they settle: they need no exponential. Elsewhere, and where the pH would lie
     * outside 2 to 13, by the way of {@link #solveH}.
     *
     * @throws OutOfRangeException when the pH would lie outside 2 to 13, or an input is not a number
     */
    public double settleH(double alk, double dic, double tan, double hGuess) {
        double h = hGuess;
        for (int i = 0; i < MOST_WARM_STEPS; i++) {
            double next = newtonStep(alk, dic, tan, h);
            boolean settled = StrictMath.abs(next - h) < LAST_WARM_STEP * next;
            h = next;
            if (settled && h > H_AT_PH_13 && h < H_AT_PH_2) {
                return h;
            }
        }
        return solve(false, alk, dic, tan, hGuess);
    }

    /** The root in h where either DIC (closed) or CO2* (open to the air) is the carbon that stays as it is. */
    private double solve(boolean open, double alk, double carbon, double tan, double hGuess) {
        if (!(carbon >= 0) || !(tan >= 0)) {
            throw new OutOfRangeException(
                    EQUATION, "dissolved carbon in mmol/L or ammonia in mg N/L", StrictMath.min(carbon, tan), 0, 1e6);
        }
        double low = H_AT_PH_13;
        double high = H_AT_PH_2;
        OutOfRangeException.check(
                EQUATION,
                "alkalinity in meq/L",
                alk,
                alkalinity(high, dicAt(open, high, carbon), tan),
                alkalinity(low, dicAt(open, low, carbon), tan));
        double h = hGuess > low && hGuess < high ? hGuess : NEUTRAL_H;
        double stepBefore = Double.POSITIVE_INFINITY;
        for (int i = 0; i < MOST_STEPS; i++) {
            double dic = dicAt(open, h, carbon);
            double excess = alkalinity(h, dic, tan) - alk;
            if (excess > 0) {
                low = h;
            } else {
                high = h;
            }
            double fall = open ? fallAtCo2(h, carbon, tan) : fall(h, dic, tan);
            double step = excess / fall;
            double next = h * StrictMath.exp(StrictMath.max(-30, StrictMath.min(30, step)));
            if (StrictMath.abs(step) < LAST_STEP) {
                return next;
            }
            boolean slow = StrictMath.abs(step) > 0.5 * stepBefore;
            if (slow || !(next > low && next < high)) {
                next = StrictMath.sqrt(low * high);
                step = StrictMath.log(next / h);
            }
            stepBefore = StrictMath.abs(step);
            h = next;
        }
        return h;
    }

    private double dicAt(boolean open, double h, double carbon) {
        return open ? dicFromCo2(h, carbon) : carbon;
    }

    /**
     * One warm Newton step in ln h towards the root, at most a factor of e; positive by construction. Near the root the
     * error is squared; use {@link #solveH} after a dose of soda ash, acid or a water change.
     *
     * @param h the hydrogen-ion activity so far, mol/L
     * @return the new one, mol/L
     */
    public double newtonStep(double alk, double dic, double tan, double h) {
        double ratio = first * h;
        double carbonate = first * second;
        double square = h * h;
        double perD = 1 / (square + ratio + carbonate);
        double base = hydroxide / h;
        double acid = proton * h;
        double perA = 1 / (ammonia + h);
        double nh3 = tan * (1 / Molar.N) * ammonia * perA;
        double excess = dic * (ratio + 2 * carbonate) * perD + base - acid + nh3 - alk;
        double fall = dic * ratio * (square + 4 * second * h + carbonate) * perD * perD + base + acid + nh3 * h * perA;
        double step = StrictMath.max(-1, StrictMath.min(1, excess / fall));
        if (StrictMath.abs(step) < SHORT_STEP) {
            return h * (1 + step * (1 + step * (0.5 + step * (1.0 / 6 + step * (1.0 / 24)))));
        }
        double even = 1 + step * step / 12;
        return h * (even + 0.5 * step) / (even - 0.5 * step);
    }

    /** What the rates of a tank need of one water at one moment; see {@link #look}. A scratch pad. */
    public static final class Point {
        /** Un-ionised ammonia, mg N/L. */
        public double toxicAmmonia;
        /** CO2*, mmol/L. */
        public double co2;
        /** Change of CO2* with DIC at constant alkalinity, mmol per mmol: between 0 and a little over 1. */
        public double co2PerDic;
        /** Fall of CO2* with alkalinity at constant DIC, mmol per meq: 0 or more. */
        public double co2PerAlkalinity;
    }

    /** Works out a point at once, which shares what the four have in common. */
    public void look(double h, double dic, double tan, Point to) {
        double ratio = first * h;
        double carbonate = first * second;
        double square = h * h;
        double perD = 1 / (square + ratio + carbonate);
        double perA = 1 / (ammonia + h);
        double share = square * perD;
        double charge = (ratio + 2 * carbonate) * perD;
        double free = tan * ammonia * perA;
        double fall = dic * ratio * (square + 4 * second * h + carbonate) * perD * perD
                + hydroxide / h
                + proton * h
                + free / Molar.N * h * perA;
        double perAlkalinity = dic * share * charge / fall;
        to.toxicAmmonia = free;
        to.co2 = dic * share;
        to.co2PerAlkalinity = perAlkalinity;
        to.co2PerDic = share + perAlkalinity * charge;
    }

    /** How fast alkalinity falls with ln h at constant DIC, meq/L: always positive. */
    private double fall(double h, double dic, double tan) {
        double ratio = first * h;
        double carbonate = first * second;
        double d = h * h + ratio + carbonate;
        double a = ammonia + h;
        return dic * ratio * (h * h + 4 * second * h + carbonate) / (d * d)
                + hydroxide / h
                + proton * h
                + tan / Molar.N * ammonia * h / (a * a);
    }

    /** The same at constant CO2*: then all bicarbonate and carbonate come and go with h. */
    private double fallAtCo2(double h, double co2, double tan) {
        return fall(h, 0, tan) + co2 * first / h * (1 + 4 * second / h);
    }
}
