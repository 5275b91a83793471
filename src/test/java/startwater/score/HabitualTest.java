package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.fish.Stressor;
import startwater.score.Verdict.Line;

/** What a choice comes to that is kept up, on losses made up for two options in one tank. */
class HabitualTest {
    /** Fish that are there at the visit. */
    private static final double ALIVE = 240;

    /** Of a fish, in percent of them. */
    private static final double A_TWENTIETH = 0.05 / 2.4;

    private static final Decision BEST = Setting.OPTIONS.get(1);

    /** Deaths and waste of the choice and of the other option, % of the stock. */
    private static Habitual of(double ownDeaths, double ownWaste, double otherDeaths, double otherWaste) {
        double[][][] parts = new double[2][1][Component.values().length];
        parts[0][0][Component.DEATHS.ordinal()] = ownDeaths;
        parts[0][0][Component.WASTE.ordinal()] = ownWaste;
        parts[1][0][Component.DEATHS.ordinal()] = otherDeaths;
        parts[1][0][Component.WASTE.ordinal()] = otherWaste;
        Losses losses = new Losses(parts, new double[2][1][Stressor.COUNT], new double[] {1}, 1);
        return Habitual.of(Setting.of(Setting.young(1, 0.5), losses, 0).scored);
    }

    private static void says(Habitual habit, String key, Line.Severity severity, Object... parameters) {
        assertThat(habit.line()).isEqualTo(new Line(key, severity, List.of(parameters)));
    }

    @Test
    void theBestHabitIsSaidToBeTheBest() {
        Habitual habit = of(0, 1, 0, 2);
        says(habit, "kept.best", Line.Severity.BEST, 3);
        assertThat(habit.days()).isEqualTo(3);
        assertThat(habit.regret()).isZero();
        assertThat(habit.word()).isEqualTo(Verdict.Word.SOUND);
        assertThat(habit.best()).isEqualTo(Setting.OPTIONS.get(0));
        says(of(0, 1.04, 0, 1), "kept.best", Line.Severity.BEST, 3);
    }

    /** One percent of 240 fish are 2.4. */
    @Test
    void whatTheBestHabitKillsIsCounted() {
        Habitual habit = of(1, 0, 2, 0);
        assertThat(habit.deaths()).isCloseTo(0.01 * ALIVE, within(1e-9));
        says(habit, "kept.best.deaths", Line.Severity.BEST, 3, new Verdict.Fish(habit.deaths()));
        says(of(0.02, 0, 2, 0), "kept.best", Line.Severity.BEST, 3);
        assertThat(of(A_TWENTIETH, 0, 2, 0).line().key()).isEqualTo("kept.best.deaths");
    }

    @Test
    void aHabitThatKillsMoreIsSaidToAndIsDangerousOverOnePercent() {
        Habitual habit = of(3, 0, 1, 0.5);
        assertThat(habit.deaths()).isCloseTo(7.2, within(1e-9));
        assertThat(habit.bestDeaths()).isCloseTo(2.4, within(1e-9));
        assertThat(habit.regret()).isCloseTo(1.5, within(1e-9));
        assertThat(habit.best()).isEqualTo(BEST);
        assertThat(habit.word()).isEqualTo(Verdict.Word.DANGEROUS);
        says(
                habit,
                "kept.deaths",
                Line.Severity.HARM,
                3,
                new Verdict.Fish(habit.deaths()),
                BEST,
                new Verdict.Fish(habit.bestDeaths()));
        assertThat(of(0.9, 0, 0, 0).word()).isEqualTo(Verdict.Word.COSTLY);
    }

    /** 0.05 fish of 240 are 0.0208 %; half of that more than under the best is told apart. */
    @Test
    void aHabitThatOnlyCostsIsSaidToCost() {
        Habitual habit = of(1, 2, 1, 0.5);
        says(habit, "kept.costs", Line.Severity.OWN, 3, habit.regret(), BEST);
        assertThat(habit.regret()).isCloseTo(1.5, within(1e-9));
        assertThat(of(0.0207, 2, 0, 0).line().key()).isEqualTo("kept.costs");
        assertThat(of(A_TWENTIETH, 2, 0, 0).line().key()).isEqualTo("kept.deaths");
        assertThat(of(0.0300, 2, 0.0197, 0).line().key()).isEqualTo("kept.costs");
        assertThat(of(0.0300, 2, 0.0195, 0).line().key()).isEqualTo("kept.deaths");
    }
}
