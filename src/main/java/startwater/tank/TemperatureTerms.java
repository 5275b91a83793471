package startwater.tank;

import java.util.concurrent.atomic.AtomicReferenceArray;
import startwater.biofilter.Nitrification;
import startwater.quantity.Powers;
import startwater.water.CarbonateSystem;
import startwater.water.OxygenSaturation;

/** Everything that depends on the temperature alone. */
final class TemperatureTerms {
    /** Terms kept are for a temperature rounded to this, °C: a rate is then off by under 0.02 %. */
    private static final int KEPT_PER_DEGREE = 256;

    private static final int KEPT_UP_TO_C = 50;
    private static final double LN_GAS_TRANSFER_THETA = StrictMath.log(1.024);

    /** Filled as asked for. Two threads may work out the same terms; either result serves. */
    private static final AtomicReferenceArray<TemperatureTerms> KEPT =
            new AtomicReferenceArray<>(KEPT_UP_TO_C * KEPT_PER_DEGREE + 1);

    final double temperatureC;
    final CarbonateSystem.AtTemperature carbonate;
    final OxygenSaturation.AtTemperature oxygen;
    final double gasTheta;
    final double thetaAob;
    final double thetaNob;
    final double decay;
    final double mineralisation;
    final double nitrousAcid;
    /** Change of oxygen saturation with temperature, as a share per °C. */
    final double oxygenSlope;

    private TemperatureTerms(double temperatureC) {
        this.temperatureC = temperatureC;
        carbonate = CarbonateSystem.AtTemperature.of(temperatureC);
        oxygen = OxygenSaturation.atTemperature(temperatureC);
        double over = temperatureC - 20;
        gasTheta = Powers.theta(LN_GAS_TRANSFER_THETA, over);
        thetaAob = Powers.theta(Nitrification.LN_THETA_AOB, over);
        thetaNob = Powers.theta(Nitrification.LN_THETA_NOB, over);
        decay = Nitrification.DECAY_PER_DAY * Powers.theta(Nitrification.LN_THETA_DECAY, over);
        mineralisation =
                Nitrification.MINERALISATION_PER_DAY * Powers.theta(Nitrification.LN_THETA_MINERALISATION, over);
        oxygenSlope = OxygenSaturation.logSlope(temperatureC);
        nitrousAcid = Nitrification.nitrousAcidConstant(temperatureC);
    }

    /** At exactly this temperature, °C. */
    static TemperatureTerms at(double temperatureC) {
        return new TemperatureTerms(temperatureC);
    }

    /** At the kept temperature next to this one, °C. */
    static TemperatureTerms near(double temperatureC) {
        int place = (int) Math.rint(temperatureC * KEPT_PER_DEGREE);
        if (place < 0 || place >= KEPT.length()) {
            return at(temperatureC);
        }
        TemperatureTerms known = KEPT.get(place);
        if (known == null) {
            known = at((double) place / KEPT_PER_DEGREE);
            KEPT.set(place, known);
        }
        return known;
    }
}
