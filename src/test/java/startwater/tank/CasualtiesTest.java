package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static startwater.tank.TankLayout.*;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import startwater.fish.Species;
import startwater.fish.Stressor;

/**
 * Damage and deaths over a step against their solutions on paper, for Nile tilapia in three strata: tender, ordinary and
 * hardy. Damage follows exposure at a rate kd; over a threshold z each unit of it is a hazard.
 */
class CasualtiesTest {
    private static final int NITRITE = Stressor.NITRITE.ordinal();
    private static final double KD = 3;
    private static final double Z = 5.25;
    private static final double SLOPE = 0.2136;
    private static final double LOW_Z = 1.74;
    private static final double LOW_SLOPE = 0.0143;
    private static final double[] SCALES = {0.5, 1, 2};

    private final TankParameters p = TestTank.cubicMetre(SCALES);
    private final double[] from = new double[TankLayout.length(3)];
    private final double[] to = new double[TankLayout.length(3)];
    private final double[] before = new double[Stressor.COUNT];
    private final double[] after = new double[Stressor.COUNT];
    private final Casualties casualties = new Casualties();

    CasualtiesTest() {
        for (int s = 0; s < SCALES.length; s++) {
            from[survivors(s)] = 1;
        }
    }

    private void prepared(double ammoniaScale) {
        casualties.prepare(from, p, Objects.requireNonNull(p.species()), ammoniaScale);
    }

    /** One step under nitrite from {@code c0} to {@code c1}, from this damage. @return share that still lives */
    private double step(double damage, double c0, double c1, double days) {
        from[DAMAGE + NITRITE] = damage;
        before[NITRITE] = c0;
        after[NITRITE] = c1;
        prepared(1);
        System.arraycopy(from, 0, to, 0, from.length);
        return casualties.step(from, to, before, after, days);
    }

    /** Damage on paper under an exposure on a straight line. */
    private static double damage(double start, double c0, double c1, double days, double t) {
        double rise = (c1 - c0) / days;
        double lag = rise / KD;
        return (start - c0 + lag) * StrictMath.exp(-KD * t) + c0 + rise * t - lag;
    }

    /** Hazard summed over a step by Simpson's rule on the damage on paper. */
    private static double summed(double start, double c0, double c1, double days, double scale) {
        int cells = 4000;
        double sum = 0;
        for (int i = 0; i <= cells; i++) {
            double d = damage(start, c0, c1, days, days * i / cells);
            double hazard = SLOPE * Math.max(0, d - Z * scale) + LOW_SLOPE * Math.max(0, d - LOW_Z * scale);
            sum += hazard * (i == 0 || i == cells ? 1 : i % 2 == 1 ? 4 : 2);
        }
        return sum * days / cells / 3;
    }

    /** From far over the highest threshold, from far below the lowest, and across them upwards and downwards. */
    @ParameterizedTest
    @CsvSource({
        "30, 40, 20",
        "12, 12, 30",
        "30, 14, 12",
        "0.2, 0.5, 0.1",
        "0, 5, 9",
        "4, 12, 18",
        "12, 2, 0",
        "3, 7, 3",
        "12, 0, 0",
        "0, 1, 0",
        "0, 0, 1"
    })
    void damageAndDeathsAreThoseOnPaper(double start, double c0, double c1) {
        double days = 0.1;
        double living = step(start, c0, c1, days);
        assertThat(to[DAMAGE + NITRITE]).isCloseTo(damage(start, c0, c1, days, days), within(1e-5));
        double left = 0;
        for (int s = 0; s < SCALES.length; s++) {
            double hazard = summed(start, c0, c1, days, SCALES[s]);
            double allowed = 1e-5 + casualties.doubt(from, before, before, days);
            assertThat(to[hazard(s, Stressor.NITRITE)]).isCloseTo(hazard, within(allowed));
            assertThat(to[survivors(s)]).isCloseTo(StrictMath.exp(-hazard), within(allowed));
            double x = to[hazard(s, Stressor.NITRITE)];
            assertThat(to[survivors(s)]).isCloseTo(StrictMath.exp(-x), within(1e-10 + StrictMath.pow(x, 7) / 5040));
            left += to[survivors(s)] / SCALES.length;
        }
        assertThat(living).isCloseTo(left, within(1e-12));
    }

    /** A damage that runs across the thresholds of all strata so fast that its way is a straight line. */
    @ParameterizedTest
    @CsvSource({"0.5, 6000", "3, 2800"})
    void aStraightWayAcrossAThresholdIsSolvedExactly(double start, double exposure) {
        double days = 1e-3;
        step(start, exposure, exposure, days);
        for (int s = 0; s < SCALES.length; s++) {
            double hazard = summed(start, exposure, exposure, days, SCALES[s]);
            assertThat(hazard).isPositive();
            assertThat(to[hazard(s, Stressor.NITRITE)]).isCloseTo(hazard, within(0.003 * hazard));
        }
    }

    @Test
    void oneStepLeavesNoTraceInTheNext() {
        double living = step(30, 30, 30, 0.1);
        double[] once = to.clone();
        assertThat(step(30, 30, 30, 0.1)).isEqualTo(living);
        assertThat(to).isEqualTo(once);
    }

    /** Where no threshold lies between the least and the greatest damage, nothing is in doubt under a steady exposure. */
    @Test
    void onlyACrossedThresholdLeavesADoubt() {
        step(30, 40, 40, 0.1);
        assertThat(casualties.doubt(from, before, after, 0.1)).isZero();
        step(10, 11, 11, 0.1);
        double upper = casualties.doubt(from, before, after, 0.1);
        assertThat(upper).as("the hardy stratum begins to die at 10.5").isZero();
        step(10, 14, 14, 0.1);
        double rise = damage(10, 14, 14, 0.1, 0.1) - 10;
        assertThat(casualties.doubt(from, before, after, 0.1)).isCloseTo(SLOPE * 0.1 * rise / 64, within(1e-6));
        step(3, 5, 5, 0.1);
        double gentle = damage(3, 5, 5, 0.1, 0.1) - 3;
        assertThat(casualties.doubt(from, before, after, 0.1))
                .as("the hardy stratum passes its low threshold, 3.48, the tender one its upper, 2.625")
                .isCloseTo(LOW_SLOPE * 0.1 * gentle / 64, within(1e-6));
    }

    /** What a moving exposure does to damage, against one that had stood still, is between a third and half of the doubt. */
    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.02, 0.3, 2})
    void theDoubtIsTwoToThreeTimesWhatTheMovementPutIntoTheHazard(double days) {
        double moved = 2;
        step(40, 40, 40 + moved, days);
        double put = 0;
        for (int s = 0; s < SCALES.length; s++) {
            put = Math.max(put, summed(40, 40, 40 + moved, days, SCALES[s]) - summed(40, 40, 40, days, SCALES[s]));
        }
        double doubt = casualties.doubt(from, before, after, days);
        assertThat(doubt / put).isBetween(1.99, 3.01);
    }

    @Test
    void belowEveryThresholdMovementLeavesNoDoubt() {
        step(0.1, 0.2, 0.8, 0.1);
        assertThat(casualties.doubt(from, before, after, 0.1)).isZero();
        assertThat(casualties.lately()).isZero();
    }

    /** Over the low threshold alone only the gentle slope counts. */
    @Test
    void betweenTheThresholdsTheDoubtIsGentle() {
        step(2, 2, 2.1, 0.01);
        double x = KD * 0.01;
        assertThat(casualties.doubt(from, before, after, 0.01))
                .isCloseTo(LOW_SLOPE * 0.01 * 0.1 * x / (2 + x), within(1e-12));
    }

    /** A damage of 3 kills the tender, whose threshold is 2.625, wherever they stand among the strata. */
    @Test
    void theDoubtDoesNotHangOnTheOrderOfTheStrata() {
        step(3, 3, 3.1, 0.01);
        double doubt = casualties.doubt(from, before, after, 0.01);
        Casualties turned = new Casualties();
        turned.prepare(from, TestTank.cubicMetre(2, 1, 0.5), Species.byId("nile-tilapia"), 1);
        turned.step(from, to, before, after, 0.01);
        assertThat(turned.doubt(from, before, after, 0.01)).isEqualTo(doubt);
    }

    @Test
    void causesAddUpAndAreToldApart() {
        from[DAMAGE + NITRITE] = 30;
        before[NITRITE] = 30;
        after[NITRITE] = 30;
        int chlorine = Stressor.CHLORINE.ordinal();
        from[DAMAGE + chlorine] = 0.1;
        before[chlorine] = 0.1;
        after[chlorine] = 0.1;
        prepared(1);
        casualties.step(from, to, before, after, 0.2);
        double byNitrite = 0.2 * (SLOPE * (30 - Z) + LOW_SLOPE * (30 - LOW_Z));
        double byChlorine = 0.2 * 8 * (0.1 - 0.02);
        assertThat(to[hazard(1, Stressor.NITRITE)]).isCloseTo(byNitrite, within(1e-9));
        assertThat(to[hazard(1, Stressor.CHLORINE)]).isCloseTo(byChlorine, within(1e-9));
        assertThat(to[survivors(1)]).isCloseTo(StrictMath.exp(-byNitrite - byChlorine), within(1e-4));
    }

    /** Hazard of the living: the strata weigh by who is left in them. */
    @Test
    void theHazardOfAStateIsTheMeanOverTheLiving() {
        from[survivors(0)] = 0.2;
        from[survivors(1)] = 0.6;
        from[survivors(2)] = 0.8;
        from[DAMAGE + NITRITE] = 12;
        prepared(1);
        double tender = SLOPE * (12 - Z / 2) + LOW_SLOPE * (12 - LOW_Z / 2);
        double ordinary = SLOPE * (12 - Z) + LOW_SLOPE * (12 - LOW_Z);
        double hardy = SLOPE * (12 - 2 * Z) + LOW_SLOPE * (12 - 2 * LOW_Z);
        double mean = (0.2 * tender + 0.6 * ordinary + 0.8 * hardy) / 1.6;
        assertThat(casualties.hazard(from)).isCloseTo(mean, within(1e-12));
        assertThat(casualties.lately()).isCloseTo(mean, within(1e-12));
    }

    /** From the survivors of a step the mean hazard over it follows. */
    @Test
    void afterAStepTheHazardOfLateIsThatOfTheStep() {
        double living = step(30, 30, 30, 0.01);
        assertThat(casualties.lately()).isCloseTo(-StrictMath.log(living) / 0.01, within(0.002));
    }

    @Test
    void aFirstGuessGoesOnAsOfLate() {
        from[DAMAGE + NITRITE] = 20;
        from[survivors(2)] = 0.5;
        prepared(1);
        before[NITRITE] = 26;
        double living = casualties.guess(from, to, before, 0.02);
        double expected = StrictMath.exp(-casualties.hazard(from) * 0.02);
        assertThat(living).isCloseTo(expected, within(1e-9));
        assertThat(to[survivors(0)]).isCloseTo(expected, within(1e-9));
        assertThat(to[survivors(2)]).isCloseTo(0.5 * expected, within(1e-9));
        assertThat(to[DAMAGE + NITRITE]).isCloseTo(damage(20, 26, 26, 0.02, 0.02), within(1e-9));
    }

    @Test
    void whereNobodyDiesTheGuessLeavesAllAlive() {
        from[DAMAGE + NITRITE] = 0.5;
        prepared(1);
        assertThat(casualties.guess(from, to, before, 0.02)).isEqualTo(1);
    }

    /** The size of the fish moves the thresholds of ammonia and of nothing else. */
    @Test
    void sizeScalesTheThresholdsOfAmmonia() {
        from[DAMAGE] = 3;
        from[DAMAGE + NITRITE] = 30;
        prepared(1);
        double plain = casualties.hazard(from);
        prepared(2);
        double steep = 0.8326;
        double gentle = 0.016;
        // Doubled, the upper thresholds of 0.85, 1.7 and 3.4 become 1.7, 3.4 and 6.8; the low ones of 0.08, 0.16 and
        // 0.32 become twice that.
        double small = steep * (3 - 0.85 + 3 - 1.7) + gentle * (3 - 0.08 + 3 - 0.16 + 3 - 0.32);
        double large = steep * (3 - 1.7) + gentle * (3 - 0.16 + 3 - 0.32 + 3 - 0.64);
        assertThat(plain - casualties.hazard(from)).isCloseTo((small - large) / 3, within(1e-9));
    }

    @Test
    void whereAllAreDeadNobodyDies() {
        for (int s = 0; s < SCALES.length; s++) {
            from[survivors(s)] = 0;
        }
        assertThat(step(30, 30, 30, 0.1)).isEqualTo(1);
        assertThat(casualties.hazard(from)).isZero();
    }
}
