package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.ReferenceTable;
import startwater.water.Dose;

/** What nitrification takes out of the water, and a tank that runs out of it. */
@Tag("outside")
class AlkalinityBehaviourTest {
    private static final ReferenceTable PUBLISHED = ReferenceTable.read("biofilter/stoichiometry.csv");

    private static TestTank.Plan mature() {
        return TestTank.plan().seeds(0.5, 0.5);
    }

    private static void check(String what, double computed) {
        ReferenceTable.Row row = PUBLISHED.rows().stream()
                .filter(r -> r.text("quantity").equals(what))
                .findFirst()
                .orElseThrow();
        PUBLISHED.checkBetween(what, row.number("low"), row.number("high"), computed);
    }

    @Test
    void dosedAmmoniumCostsTwoEquivalentsOfAlkalinityPerMole() {
        TestTank tank = mature().water(7.8, 150, 0, 20).fill();
        double before = tank.alkalinity();
        double oxidisedBefore = tank.nitrite() + tank.nitrate();
        tank.ammonia(6);
        tank.run(3);
        assertThat(tank.tan()).isLessThan(0.1);
        double perGram = (before - tank.alkalinity()) / (tank.nitrite() + tank.nitrate() - oxidisedBefore);
        check("alkalinity_g_per_g_dosed", perGram);
        assertThat(perGram).isCloseTo(2 * SourceWater.MG_CACO3_PER_MEQ / 14.007, within(1e-6));
    }

    /** Excretion gives half of it back: what counts from feed to nitrate is 3.57. */
    @Test
    void fedTanksLoseHalfAsMuch() {
        TestTank tank = mature().species("channel-catfish")
                .water(7.8, 150, 0, 500)
                .stock(1.5, 15)
                .fed(1);
        tank.run(3);
        double before = tank.alkalinity();
        double oxidisedBefore = tank.nitrite() + tank.nitrate();
        double tanBefore = tank.tan();
        tank.run(6);
        double oxidised = tank.nitrite() + tank.nitrate() - oxidisedBefore;
        double perGram = (before - tank.alkalinity()) / oxidised;
        assertThat(StrictMath.abs(tank.tan() - tanBefore)).isLessThan(0.02 * oxidised);
        check("alkalinity_g_per_g_fed", perGram);
    }

    @Test
    void aKilogramOfRichFeedTakesAQuarterKilogramOfBicarbonate() {
        TestTank tank = mature().species("nile-tilapia")
                .protein(0.40)
                .water(7.8, 120, 0, 500)
                .stock(1.5, 15)
                .fed(0.4)
                .alkalinityKept(120);
        tank.run(20);
        check("bicarbonate_g_per_kg_feed_40", tank.bicarbonateG / tank.feedKg());
    }

    /** What comes in through the surface, summed by the minute, against what the two steps need. At rest water is full. */
    @Test
    void oxidisingAGramTakesFourAndAHalfGramsOfOxygen() {
        TestTank tank = mature().water(7.8, 150, 0, 20).fill();
        tank.run(1);
        double saturation = tank.oxygen();
        double perDay = 24 * 2.1 * StrictMath.pow(1.024, 7);
        double nitrateBefore = tank.nitrate();
        tank.ammonia(6);
        double transferred = 0;
        for (int m = 0; m < 4 * 1440; m++) {
            double start = tank.oxygen();
            tank.minute();
            transferred += perDay / 1440 * (saturation - (start + tank.oxygen()) / 2);
        }
        double made = tank.nitrate() - nitrateBefore;
        assertThat(made).isBetween(5.9, 6.1);
        check("oxygen_g_per_g", (transferred + saturation - tank.oxygen()) / made);
    }

    /** It does not stop: it sits where it oxidises about half of what is excreted, and ammonia climbs unseen. */
    @Test
    void aTankWithoutAlkalinityStallsAndHoardsAmmonia() {
        TestTank tank = sour();
        tank.run(10);
        double oxidised = tank.nitrite() + tank.nitrate();
        double tan = tank.tan();
        for (int day = 0; day < 20; day++) {
            tank.run(1);
            assertThat(tank.ph()).isBetween(6.5, 6.72);
            assertThat(tank.toxicAmmonia()).isLessThan(0.2);
        }
        double made = tank.nitrite() + tank.nitrate() - oxidised;
        double hoarded = tank.tan() - tan;
        assertThat(made / (made + hoarded)).isBetween(0.4, 0.6);
        assertThat(hoarded).isGreaterThan(20);
    }

    @Test
    void raisingThePhOfSuchATankSetsTheAmmoniaFree() {
        TestTank tank = sour();
        tank.run(20);
        double before = tank.toxicAmmonia();
        tank.dose(Dose.SODIUM_BICARBONATE, 100);
        tank.run(0.25);
        assertThat(tank.toxicAmmonia()).isGreaterThan(4 * before).isGreaterThan(0.4);
    }

    private static TestTank sour() {
        return TestTank.plan()
                .species("channel-catfish")
                .sensitivity(TestTank.UNHARMED)
                .seeds(0.3, 0.3)
                .air(1.2, 0.4)
                .water(7.2, 40, 0, 500)
                .stock(5, 15)
                .fed(0.7);
    }

    /** Impaired at 40 mg/L and under, unaffected at 45 and over (Water Environ. Res. 75(3), 2003). */
    @Test
    void alkalinityIsAFloor() {
        double atForty = factor(40);
        check("rate_share_at_alkalinity_45", factor(45) / factor(200));
        check("rate_share_at_alkalinity_40", atForty / factor(200));
        check("rate_share_at_alkalinity_25", factor(25) / factor(200));
        assertThat(atForty).isLessThan(factor(45));
    }

    private static double factor(double alkalinityMgPerL) {
        return startwater.biofilter.Nitrification.alkalinityFactor(alkalinityMgPerL / SourceWater.MG_CACO3_PER_MEQ);
    }
}
