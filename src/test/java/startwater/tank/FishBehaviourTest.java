package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import startwater.ReferenceTable;
import startwater.fish.Species;
import startwater.fish.Stressor;
import startwater.fish.SurvivalCurve;

/** Growth, excretion and death of fish in the tank, by the production stepper. */
@Tag("outside")
class FishBehaviourTest {
    /** Some curves are so steep that a per cent of exposure moves survival by this much. */
    private static final double STEEP = 0.08;

    static java.util.List<String> species() {
        return Species.ids();
    }

    /** A nursery as published: 500 fish of 2.07 g to the cubic metre, 2.1 % of exchange a day, a ripe filter. */
    private static TestTank nursery() {
        TestTank.Plan plan = TestTank.plan()
                .species("nile-tilapia")
                .volume(12_000)
                .media(1500)
                .seeds(0.8, 0.8)
                .air(15, 0.5)
                .protein(0.40)
                .water(7.4, 150, 0, 200);
        TestTank tank = plan.stock(500 * 2.07 / 1000, 2.07).fed(0.85).alkalinityKept(140);
        tank.controls = Controls.running(27).withInflow(0.021, 0, plan.source());
        return tank;
    }

    private static void check(ReferenceTable table, String what, double computed) {
        ReferenceTable.Row row = table.rows().stream()
                .filter(r -> r.text("quantity").equals(what))
                .findFirst()
                .orElseThrow();
        table.checkBetween(what, row.number("low"), row.number("high"), computed);
    }

    @Test
    void nurseryFishGrowFromTwoToFiftyGramsInSixtyDays() {
        ReferenceTable table = ReferenceTable.read("fish/nursery.csv");
        TestTank tank = nursery();
        double before = TankReadings.biomassG(tank.y, 1);
        double given = excreted(tank);
        tank.run(60);
        double mass = TankReadings.massG(tank.y, 1);
        check(table, "end_mass_g", mass);
        check(table, "specific_growth_percent_day", 100 * StrictMath.log(mass / 2.07) / 60);
        check(table, "survival", tank.survival());
        check(table, "feed_conversion", 1000 * tank.feedKg() / (TankReadings.biomassG(tank.y, 1) - before));
        check(table, "tan_share_of_feed_nitrogen", (excreted(tank) - given) / tank.y[TankLayout.FED]);
    }

    /** Nitrogen that has left the fish alive and is not organic: fed less what stays in fish, dead and solids. */
    private static double excreted(TestTank tank) {
        double[] y = tank.y;
        return y[TankLayout.FED]
                + y[TankLayout.BROUGHT_IN]
                - y[TankLayout.REMOVED]
                - y[TankLayout.GUT_1]
                - y[TankLayout.GUT_2]
                - y[TankLayout.FISH_N]
                - y[TankLayout.ORGANIC_N] * tank.parameters.volumeL();
    }

    @Test
    void excretionByWeightKeepsToThePublishedSize() {
        ReferenceTable table = ReferenceTable.read("fish/excretion-red-tilapia.csv");
        for (ReferenceTable.Row row : table.rows()) {
            double mass = row.number("mass_g");
            TestTank tank = TestTank.plan()
                    .species("nile-tilapia")
                    .seeds(1e-12, 1e-12)
                    .temperature(28)
                    .protein(0.35)
                    .water(6.8, 60, 0, 200)
                    .stock(0.3, mass)
                    .fed(0.5);
            tank.run(2);
            double before = tank.tan();
            tank.run(1);
            double perKgHour = (tank.tan() - before) / 0.3 / 24 * 1000;
            double published = row.number("tan_mg_per_kg_hour");
            table.checkBetween(row.text("mass_g") + " g", published / 3, published * 3, perKgHour);
        }
    }

    @Test
    void excretionPeaksFiveHoursAfterAMeal() {
        TestTank tank =
                TestTank.plan().species("nile-tilapia").seeds(1e-12, 1e-12).stock(1, 15);
        tank.event(new TankEvent.Meal(1, 1, Double.NaN));
        double best = 0;
        double bestHour = 0;
        for (int hour = 1; hour <= 24; hour++) {
            double before = tank.tan();
            tank.run(1.0 / 24);
            if (tank.tan() - before > best) {
                best = tank.tan() - before;
                bestHour = hour;
            }
        }
        assertThat(bestHour).isBetween(4.0, 6.0);
    }

    /** In standing water whose ammonia or nitrite hardly moves, half are dead at the stated concentration. */
    @ParameterizedTest
    @MethodSource("species")
    void halfDieAtTheLethalConcentrationInTheTank(String id) {
        Species species = Species.byId(id);
        SurvivalCurve ammonia = species.curve(Stressor.AMMONIA);
        TestTank tank = TestTank.plan()
                .species(id)
                .seeds(1e-12, 1e-12)
                .temperature(id.equals("rainbow-trout") ? 14 : 24)
                .water(8, 200, 10, 500)
                .fill()
                .run(5);
        tank.y[TankLayout.TAN] *= ammonia.lc50(4) / toxic(tank);
        tank.run(1);
        tank.y[TankLayout.TAN] *= ammonia.lc50(4) / toxic(tank);
        TankStart.stock(tank.y, tank.parameters, 1, 12);
        tank.run(4);
        assertThat(toxic(tank)).isCloseTo(ammonia.lc50(4), within(0.01 * ammonia.lc50(4)));
        assertThat(tank.survival()).isCloseTo(0.5, within(STEEP));
    }

    private static double toxic(TestTank tank) {
        return tank.toxicAmmonia() / Species.ammoniumFactor(tank.y[TankLayout.H_ION]);
    }

    @ParameterizedTest
    @CsvSource({"nile-tilapia, 6.0", "channel-catfish, 1.3"})
    void halfDieOfNitriteInTheTank(String id, double statedMgPerL) {
        TestTank tank = TestTank.plan()
                .species(id)
                .seeds(1e-12, 1e-12)
                .water(7.5, 100, 0, 0)
                .stock(12 * 1e-6, 12);
        tank.y[TankLayout.NITRITE] = statedMgPerL;
        tank.run(4);
        assertThat(tank.survival()).isCloseTo(0.5, within(0.02));
    }

    /** Nile tilapia in nitrite-N 5 for 96 h: about 60 % of the blood bound without chloride, under 10 % at 150. */
    @ParameterizedTest
    @CsvSource({"0, 55, 68", "150, 0, 10"})
    void chlorideKeepsNitriteOutOfTheBlood(double chloride, double low, double high) {
        TestTank tank = TestTank.plan()
                .species("nile-tilapia")
                .seeds(1e-12, 1e-12)
                .water(7.5, 100, 0, chloride)
                .stock(12 * 1e-6, 12);
        tank.y[TankLayout.NITRITE] = 5;
        tank.run(4);
        assertThat(100 * TankReadings.methaemoglobin(tank.y, tank.parameters.species()))
                .isBetween(low, high);
    }

    @Test
    void fastingFishLoseWeightAndExcreteATenth() {
        TestTank fed = TestTank.plan()
                .species("nile-tilapia")
                .seeds(1e-12, 1e-12)
                .stock(0.3, 15)
                .fed(1);
        TestTank fasting =
                TestTank.plan().species("nile-tilapia").seeds(1e-12, 1e-12).stock(0.3, 15);
        fed.run(2);
        fasting.run(2);
        double fedBefore = fed.tan();
        double fastingBefore = fasting.tan();
        fed.run(1);
        fasting.run(1);
        assertThat((fasting.tan() - fastingBefore) / (fed.tan() - fedBefore)).isBetween(0.07, 0.12);
        assertThat(TankReadings.massG(fasting.y, 1)).isLessThan(15).isGreaterThan(14);
    }

    /** A plausible tank far from all others may starve its fry for months; it must not break on that. */
    @Test
    void fryThatAreNeverFedKeepTheirLastMilligram() {
        TestTank tank = TestTank.plan().species("nile-tilapia").seeds(0.5, 0.5).stock(0.001, 0.02);
        tank.run(400);
        assertThat(TankReadings.massG(tank.y, 1)).isBetween(2e-4, 0.002);
    }

    /** The factor on excretion may be drawn so high that more nitrogen would leave than was eaten. */
    @Test
    void noFishLosesWeightByEating() {
        TestTank tank = TestTank.plan()
                .species("nile-tilapia")
                .excretion(3)
                .seeds(0.5, 0.5)
                .stock(0.3, 15);
        double before = tank.y[TankLayout.FISH_N];
        tank.event(new TankEvent.Meal(1, 0.5, Double.NaN));
        assertThat(tank.y[TankLayout.FISH_N]).isGreaterThanOrEqualTo(before * (1 - 1e-12));
    }

    @Test
    void coldWaterStopsTilapiaFeedingBeforeItKills() {
        TestTank tank = TestTank.plan()
                .species("nile-tilapia")
                .temperature(16)
                .stock(1, 15)
                .fed(1);
        tank.run(3);
        assertThat(TankReadings.appetite(tank.y, tank.parameters)).isZero();
        assertThat(tank.survival()).isGreaterThan(0.99);
        TestTank cold = TestTank.plan().species("nile-tilapia").temperature(10).stock(1, 15);
        cold.run(4);
        assertThat(TankReadings.deathsBy(cold.y, 0, Stressor.TEMPERATURE)).isGreaterThan(0.4);
    }
}
