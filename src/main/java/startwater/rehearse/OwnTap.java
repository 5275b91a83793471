package startwater.rehearse;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import startwater.drill.Prior;
import startwater.drill.Scenario;
import startwater.drill.Unknown;
import startwater.quantity.Molar;
import startwater.quantity.Units;

/** The source water of a form: what was read, and what may be believed of the rest. */
final class OwnTap {
    private static final double MOST_ALKALINITY = 500;
    private static final double MOST_CHLORIDE = 2000;
    private static final double MOST_C = 40;
    private static final double USUAL_C = 18;
    private static final double USUAL_NITRATE = 1;
    /** Water of less alkalinity, mg/L, takes its pH from the air and not from lime (common practice, no source). */
    private static final double SOFT_MG_PER_L = 10;
    /** pH at which as much carbon dioxide as bicarbonate is there, 25 °C (Plummer and Busenberg 1982). */
    private static final double FIRST_PK = 6.35;

    private OwnTap() {}

    static Scenario.Source source(OwnSystem own) {
        OwnSystem.Tap tap = own.tap();
        double stated = statedChlorine(own);
        return new Scenario.Source(
                OwnScenario.rounded(celsius(own)),
                or(tap.ph(), usualPh(tap).value()),
                or(tap.alkalinityMgPerL(), usualAlkalinity(tap)),
                or(tap.ammoniaMgPerL(), 0),
                or(tap.nitrateMgPerL(), USUAL_NITRATE),
                or(tap.chlorideMgPerL(), Facts.of("tap.chloride").value()),
                0,
                OwnScenario.rounded(stated / 2),
                stated);
    }

    private static double or(@Nullable Double value, double otherwise) {
        return value == null ? otherwise : value;
    }

    static double statedChlorine(OwnSystem own) {
        return or(own.tap().chlorineMgPerL(), Facts.of("tap.stated-chlorine").value());
    }

    /** Where the source's temperature is not known it is as warm as the room, or else as the tank. */
    static double celsius(OwnSystem own) {
        Double room = own.vessel().roomC();
        Double water = own.vessel().waterC();
        double otherwise = room != null ? room : water != null ? water : USUAL_C;
        return Math.min(MOST_C, or(own.tap().temperatureC(), otherwise));
    }

    /** A reading is good to half a block; what was not read may be anything usual. */
    static void put(OwnSystem own, Map<Unknown, Prior> unknowns) {
        OwnSystem.Tap tap = own.tap();
        Facts.Fact ph = usualPh(tap);
        unknowns.put(
                Unknown.SOURCE_PH,
                tap.ph() == null ? new Prior.Gaussian(ph.value(), ph.sd()) : new Prior.Known(tap.ph()));
        unknowns.put(
                Unknown.SOURCE_ALKALINITY,
                tap.alkalinityMgPerL() == null
                        ? new Prior.LogNormal(
                                usualAlkalinity(tap), Facts.of("tap.alkalinity").sd())
                        : read(tap.alkalinityMgPerL(), MOST_ALKALINITY));
        unknowns.put(
                Unknown.SOURCE_CHLORIDE,
                tap.chlorideMgPerL() == null
                        ? Facts.of("tap.chloride").times(1)
                        : read(tap.chlorideMgPerL(), MOST_CHLORIDE));
        double stated = statedChlorine(own);
        if (stated > 0) {
            Prior half = new Prior.Uniform(0, OwnScenario.rounded(stated / 2));
            unknowns.put(Unknown.SOURCE_FREE_CHLORINE, half);
            unknowns.put(Unknown.SOURCE_COMBINED_CHLORINE, half);
        }
    }

    private static Prior.Uniform read(double value, double most) {
        double spread = Facts.of("strip.reading").sd();
        return new Prior.Uniform(
                OwnScenario.rounded(value * (1 - spread)), OwnScenario.rounded(Math.min(most, value * (1 + spread))));
    }

    /** pH that is not told. */
    static Facts.Fact usualPh(OwnSystem.Tap tap) {
        Double alkalinity = tap.alkalinityMgPerL();
        return Facts.of(alkalinity != null && alkalinity < SOFT_MG_PER_L ? "tap.ph-soft" : "tap.ph");
    }

    /**
     * Alkalinity that is not told, mg/L as CaCO3: the usual one, but no more than goes with the pH and the most carbon dioxide
     * of such water.
     */
    static double usualAlkalinity(OwnSystem.Tap tap) {
        double usual = Facts.of("tap.alkalinity").value();
        Double ph = tap.ph();
        if (ph == null) {
            return usual;
        }
        double meq = Facts.of("tap.most-co2").value() / Molar.CO2 * StrictMath.pow(10, ph - FIRST_PK);
        return OwnScenario.rounded(Math.min(usual, meq * Units.MG_CACO3_PER_MEQ));
    }
}
