package startwater.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import startwater.tank.Agreement;
import startwater.tank.FastStepper;
import startwater.tank.ReferenceStepper;
import startwater.tank.YardstickStepper;

class BenchCommandTest {
    private static final SpeedBench.Result RESULT =
            new SpeedBench.Result(3000, 12_000, 80_000, 160_000, 0.15, 0.05, 0.9, 12, 0.0012, 0.0004);

    @Test
    void printsEveryNumberInBothLanguages() {
        for (String language : List.of("en", "es")) {
            StringWriter text = new StringWriter();
            BenchCommand.print(RESULT, BenchCommand.words(language), new PrintWriter(text, true));
            assertThat(text.toString()).contains("53", "6", "0", "12").doesNotContain("{");
        }
        assertThat(Collections.list(BenchCommand.words("es").getKeys()))
                .containsExactlyInAnyOrderElementsOf(new ArrayList<>(
                        Collections.list(BenchCommand.words("en").getKeys())));
    }

    @Test
    void jsonHasTheKeysThatScriptsRead() {
        Map<String, Double> byKey = RESULT.byKey();
        assertThat(byKey.keySet())
                .contains(
                        "dp853_per_second",
                        "rk4_per_second",
                        "ours_1t_per_second",
                        "ours_2t_per_second",
                        "decision_seconds",
                        "second_look_seconds",
                        "max_state_error",
                        "max_survival_error");
        assertThat(BenchCommand.json(byKey))
                .startsWith("{")
                .contains("\"rk4_per_second\": 12000.0")
                .endsWith("}");
    }

    @Test
    void growthIsToldAgainstTheFirstOfItsKind() {
        List<ScalingBench.Row> rows = List.of(
                new ScalingBench.Row(ScalingBench.Along.WATERS, 64, 0.01),
                new ScalingBench.Row(ScalingBench.Along.WATERS, 128, 0.03),
                new ScalingBench.Row(ScalingBench.Along.WEEKS, 1, 0.02),
                new ScalingBench.Row(ScalingBench.Along.GROUPS, 16, 0.02),
                new ScalingBench.Row(ScalingBench.Along.OPTIONS, 12, 0.1),
                new ScalingBench.Row(ScalingBench.Along.THREADS, 2, 0.1));
        for (String language : List.of("en", "es")) {
            StringWriter text = new StringWriter();
            BenchCommand.printScaling(rows, BenchCommand.words(language), new PrintWriter(text, true));
            assertThat(text.toString()).doesNotContain("{").hasLineCount(8);
            assertThat(text.toString().lines().toList().get(2))
                    .contains("128")
                    .contains(language.equals("en") ? "3.0" : "3,0");
        }
        assertThat(ScalingBench.byKey(rows))
                .containsEntry("scaling_waters_128_seconds", 0.03)
                .hasSize(6);
    }

    /** A longer run goes on where the shorter one ended, and more groups leave the first water as it is. */
    @Test
    void theSystemsThatAreTimedDoWhatIsAskedOfThem() {
        BenchTank tank = BenchTank.of(2, 1);
        assertThat(tank.parameters().strata()).isEqualTo(1);
        assertThat(BenchTank.of(2, 16).parameters().strata()).isEqualTo(16);
        assertThat(tank.run(new FastStepper(), 2)).isNotEqualTo(tank.run(new FastStepper(), 1));
        assertThat(tank.run(new FastStepper(), 1)).isEqualTo(tank.run(new FastStepper()));
    }

    /** The yardsticks must solve the same problem, or the comparison says nothing. Held constants cost them some accuracy. */
    @Test
    void yardsticksAgreeWithEachOtherAndWithTheReferee() {
        for (int i = 0; i < 4; i++) {
            BenchTank tank = BenchTank.of(i);
            double[] reference = tank.run(new ReferenceStepper(1e-9, 1e-9));
            double[] dp853 = tank.run(YardstickStepper.dormandPrince853(1e-6, 1e-8));
            double[] rk4 = tank.run(YardstickStepper.rungeKutta4(15));
            assertThat(Agreement.stateError(rk4, dp853, tank.parameters())).isLessThan(0.002);
            assertThat(Agreement.stateError(dp853, reference, tank.parameters()))
                    .isLessThan(0.03);
            assertThat(Agreement.stateError(tank.run(new FastStepper()), reference, tank.parameters()))
                    .isLessThan(0.005);
        }
    }
}
