package startwater.bench;

import java.util.List;
import startwater.quantity.Molar;
import startwater.quantity.OutOfRangeException;
import startwater.quantity.Units;
import startwater.water.CarbonateSystem;
import startwater.water.Dose;

/**
 * What a change does to the pH of a closed water whose alkalinity is bicarbonate. Worked with activities in a sodium
 * bicarbonate water; see {@link CarbonateSystem}.
 */
public final class ClosedWater {
    /** CO2 of the air in a fish room, atm. Common practice, no source: about half as much again as outdoors. */
    private static final double ROOM_AIR_ATM = 600e-6;

    /** Ionic strength hangs a little on carbonate, and carbonate on ionic strength: a few rounds settle both. */
    private static final int ROUNDS = 4;

    private ClosedWater() {}

    /**
     * What is done to the water.
     *
     * @param bicarbonateMgPerL NaHCO3 added, mg/L
     * @param carbonateMgPerL Na2CO3 added, mg/L
     * @param nitrifiedMgNPerL ammonia oxidised, mg N/L, each mole with two of acid
     * @param carbonDioxideMgPerL CO2 added, mg/L; less than 0 is stripping
     */
    public record Change(
            double bicarbonateMgPerL, double carbonateMgPerL, double nitrifiedMgNPerL, double carbonDioxideMgPerL) {

        double baseMeqPerL() {
            return (bicarbonateMgPerL * Dose.SODIUM_BICARBONATE.alkalinityMeqPerG()
                            + carbonateMgPerL * Dose.SODIUM_CARBONATE.alkalinityMeqPerG())
                    / 1000;
        }

        double alkalinityMeqPerL() {
            return baseMeqPerL() - 2 * nitrifiedMgNPerL / Molar.N;
        }

        double carbonMmolPerL() {
            return (bicarbonateMgPerL * Dose.SODIUM_BICARBONATE.dicMmolPerG()
                                    + carbonateMgPerL * Dose.SODIUM_CARBONATE.dicMmolPerG())
                            / 1000
                    + carbonDioxideMgPerL / Molar.CO2;
        }
    }

    /** A state of the water: the system at its ionic strength, h in mol/L. */
    private record Settled(CarbonateSystem system, double h) {}

    /**
     * Alkalinity, pH and CO2 after the change.
     *
     * @param temperatureC 0 to 50 °C
     * @param alkalinityMgPerL alkalinity before, mg/L as CaCO3
     * @param ph pH before, 3 to 12
     * @param change what is done
     * @return {@code ph}, {@code alkalinity} mg/L as CaCO3, {@code co2} mg/L, {@code ph_aired} in balance with room air
     */
    public static Sum after(double temperatureC, double alkalinityMgPerL, double ph, Change change) {
        SumKind kind = SumKind.WATER;
        List<Measure> inputs = kind.measures(
                temperatureC,
                alkalinityMgPerL,
                ph,
                change.bicarbonateMgPerL(),
                change.carbonateMgPerL(),
                change.nitrifiedMgNPerL(),
                change.carbonDioxideMgPerL());
        double alkBefore = Units.meqFromCaco3(alkalinityMgPerL);
        double alk = alkBefore + change.alkalinityMeqPerL();
        double dicBefore = dicBefore(temperatureC, alkBefore, ph, inputs);
        double dic = dicBefore + change.carbonMmolPerL();
        if (dic < 0) {
            double heldMmol = dic - change.carbonDioxideMgPerL() / Molar.CO2;
            throw new RefusedInputException(
                    "carbon-dioxide",
                    RefusedInputException.Reason.MORE_THAN_IT_HOLDS,
                    inputs.get(6),
                    new Measure("held", heldMmol * Molar.CO2, Unit.MG_PER_L));
        }
        // The acid of nitrification takes bicarbonate and leaves its own anion, so only the bases add ions.
        double ions = alkBefore + change.baseMeqPerL();
        List<Measure> steps = List.of(
                new Measure("rise", Units.caco3FromMeq(change.alkalinityMeqPerL()), Unit.MG_CACO3_PER_L),
                new Measure("dic_before", dicBefore, Unit.MMOL_PER_L),
                new Measure("dic_added", change.carbonMmolPerL(), Unit.MMOL_PER_L),
                new Measure("dic", dic, Unit.MMOL_PER_L));
        return new Sum(kind, inputs, values(temperatureC, ions, alk, dic), steps, kind.working(), List.of(kind.note()));
    }

    private static List<Measure> values(double temperatureC, double ions, double alk, double dic) {
        try {
            Settled end = settle(temperatureC, ions, alk, dic);
            double hAired = end.system().solveHAtCo2(alk, end.system().co2InBalanceWith(ROOM_AIR_ATM), 0);
            return List.of(
                    new Measure("ph", -StrictMath.log10(end.h()), Unit.PH),
                    new Measure("alkalinity", Units.caco3FromMeq(alk), Unit.MG_CACO3_PER_L),
                    new Measure("co2", Molar.CO2 * end.system().co2(end.h(), dic), Unit.MG_PER_L),
                    new Measure("ph_aired", -StrictMath.log10(hAired), Unit.PH));
        } catch (OutOfRangeException e) {
            throw new RefusedInputException("alkalinity", RefusedInputException.Reason.ENDS_BEYOND_PH);
        }
    }

    private static double dicBefore(double temperatureC, double alk, double ph, List<Measure> inputs) {
        try {
            double h = StrictMath.pow(10, -ph);
            double carbonate = 0;
            double dic = 0;
            for (int i = 0; i < ROUNDS; i++) {
                CarbonateSystem system = CarbonateSystem.at(temperatureC, (alk + carbonate) / 1000);
                dic = system.dicFromPh(alk, 0, ph);
                carbonate = system.co3(h, dic);
            }
            return dic;
        } catch (OutOfRangeException e) {
            throw new RefusedInputException(
                    "ph", RefusedInputException.Reason.NO_SUCH_WATER, inputs.get(2), inputs.get(1));
        }
    }

    private static Settled settle(double temperatureC, double ions, double alk, double dic) {
        CarbonateSystem system = CarbonateSystem.at(temperatureC, ions / 1000);
        double h = system.solveH(alk, dic, 0);
        for (int i = 1; i < ROUNDS; i++) {
            system = CarbonateSystem.at(temperatureC, (ions + system.co3(h, dic)) / 1000);
            h = system.solveH(alk, dic, 0, h);
        }
        return new Settled(system, h);
    }
}
