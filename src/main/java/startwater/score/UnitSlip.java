package startwater.score;

import java.util.EnumSet;
import java.util.Set;
import startwater.quantity.Molar;
import startwater.quantity.Units;

/** A slip of unit, known by what it makes of the right number. */
public enum UnitSlip {
    /** The molecule or ion in place of its nitrogen. */
    AS_AMMONIA(Units.AMMONIA_PER_N),
    AS_AMMONIUM(Units.AMMONIUM_PER_N),
    AS_NITRITE_ION(Units.NITRITE_ION_PER_N),
    AS_NITRATE_ION(Units.NITRATE_ION_PER_N),
    /** Nitrogen that is nitrogen already, divided once more. */
    AS_NITROGEN(1 / Units.AMMONIA_PER_N),
    NITRITE_AS_NITROGEN(1 / Units.NITRITE_ION_PER_N),
    NITRATE_AS_NITROGEN(1 / Units.NITRATE_ION_PER_N),
    /** US gallons in place of litres, and the other way round. */
    GALLONS_FOR_LITRES(1 / Units.LITRES_PER_US_GALLON),
    LITRES_FOR_GALLONS(Units.LITRES_PER_US_GALLON),
    /** German degrees of hardness in place of mg/L as CaCO3: 17.85 mg/L to the degree, and the other way round. */
    DEGREES_FOR_CACO3(1 / UnitSlip.CACO3_PER_DEGREE),
    CACO3_FOR_DEGREES(UnitSlip.CACO3_PER_DEGREE),
    /** Milliequivalents in place of mg/L as CaCO3, and the other way round. */
    MEQ_FOR_CACO3(1 / Units.MG_CACO3_PER_MEQ),
    CACO3_FOR_MEQ(Units.MG_CACO3_PER_MEQ),
    /** Salt in place of its chloride, and the other way round. */
    SALT_FOR_CHLORIDE(Molar.NACL / Molar.CL),
    CHLORIDE_FOR_SALT(Molar.CL / Molar.NACL),
    /** Ounces in place of grams, pounds in place of grams. */
    OUNCES_FOR_GRAMS(1 / Units.GRAMS_PER_OUNCE),
    POUNDS_FOR_GRAMS(1 / Units.GRAMS_PER_POUND),
    /** Percent not turned into a share, and a share given for percent. */
    PERCENT(100),
    SHARE(0.01),
    /** Parts per thousand or grams where parts per million or milligrams were due, and the like. */
    THOUSANDFOLD(1000),
    THOUSANDTH(0.001),
    MILLIONFOLD(1e6),
    /** Degrees Fahrenheit where Celsius was due, and the other way round. */
    FAHRENHEIT_FOR_CELSIUS(1.8, 32),
    CELSIUS_FOR_FAHRENHEIT(1 / 1.8, -32 / 1.8);

    private static final double CACO3_PER_DEGREE = 17.85;

    private final double factor;
    private final double offset;

    UnitSlip(double factor) {
        this(factor, 0);
    }

    UnitSlip(double factor, double offset) {
        this.factor = factor;
        this.offset = offset;
    }

    /** What it makes of the right number. */
    public double wrong(double exact) {
        return factor * exact + offset;
    }

    /** What is worked out, so that only slips that can happen there are named. */
    public enum Quantity {
        /** Ammonia as nitrogen, mg/L. */
        AMMONIA(AS_AMMONIA, AS_AMMONIUM, AS_NITROGEN, PERCENT, SHARE, THOUSANDFOLD, THOUSANDTH),
        /** Nitrite as nitrogen, mg/L. */
        NITRITE(AS_NITRITE_ION, NITRITE_AS_NITROGEN, PERCENT, THOUSANDFOLD, THOUSANDTH),
        /** Nitrate as nitrogen, mg/L. */
        NITRATE(AS_NITRATE_ION, NITRATE_AS_NITROGEN, PERCENT, THOUSANDFOLD, THOUSANDTH),
        /** Chloride, mg/L. */
        CHLORIDE(SALT_FOR_CHLORIDE, AS_NITRITE_ION, NITRITE_AS_NITROGEN, THOUSANDFOLD, THOUSANDTH),
        /** Alkalinity or hardness, mg/L as CaCO3. */
        ALKALINITY(DEGREES_FOR_CACO3, CACO3_FOR_DEGREES, MEQ_FOR_CACO3, CACO3_FOR_MEQ, THOUSANDFOLD, THOUSANDTH),
        /** Water, L. */
        VOLUME(GALLONS_FOR_LITRES, LITRES_FOR_GALLONS, PERCENT, SHARE, THOUSANDFOLD, THOUSANDTH),
        /** A dose, g; its sum starts from a volume and a concentration. */
        DOSE(
                GALLONS_FOR_LITRES,
                LITRES_FOR_GALLONS,
                CHLORIDE_FOR_SALT,
                OUNCES_FOR_GRAMS,
                POUNDS_FOR_GRAMS,
                AS_NITRITE_ION,
                NITRITE_AS_NITROGEN,
                THOUSANDFOLD,
                THOUSANDTH,
                MILLIONFOLD),
        /** Temperature, °C. */
        TEMPERATURE(FAHRENHEIT_FOR_CELSIUS, CELSIUS_FOR_FAHRENHEIT);

        private final Set<UnitSlip> possible;

        Quantity(UnitSlip first, UnitSlip... more) {
            this.possible = EnumSet.of(first, more);
        }

        public Set<UnitSlip> possible() {
            return EnumSet.copyOf(possible);
        }
    }
}
