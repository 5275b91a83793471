package startwater.bench;

import java.util.List;
import startwater.quantity.Units;
import startwater.water.OxygenSaturation;
import startwater.water.UnionisedAmmonia;
import startwater.water.WaterChange;

/** Sums on the water as it is. Each refuses what cannot be with a {@link RefusedInputException}. */
public final class WaterSums {
    private WaterSums() {}

    /**
     * Toxic (un-ionised) ammonia in a reading of total ammonia; see {@link UnionisedAmmonia}.
     *
     * @param tanMgNPerL total ammonia nitrogen, mg N/L
     * @param ph 0 to 14
     * @param temperatureC 0 to 50 °C
     * @return {@code nh3_n} mg N/L, {@code fraction}, {@code nh3} mg NH3/L
     */
    public static Sum toxicAmmonia(double tanMgNPerL, double ph, double temperatureC) {
        SumKind kind = SumKind.TOXIC_AMMONIA;
        List<Measure> inputs = kind.measures(tanMgNPerL, ph, temperatureC);
        double fraction = UnionisedAmmonia.fraction(ph, temperatureC);
        double nh3N = tanMgNPerL * fraction;
        return new Sum(
                kind,
                inputs,
                List.of(
                        new Measure("nh3_n", nh3N, Unit.MG_N_PER_L),
                        new Measure("fraction", fraction, Unit.NONE),
                        new Measure("nh3", Units.ammoniaFromN(nh3N), Unit.MG_PER_L)),
                List.of(
                        new Measure("pka", UnionisedAmmonia.pKa(temperatureC), Unit.NONE),
                        new Measure("share", fraction, Unit.NONE)),
                kind.working(),
                List.of(kind.note()));
    }

    /**
     * Oxygen in balance with air; see {@link OxygenSaturation}.
     *
     * @param temperatureC 0 to 40 °C
     * @param altitudeM 0 to 4000 m
     * @param salinityGPerKg 0 to 40 g/kg
     * @return {@code oxygen} mg/L
     */
    public static Sum oxygen(double temperatureC, double altitudeM, double salinityGPerKg) {
        SumKind kind = SumKind.OXYGEN;
        List<Measure> inputs = kind.measures(temperatureC, altitudeM, salinityGPerKg);
        double fresh = OxygenSaturation.mgPerL(temperatureC, 0, 0);
        return new Sum(
                kind,
                inputs,
                List.of(new Measure(
                        "oxygen", OxygenSaturation.mgPerL(temperatureC, altitudeM, salinityGPerKg), Unit.MG_PER_L)),
                List.of(
                        new Measure("fresh", fresh, Unit.MG_PER_L),
                        new Measure("pressure", OxygenSaturation.mgPerL(temperatureC, altitudeM, 0) / fresh, Unit.NONE),
                        new Measure(
                                "salt", OxygenSaturation.mgPerL(temperatureC, 0, salinityGPerKg) / fresh, Unit.NONE)),
                kind.working(),
                List.of(kind.note()));
    }

    /**
     * Share of the water to change so that a value reaches a target; the three are in one unit of any kind.
     *
     * @param now value in the tank
     * @param target value wanted, between the two waters
     * @param source value in the new water
     * @return {@code percent} and {@code fraction} of the volume
     */
    public static Sum waterChange(double now, double target, double source) {
        SumKind kind = SumKind.WATER_CHANGE;
        List<Measure> inputs = kind.measures(now, target, source);
        if (target < StrictMath.min(now, source) || target > StrictMath.max(now, source)) {
            throw new RefusedInputException(
                    "target",
                    RefusedInputException.Reason.TARGET_NOT_BETWEEN,
                    new Measure("target", target, Unit.NONE),
                    new Measure("now", now, Unit.NONE),
                    new Measure("source", source, Unit.NONE));
        }
        double fraction = WaterChange.fractionFor(now, source, target);
        return new Sum(
                kind,
                inputs,
                List.of(
                        new Measure("percent", 100 * fraction, Unit.PERCENT),
                        new Measure("fraction", fraction, Unit.NONE)),
                List.of(new Measure("share", fraction, Unit.NONE)),
                now == source ? kind.working() + ".same" : kind.working(),
                List.of(kind.note()));
    }
}
