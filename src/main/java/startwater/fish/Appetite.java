package startwater.fish;

import startwater.quantity.OutOfRangeException;
import startwater.quantity.Validity;

/**
 * How appetite falls with ammonia, oxygen, bound blood and temperature: the product of straight lines, each clipped to
 * 0..1. Fish still beg at ammonia that already harms: appetite is no safety meter.
 *
 * @param ammoniaStartMgPerL NH3-N at which appetite begins to fall
 * @param ammoniaSpanMgPerL mg N/L from there to none (Nile tilapia 0.06 and 1.40: Abdalla and McNabb 1998)
 * @param coldLine warming line: value = intercept + slope T, lower branch
 * @param warmLine second branch of the warming line, used above {@code bendC}
 * @param bendC where the second branch begins, °C
 * @param heatEndC appetite is nil here, °C
 * @param heatSpanC degrees below the end over which it falls
 */
public record Appetite(
        double ammoniaStartMgPerL,
        double ammoniaSpanMgPerL,
        Line coldLine,
        Line warmLine,
        double bendC,
        double heatEndC,
        double heatSpanC) {
    private static final String EQUATION = "appetite";
    private static final String SOURCE = "the species file names its source";
    /** Spans over which appetite falls: a span of nothing would divide by nothing. */
    public static final Validity AMMONIA_SPAN = new Validity(EQUATION, "span of ammonia in mg N/L", 1e-3, 100, SOURCE);

    /** The same for heat, °C. */
    public static final Validity HEAT_SPAN_C = new Validity(EQUATION, "span of heat in °C", 1e-3, 40, SOURCE);
    /** Where the falls begin: ammonia, mg N/L. */
    public static final Validity AMMONIA_START = new Validity(EQUATION, "ammonia in mg N/L", 0, 100, SOURCE);
    /** Temperatures of the lines, °C. */
    public static final Validity TEMPERATURE_C = new Validity(EQUATION, "temperature in °C", 0, 50, SOURCE);

    /** @throws OutOfRangeException for a span that is not positive, or a start outside what water can be */
    public Appetite {
        AMMONIA_START.check(ammoniaStartMgPerL);
        AMMONIA_SPAN.check(ammoniaSpanMgPerL);
        TEMPERATURE_C.check(bendC);
        TEMPERATURE_C.check(heatEndC);
        HEAT_SPAN_C.check(heatSpanC);
    }

    /** A straight line. */
    public record Line(double intercept, double slope) {
        double at(double x) {
            return intercept + slope * x;
        }
    }

    /** Appetite 0..1 by temperature alone, °C. */
    public double temperature(double temperatureC) {
        double rise = clip((temperatureC < bendC ? coldLine : warmLine).at(temperatureC));
        return rise * clip((heatEndC - temperatureC) / heatSpanC);
    }

    /**
     * Appetite 0..1.
     *
     * @param ammoniaMgPerL un-ionised ammonia as it counts, mg N/L
     * @param oxygenMgPerL mg/L
     * @param methaemoglobin share 0..1
     * @param temperatureC °C
     */
    public double of(double ammoniaMgPerL, double oxygenMgPerL, double methaemoglobin, double temperatureC) {
        return clip(1 - (ammoniaMgPerL - ammoniaStartMgPerL) / ammoniaSpanMgPerL)
                * clip((oxygenMgPerL - 1) / 3)
                * clip(1 - (methaemoglobin - 0.2) / 0.6)
                * temperature(temperatureC);
    }

    private static double clip(double x) {
        return x < 0 ? 0 : Math.min(x, 1);
    }
}
