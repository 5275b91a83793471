package startwater.water;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.ReferenceTable;
import startwater.quantity.Molar;
import startwater.quantity.Units;

/** What happens to a closed water when something is added, against the USGS code PHREEQC. */
@Tag("outside")
class WaterChangesReferenceTest {
    private static final double TEMPERATURE_C = 28;
    /** CO2 is ten to the power of pH: 0.04 in pH is 10 % in CO2. */
    private static final double CO2_RELATIVE = 0.10;

    private static final double CO2_PRINTED = 0.01;
    /** Alkalinity in mg/L, beside the tolerance of the table. */
    private static final double ALKALINITY_PRINTED = 0.03;

    private static final ReferenceTable TABLE = ReferenceTable.read("water/water-changes-phreeqc.csv");

    /** A water by what does not change on mixing. Ions counts every single-charged anion, meq/L. */
    private record Water(double alk, double dic, double ions) {
        static Water of(double caco3MgPerL, double ph) {
            double alk = Units.meqFromCaco3(caco3MgPerL);
            return new Water(alk, system(alk).dicFromPh(alk, 0, ph), alk);
        }

        Water plus(double meq, double mmolCarbon, double meqIons) {
            return new Water(alk + meq, dic + mmolCarbon, ions + meqIons);
        }

        static CarbonateSystem system(double ions) {
            return CarbonateSystem.at(TEMPERATURE_C, ions / 1000);
        }

        double h() {
            return system(ions).solveH(alk, dic, 0);
        }
    }

    /** Added alkalinity meq/L, carbon mmol/L and ions meq/L of each change. Calcium and two chlorides weigh as three. */
    private static final Map<String, double[]> ADDED = Map.ofEntries(
            Map.entry("+1.000 mmol/L NaHCO3", new double[] {1, 1, 1}),
            Map.entry("+0.500 mmol/L Na2CO3", new double[] {1, 0.5, 1}),
            Map.entry("+0.500 mmol/L NaOH", new double[] {0.5, 0, 0.5}),
            Map.entry("1 mg N/L", new double[] {-2 / Molar.N, 0, 0}),
            Map.entry("2 mg N/L", new double[] {-4 / Molar.N, 0, 0}),
            Map.entry("5 mg N/L", new double[] {-10 / Molar.N, 0, 0}),
            Map.entry("10 mg N/L", new double[] {-20 / Molar.N, 0, 0}),
            Map.entry("+2 mg/L CO2", new double[] {0, 2 / Molar.CO2, 0}),
            Map.entry("+5 mg/L CO2", new double[] {0, 5 / Molar.CO2, 0}),
            Map.entry("+10 mg/L CO2", new double[] {0, 10 / Molar.CO2, 0}),
            Map.entry("+20 mg/L CO2", new double[] {0, 20 / Molar.CO2, 0}),
            Map.entry("strip CO2 18.15 -> 5.02 mg/L", new double[] {0, -13.13 / Molar.CO2, 0}),
            Map.entry("+1 mmol/L CaCl2", new double[] {0, 0, 3}));

    @Test
    void closedWatersEndWherePhreeqcSaysTheyDo() {
        int tried = 0;
        for (ReferenceTable.Row row : TABLE.rows()) {
            double[] added = ADDED.get(row.text("change"));
            if (added != null) {
                Water end = Water.of(row.number("start_alkalinity"), row.number("start_ph"))
                        .plus(added[0], added[1], added[2]);
                check(row, end, end.h());
                tried++;
            }
        }
        assertThat(tried).isEqualTo(TABLE.rows().size() - 2);
    }

    @Test
    void twoWatersMixByAlkalinityAndCarbonNotByPh() {
        ReferenceTable.Row row = row("mix");
        Water one = Water.of(40, 6.60);
        Water other = Water.of(120, 7.80);
        Water mixed = new Water(
                WaterChange.after(one.alk, other.alk, 0.3),
                WaterChange.after(one.dic, other.dic, 0.3),
                WaterChange.after(one.ions, other.ions, 0.3));
        check(row, mixed, mixed.h());
    }

    @Test
    void airLiftsThePhThatNitrificationLowered() {
        ReferenceTable.Row row = row("nitrif_acid_open");
        Water acid = Water.of(100, 7.50).plus(-20 / Molar.N, 0, 0);
        CarbonateSystem system = Water.system(acid.ions);
        double co2 = system.co2InBalanceWith(420e-6);
        double h = system.solveHAtCo2(acid.alk, co2, 0);
        check(row, new Water(acid.alk, system.dicFromCo2(h, co2), acid.ions), h);
    }

    private static ReferenceTable.Row row(String name) {
        return TABLE.rows().stream()
                .filter(row -> row.text("case").equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static void check(ReferenceTable.Row row, Water end, double h) {
        String what = row.text("start_alkalinity") + " at pH " + row.text("start_ph") + ", " + row.text("change");
        TABLE.check(
                what + ": alkalinity", row.number("end_alkalinity"), Units.caco3FromMeq(end.alk), ALKALINITY_PRINTED);
        TABLE.check(what + ": pH", row.number("end_ph"), -StrictMath.log10(h));
        double co2 = row.number("end_co2_mg_per_l");
        TABLE.check(
                what + ": CO2",
                co2,
                Molar.CO2 * Water.system(end.ions).co2(h, end.dic),
                CO2_RELATIVE * co2 + CO2_PRINTED - TABLE.allowed(co2));
    }
}
