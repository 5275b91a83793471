package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import startwater.bench.Given;
import startwater.bench.RefusedInputException;

/** The start-up that lessons show. */
class StartUpRunTest {
    private static StartUpRun run(Map<String, Double> inputs) {
        return StartUpRun.of(Given.of(inputs));
    }

    @Test
    void nitrogenIsNeitherMadeNorLost() {
        for (StartUpRun.Day day : run(Map.of("ammonia", 3.0)).days()) {
            assertThat(day.ammoniaMgPerL() + day.nitriteMgPerL() + day.nitrateMgPerL())
                    .isCloseTo(3, within(1e-6));
        }
    }

    /** FAO Technical Paper 589, glossary: one to six weeks; Kentucky State University handbook (2021): six to eight. */
    @Test
    void ammoniaPeaksBeforeNitriteAndBothAreClearWithinEightWeeks() {
        StartUpRun run = run(Map.of("ammonia", 2.0, "daily", 0.3));
        int ammonia = run.peakDay(StartUpRun.Day::ammoniaMgPerL);
        int nitrite = run.peakDay(StartUpRun.Day::nitriteMgPerL);
        assertThat(ammonia).isLessThan(nitrite);
        assertThat(run.clearDay()).isBetween(nitrite, 56);
    }

    @Test
    void seedAndWarmthHastenIt() {
        int plain = run(Map.of("ammonia", 2.0)).clearDay();
        assertThat(run(Map.of("ammonia", 2.0, "seed", 6.0)).clearDay()).isLessThan(plain);
        assertThat(run(Map.of("ammonia", 2.0, "temperature", 18.0)).clearDay()).isGreaterThan(plain);
    }

    @Test
    void whatLiesOutsideItsRangeIsRefused() {
        assertThatThrownBy(() -> run(Map.of("temperature", 60.0)))
                .isInstanceOf(RefusedInputException.class)
                .hasMessageContaining("temperature");
    }
}
