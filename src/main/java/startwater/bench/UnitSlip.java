package startwater.bench;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import startwater.quantity.Units;

/** Slips of unit and of basis, each with the factor that it leaves between an answer and the right one. */
public enum UnitSlip {
    NITRITE_FOR_N(Units.NITRITE_ION_PER_N),
    N_FOR_NITRITE(1 / Units.NITRITE_ION_PER_N),
    NITRATE_FOR_N(Units.NITRATE_ION_PER_N),
    N_FOR_NITRATE(1 / Units.NITRATE_ION_PER_N),
    AMMONIA_FOR_N(Units.AMMONIA_PER_N),
    N_FOR_AMMONIA(1 / Units.AMMONIA_PER_N),
    AMMONIUM_FOR_N(Units.AMMONIUM_PER_N),
    GALLONS_FOR_LITRES(1 / Units.LITRES_PER_US_GALLON),
    LITRES_FOR_GALLONS(Units.LITRES_PER_US_GALLON),
    OUNCES_FOR_GRAMS(1 / Units.GRAMS_PER_OUNCE),
    GRAMS_FOR_OUNCES(Units.GRAMS_PER_OUNCE),
    POUNDS_FOR_GRAMS(1 / Units.GRAMS_PER_POUND),
    PERCENT_FOR_SHARE(100),
    SHARE_FOR_PERCENT(0.01),
    TENFOLD(10),
    TENTH(0.1),
    THOUSANDFOLD(1000),
    THOUSANDTH(0.001);

    private static final double WITHIN = 0.02;

    private final double factor;

    UnitSlip(double factor) {
        this.factor = factor;
    }

    public double factor() {
        return factor;
    }

    /** Key of its sentence. */
    public String key() {
        return "slip." + name().toLowerCase(Locale.ROOT);
    }

    /** The slip that explains an answer, if one does. @param given the answer, @param exact the right one, same unit */
    public static Optional<UnitSlip> between(double given, double exact) {
        return exact == 0
                ? Optional.empty()
                : Arrays.stream(values())
                        .filter(slip -> StrictMath.abs(given / exact / slip.factor - 1) < WITHIN)
                        .findFirst();
    }
}
