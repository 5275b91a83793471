package startwater.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import startwater.quantity.OutOfRangeException;
import startwater.quantity.Units;

class CarbonateSystemTest {
    private static final int WATERS = 10_000;

    /** One random water: what a nursery could meet, and well beyond. */
    private record Water(CarbonateSystem system, double h, double dic, double tan) {
        static Water next(Random random) {
            double temperatureC = 1 + 40 * random.nextDouble();
            double ionic = 0.0005 + 0.06 * random.nextDouble();
            double h = StrictMath.pow(10, -(4.0 + 7 * random.nextDouble()));
            double dic = 0.05 + 8 * random.nextDouble();
            double tan = random.nextInt(4) == 0 ? 0 : 30 * random.nextDouble();
            return new Water(CarbonateSystem.at(temperatureC, ionic), h, dic, tan);
        }

        double alk() {
            return system.alkalinity(h, dic, tan);
        }
    }

    @Test
    void solvingForHInvertsAlkalinity() {
        Random random = new Random(1);
        for (int i = 0; i < WATERS; i++) {
            Water w = Water.next(random);
            double h = w.system.solveH(w.alk(), w.dic, w.tan);
            assertThat(h / w.h).as("water %d", i).isCloseTo(1, within(1e-10));
        }
    }

    @Test
    void warmAndColdStartFindTheSameRoot() {
        Random random = new Random(2);
        for (int i = 0; i < WATERS; i++) {
            Water w = Water.next(random);
            double cold = w.system.solveH(w.alk(), w.dic, w.tan);
            double warm = w.system.solveH(w.alk(), w.dic, w.tan, w.h * StrictMath.exp(random.nextGaussian()));
            assertThat(warm / cold).as("water %d", i).isCloseTo(1, within(1e-12));
        }
    }

    @Test
    void solvesAfterSodaAshFarFromTheStart() {
        Random random = new Random(3);
        for (int i = 0; i < WATERS; i++) {
            Water w = Water.next(random);
            double doseMmol = 3 * random.nextDouble();
            double alk = w.alk() + 2 * doseMmol;
            double dic = w.dic + doseMmol;
            double warm = w.system.solveH(alk, dic, w.tan, w.h);
            assertThat(w.system.alkalinity(warm, dic, w.tan)).isCloseTo(alk, within(1e-10));
            assertThat(warm / w.system.solveH(alk, dic, w.tan)).isCloseTo(1, within(1e-12));
        }
    }

    @Test
    void aNewtonStepKeepsTheRootAndSquaresASmallError() {
        Random random = new Random(4);
        for (int i = 0; i < WATERS; i++) {
            Water w = Water.next(random);
            double alk = w.alk();
            assertThat(w.system.newtonStep(alk, w.dic, w.tan, w.h) / w.h).isCloseTo(1, within(1e-10));
            double off = w.h * 1.001;
            assertThat(w.system.newtonStep(alk, w.dic, w.tan, off) / w.h).isCloseTo(1, within(3e-6));
        }
    }

    @Test
    void aStepIsOneOfNewtonsMethodInTheLogarithmOfH() {
        Random random = new Random(9);
        for (int i = 0; i < 2000; i++) {
            Water w = Water.next(random);
            double alk = w.alk();
            double from = w.h * StrictMath.exp(2 * random.nextDouble() - 1);
            double d = 1e-4;
            double fall = (w.system.alkalinity(from * StrictMath.exp(-d), w.dic, w.tan)
                            - w.system.alkalinity(from * StrictMath.exp(d), w.dic, w.tan))
                    / (2 * d);
            double step = StrictMath.max(-1, StrictMath.min(1, (w.system.alkalinity(from, w.dic, w.tan) - alk) / fall));
            double done = StrictMath.log(w.system.newtonStep(alk, w.dic, w.tan, from) / from);
            // Long steps go by a shorter exponential, which is good to two thousandths at the longest.
            assertThat(done).as("water %d", i).isCloseTo(step, within(StrictMath.abs(step) < 0.1 ? 2e-7 : 2e-3));
        }
    }

    @Test
    void settlingFindsTheSameRootFromNearAndFar() {
        Random random = new Random(10);
        for (int i = 0; i < WATERS; i++) {
            Water w = Water.next(random);
            double guess = w.h * StrictMath.exp((i % 2 == 0 ? 0.3 : 12) * (2 * random.nextDouble() - 1));
            assertThat(w.system.settleH(w.alk(), w.dic, w.tan, guess) / w.h)
                    .as("water %d", i)
                    .isCloseTo(1, within(1e-10));
        }
    }

    @Test
    void settlingRefusesAWaterOutsideThePhScale() {
        CarbonateSystem system = CarbonateSystem.at(25, 0.002);
        assertThatThrownBy(() -> system.settleH(1000, 1, 0, 1e-8)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> system.settleH(-1000, 1, 0, 1e-8)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void aNewtonStepFromAnywhereStaysPositiveAndWithinAFactorOfE() {
        Random random = new Random(5);
        for (int i = 0; i < WATERS; i++) {
            Water w = Water.next(random);
            double from = StrictMath.pow(10, -2 - 11 * random.nextDouble());
            double factor = w.system.newtonStep(w.alk(), w.dic, w.tan, from) / from;
            assertThat(factor).isBetween(1 / 2.7183, 2.7183);
        }
    }

    @Test
    void dicFromPhInvertsAlkalinity() {
        Random random = new Random(6);
        for (int i = 0; i < WATERS; i++) {
            Water w = Water.next(random);
            double dic = w.system.dicFromPh(w.alk(), w.tan, -StrictMath.log10(w.h));
            assertThat(dic).isCloseTo(w.dic, within(1e-9 + 1e-9 * w.dic));
        }
    }

    @Test
    void co2PerDicIsTheSlopeAtConstantAlkalinity() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            Water w = Water.next(random);
            double d = 1e-4 * w.dic;
            double up = w.system.co2(w.system.solveH(w.alk(), w.dic + d, w.tan), w.dic + d);
            double down = w.system.co2(w.system.solveH(w.alk(), w.dic - d, w.tan), w.dic - d);
            CarbonateSystem.Point point = new CarbonateSystem.Point();
            w.system.look(w.h, w.dic, w.tan, point);
            assertThat(point.co2PerDic).isCloseTo((up - down) / (2 * d), within(1e-5));
            assertThat(point.co2).isCloseTo(w.system.co2(w.h, w.dic), within(1e-12));
            assertThat(point.toxicAmmonia).isCloseTo(w.tan * w.system.nh3Fraction(w.h), within(1e-12));
        }
    }

    @Test
    void co2PerAlkalinityIsTheFallAtConstantDic() {
        Random random = new Random(8);
        for (int i = 0; i < 500; i++) {
            Water w = Water.next(random);
            double d = 1e-5;
            double up = w.system.co2(w.system.solveH(w.alk() + d, w.dic, w.tan), w.dic);
            double down = w.system.co2(w.system.solveH(w.alk() - d, w.dic, w.tan), w.dic);
            CarbonateSystem.Point point = new CarbonateSystem.Point();
            w.system.look(w.h, w.dic, w.tan, point);
            assertThat(point.co2PerAlkalinity).isCloseTo((down - up) / (2 * d), within(1e-4));
        }
    }

    @Test
    void dicFromCo2InvertsCo2() {
        CarbonateSystem system = CarbonateSystem.at(28, 0.004);
        assertThat(system.dicFromCo2(1e-7, system.co2(1e-7, 2.5))).isCloseTo(2.5, within(1e-12));
    }

    /** The USGS code PHREEQC 3 (phreeqc.dat) gives 7.254 for 84.0 mg/L NaHCO3 in this closed water. */
    @Test
    void bakingSodaInAClosedVessel() {
        double alk = Units.meqFromCaco3(60);
        CarbonateSystem before = CarbonateSystem.at(28, CarbonateSystem.ionicStrength(alk, 0, 0, 0));
        double dic = before.dicFromPh(alk, 0, 7.00) + 1;
        CarbonateSystem after = CarbonateSystem.at(28, CarbonateSystem.ionicStrength(alk + 1, 0, 0, 0));
        assertThat(-StrictMath.log10(after.solveH(alk + 1, dic, 0))).isCloseTo(7.254, within(0.04));
    }

    @Test
    void refusesAWaterThatCannotBe() {
        CarbonateSystem system = CarbonateSystem.at(25, 0.002);
        assertThatThrownBy(() -> system.solveH(Double.NaN, 1, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> system.solveH(1, Double.NaN, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> system.solveH(1, -1, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> system.solveH(1000, 1, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> system.dicFromPh(0, 0, 9)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> CarbonateSystem.at(51, 0.002)).isInstanceOf(OutOfRangeException.class);
    }
}
