package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.ReferenceTable;
import startwater.quantity.Stream;
import startwater.score.ForecastScore.Forecast;

class ForecastScoreTest {
    private static final ReferenceTable TABLE = ReferenceTable.read("decision/brier.csv");

    private static List<Forecast> forecasts(double[] stated, double[] came) {
        List<Forecast> all = new ArrayList<>();
        for (int i = 0; i < stated.length; i++) {
            all.add(new Forecast(stated[i], came[i]));
        }
        return all;
    }

    @Test
    @Tag("outside")
    void theScoreFallsApartAsByHand() {
        double[] came = {1, 1, 1, 0, 0, 0, 1, 0};
        ForecastScore score = ForecastScore.of(forecasts(new double[] {.9, .9, .6, .6, .2, .2, .2, .2}, came));
        ValueOfInformationTest.printed(TABLE, "eight forecasts", "score", score.score());
        ValueOfInformationTest.printed(TABLE, "eight forecasts", "reliability", score.reliability());
        ValueOfInformationTest.printed(TABLE, "eight forecasts", "resolution", score.resolution());
        ValueOfInformationTest.printed(TABLE, "eight forecasts", "uncertainty", score.uncertainty());
        ForecastScore half = ForecastScore.of(forecasts(new double[] {.5, .5, .5, .5, .5, .5, .5, .5}, came));
        ValueOfInformationTest.printed(TABLE, "always a half", "score", half.score());
        assertThat(half.resolution()).isZero();
    }

    @Test
    void thePartsAddUpWhateverCame() {
        for (int trial = 0; trial < 100; trial++) {
            Stream draws = Stream.of(trial);
            List<Forecast> all = new ArrayList<>();
            for (int i = 0; i < 30; i++) {
                double chance = draws.uniform();
                all.add(new Forecast(draws.below(4) / 4.0, draws.uniform() < chance ? 1 : 0));
            }
            ForecastScore score = ForecastScore.of(all);
            assertThat(score.reliability() - score.resolution() + score.uncertainty())
                    .isCloseTo(score.score(), within(1e-12));
            assertThat(score.groups()).hasSizeBetween(2, 4);
        }
    }

    /** Against the model's own chance the score lacks just the luck: p (1 - p) on the mean. */
    @Test
    void theModelsOwnChanceTakesLuckOutOfTheScore() {
        double p = 0.3;
        double stated = 0.5;
        double lucky = p * ForecastScore.of(List.of(new Forecast(stated, 1))).score()
                + (1 - p) * ForecastScore.of(List.of(new Forecast(stated, 0))).score();
        double fair = ForecastScore.of(List.of(new Forecast(stated, p))).score();
        assertThat(lucky - fair).isCloseTo(p * (1 - p), within(1e-15));
    }

    @Test
    void noForecastHasNoScoreAndAChanceBeyondOneIsNamed() {
        assertThat(ForecastScore.of(List.of()).score()).isNaN();
        assertThat(ForecastScore.of(List.of()).reliability()).isNaN();
        assertThatThrownBy(() -> new Forecast(1.2, 0)).hasMessageContaining("stated chance is 1.2");
        assertThatThrownBy(() -> new Forecast(0.5, Double.NaN)).hasMessageContaining("what came is NaN");
    }
}
