package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.ReferenceTable;
import startwater.fish.Stressor;

/** What happens when the power goes: minutes at high density, hours at low. */
@Tag("outside")
class OxygenBehaviourTest {
    private static final ReferenceTable PUBLISHED = ReferenceTable.read("fish/power-cut.csv");
    private static final double DEADLY_MG_PER_L = 2;

    private static void check(String what, double computed) {
        ReferenceTable.Row row = PUBLISHED.rows().stream()
                .filter(r -> r.text("case").equals(what))
                .findFirst()
                .orElseThrow();
        PUBLISHED.checkBetween(what, row.number("low"), row.number("high"), computed);
    }

    /** Two-gram tilapia, fed to the last meal, with air for their density, as power goes. */
    private static TestTank running(double kgPerM3, double airPerHour) {
        TestTank tank = TestTank.plan()
                .species("nile-tilapia")
                .seeds(0.6, 0.6)
                .volume(1000)
                .media(60)
                .air(airPerHour, 0.4)
                .temperature(28)
                .stock(kgPerM3, 2)
                .fed(0.5);
        tank.run(2 + 1.0 / 24);
        return tank;
    }

    private static double minutesUntil(TestTank tank, java.util.function.BooleanSupplier end) {
        tank.controls = tank.controls.withAir(false).withPump(false);
        int minutes = 0;
        while (!end.getAsBoolean() && minutes < 3 * 1440) {
            tank.minute();
            minutes++;
        }
        return minutes;
    }

    @Test
    void crowdedFishHaveMinutes() {
        TestTank tank = running(22, 6);
        double minutes = minutesUntil(tank, () -> tank.oxygen() < DEADLY_MG_PER_L);
        assertThat(minutes).isBetween(9.0, 13.0);
        check("minutes_to_2_mg_per_l_at_22_kg_per_m3", minutes);
    }

    @Test
    void halfOfCrowdedFishAreDeadInAnHourAndAHalf() {
        TestTank tank = running(22, 6);
        double alive = tank.survival();
        double hours = minutesUntil(tank, () -> tank.survival() < alive / 2) / 60;
        assertThat(hours).isBetween(1.4, 1.8);
        check("hours_to_half_dead_at_22_kg_per_m3", hours);
        assertThat(TankReadings.deathsBy(tank.y, 0, Stressor.LOW_OXYGEN)).isGreaterThan(0.45);
    }

    @Test
    void fishAtLowDensityHaveHours() {
        TestTank tank = running(1.3, 2);
        double hours = minutesUntil(tank, () -> tank.oxygen() < DEADLY_MG_PER_L) / 60;
        assertThat(hours).isBetween(3.0, 48.0);
        assertThat(tank.survival()).isGreaterThan(0.99);
    }

    @Test
    void troutDieAtOxygenThatTilapiaBear() {
        assertThat(oxygenAtFirstDeaths("rainbow-trout", 14)).isGreaterThan(1);
        assertThat(oxygenAtFirstDeaths("nile-tilapia", 28)).isLessThan(0.6);
    }

    /** Oxygen in mg/L after a cut, when the first hundredth of 50 g fish at 15 kg/m3 has died. */
    private static double oxygenAtFirstDeaths(String species, double temperatureC) {
        TestTank tank = TestTank.plan()
                .species(species)
                .seeds(0.6, 0.6)
                .air(6, 0.4)
                .temperature(temperatureC)
                .stock(15, 50);
        tank.run(1);
        minutesUntil(tank, () -> tank.survival() < 0.99);
        return tank.oxygen();
    }

    @Test
    void airBackInTimeSavesThem() {
        TestTank tank = running(22, 6);
        double alive = tank.survival();
        minutesUntil(tank, () -> tank.oxygen() < DEADLY_MG_PER_L);
        tank.controls = tank.controls.withAir(true).withPump(true);
        tank.run(1);
        assertThat(tank.oxygen()).isGreaterThan(4);
        assertThat(tank.survival()).isGreaterThan(0.97 * alive);
    }

    @Test
    void strippingDevicesLiftPhMoreThanBubbles() {
        double bubbles = aired(0.4).ph();
        double splashing = aired(0.9).ph();
        assertThat(splashing).isBetween(bubbles + 0.1, bubbles + 0.4);
    }

    /** Aeration, not the source, sets the tank's pH: alkalinity 120 drifts to 7.9-8.2 at 2 per hour. */
    @Test
    void aerationSetsThePh() {
        assertThat(aired(0.4).ph()).isBetween(7.9, 8.2);
        TestTank quick = TestTank.plan()
                .species("nile-tilapia")
                .air(4, 0.4)
                .water(7.0, 120, 0, 200)
                .stock(1.5, 12)
                .run(3);
        assertThat(quick.ph()).isBetween(8.15, 8.35);
    }

    private static TestTank aired(double ratio) {
        return TestTank.plan()
                .species("nile-tilapia")
                .air(2, ratio)
                .water(7.0, 120, 0, 200)
                .stock(1.5, 12)
                .run(3);
    }
}
