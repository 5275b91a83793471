package startwater.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Random;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import startwater.ReferenceTable;
import startwater.bench.ClosedWater.Change;
import startwater.quantity.Molar;
import startwater.water.CarbonateConstants;
import startwater.water.Davies;

class ClosedWaterTest {
    private static final Map<String, Change> CHANGES = Map.ofEntries(
            Map.entry("+1.000 mmol/L NaHCO3", new Change(Molar.NAHCO3, 0, 0, 0)),
            Map.entry("+0.500 mmol/L Na2CO3", new Change(0, Molar.NA2CO3 / 2, 0, 0)),
            Map.entry("1 mg N/L", new Change(0, 0, 1, 0)),
            Map.entry("2 mg N/L", new Change(0, 0, 2, 0)),
            Map.entry("5 mg N/L", new Change(0, 0, 5, 0)),
            Map.entry("10 mg N/L", new Change(0, 0, 10, 0)),
            Map.entry("+2 mg/L CO2", new Change(0, 0, 0, 2)),
            Map.entry("+5 mg/L CO2", new Change(0, 0, 0, 5)),
            Map.entry("+10 mg/L CO2", new Change(0, 0, 0, 10)),
            Map.entry("+20 mg/L CO2", new Change(0, 0, 0, 20)),
            Map.entry("strip CO2 18.15 -> 5.02 mg/L", new Change(0, 0, 0, 5.02 - 18.15)));

    /** The USGS code PHREEQC 3 on the same changes. */
    @Test
    void endsWherePhreeqcSays() {
        ReferenceTable table = ReferenceTable.read("water/water-changes-phreeqc.csv");
        int tried = 0;
        for (ReferenceTable.Row row : table.rows()) {
            Change change = CHANGES.get(row.text("change"));
            if (change == null) {
                continue;
            }
            Sum sum = ClosedWater.after(28, row.number("start_alkalinity"), row.number("start_ph"), change);
            double ph = row.number("end_ph");
            double co2 = row.number("end_co2_mg_per_l");
            assertThat(sum.answer().value()).as("%s", row).isCloseTo(ph, within(table.allowed(ph)));
            assertThat(sum.value("alkalinity")).as("%s", row).isCloseTo(row.number("end_alkalinity"), within(0.07));
            assertThat(sum.value("co2")).as("%s", row).isCloseTo(co2, within(0.03 * co2 + 0.01));
            tried++;
        }
        assertThat(tried).isEqualTo(13);
    }

    /**
     * The same chemistry written the other way round: Brent's method of Commons Math on the charge balance, with ionic
     * strength summed over every ion and settled anew at each trial. Heavy soda ash makes carbonate, whose double charge
     * weighs four times.
     */
    @ParameterizedTest
    @CsvSource({"0, 60, 7.2", "400, 60, 7.2", "3000, 150, 7.8", "8000, 20, 6.9"})
    void agreesWithAChargeBalanceSettledIonByIon(double sodaAshMgPerL, double alkalinity, double ph) {
        Sum sum = ClosedWater.after(25, alkalinity, ph, new Change(0, sodaAshMgPerL, 0, 0));
        double sodiumMmol = sum.value("alkalinity") / 50.04;
        double phByBrent = new BrentSolver(1e-12).solve(200, p -> chargeLeft(p, sodiumMmol, sum.value("dic")), 3, 12.9);
        assertThat(sum.answer().value()).isCloseTo(phByBrent, within(1e-4));
    }

    private static double chargeLeft(double ph, double sodiumMmol, double dicMmol) {
        CarbonateConstants k = CarbonateConstants.at(25);
        double h = Math.pow(10, -ph);
        double ionic = sodiumMmol / 1000;
        double left = 0;
        for (int i = 0; i < 50; i++) {
            double g1 = Math.pow(10, Davies.log10Gamma(1, ionic, 25));
            double g2 = Math.pow(10, Davies.log10Gamma(2, ionic, 25));
            double bicarbonate = k.k1() / (h * g1);
            double carbonate = k.k1() * k.k2() / (h * h * g2);
            double co2 = dicMmol / (1 + bicarbonate + carbonate);
            double proton = 1000 * h / g1;
            double hydroxide = 1000 * k.kw() / (h * g1);
            double positive = sodiumMmol + proton;
            left = positive - co2 * (bicarbonate + 2 * carbonate) - hydroxide;
            double weighed = positive + co2 * (bicarbonate + 4 * carbonate) + hydroxide;
            ionic = Math.min(0.5, weighed / 2000);
        }
        return left;
    }

    @Test
    void anUntouchedWaterKeepsItsPh() {
        Random random = new Random(21);
        for (int i = 0; i < 300; i++) {
            double ph = 5 + 5 * random.nextDouble();
            double alkalinity = 30 + 300 * random.nextDouble();
            Sum sum = ClosedWater.after(40 * random.nextDouble(), alkalinity, ph, new Change(0, 0, 0, 0));
            assertThat(sum.answer().value()).isCloseTo(ph, within(1e-6));
            assertThat(sum.value("alkalinity")).isCloseTo(alkalinity, within(1e-9));
        }
    }

    @Test
    void twoDosesEndWhereOneDoseOfBothDoes() {
        Sum first = ClosedWater.after(25, 60, 7.2, new Change(40, 30, 0, 6));
        Sum second =
                ClosedWater.after(25, first.value("alkalinity"), first.answer().value(), new Change(20, 10, 0, -3));
        Sum once = ClosedWater.after(25, 60, 7.2, new Change(60, 40, 0, 3));
        assertThat(second.answer().value()).isCloseTo(once.answer().value(), within(1e-6));
        assertThat(second.value("co2")).isCloseTo(once.value("co2"), within(1e-6));
    }

    @Test
    void strippingUndoesAddedCarbonDioxide() {
        Sum up = ClosedWater.after(25, 80, 7.4, new Change(0, 0, 0, 15));
        Sum back = ClosedWater.after(25, 80, up.answer().value(), new Change(0, 0, 0, -15));
        assertThat(back.answer().value()).isCloseTo(7.4, within(1e-6));
    }

    @Test
    void airPullsThePhToTheSameEndWhateverTheCarbonDioxide() {
        double low = ClosedWater.after(26, 100, 6.5, new Change(0, 0, 0, 0)).value("ph_aired");
        double high = ClosedWater.after(26, 100, 9.0, new Change(0, 0, 0, 0)).value("ph_aired");
        assertThat(low).isCloseTo(high, within(0.01));
        assertThat(low).isBetween(8.2, 8.4);
    }

    /** 7.14 g of CaCO3 per g of nitrogen: two moles of acid a mole, as every handbook has it. */
    @Test
    void nitrificationTakesSevenTimesItsNitrogen() {
        assertThat(ClosedWater.after(25, 100, 7.5, new Change(0, 0, 3, 0)).value("alkalinity"))
                .isCloseTo(100 - 3 * 7.145, within(0.01));
    }

    @Test
    void moreNitrificationThanAlkalinityLeavesAcidWater() {
        Sum sum = ClosedWater.after(25, 30, 7.0, new Change(0, 0, 10, 0));
        assertThat(sum.value("alkalinity")).isNegative();
        assertThat(sum.answer().value()).isLessThan(4.5);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 11, 0, 0, NO_SUCH_WATER",
        "50, 7, 0, -200, MORE_THAN_IT_HOLDS",
        "50, 7, 400, 0, ENDS_BEYOND_PH",
        "50, 2.9, 0, 0, OUTSIDE"
    })
    void refusesWatersThatCannotBe(
            double alkalinity, double ph, double nitrified, double co2, RefusedInputException.Reason reason) {
        assertThatThrownBy(() -> ClosedWater.after(25, alkalinity, ph, new Change(0, 0, nitrified, co2)))
                .isInstanceOfSatisfying(
                        RefusedInputException.class, e -> assertThat(e.reason()).isEqualTo(reason));
    }
}
