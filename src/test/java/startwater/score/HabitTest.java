package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.Scenario;

/** The same choice kept up for three days, and choices that another view accepts. */
@Tag("slow")
class HabitTest {
    private static final Scenario SCENARIO = TrialScenario.secondWeek(15);

    @Test
    void feedingInFullWithNitriteUncoveredIsWorseAsAHabitThanOnce() {
        Case c = JudgeTest.firstVisit(SCENARIO, 1, 2, 7.6, 100, Decision.LEAVE_ALONE);
        Habitual habit = Habitual.of(c, Care.LIVE);
        Verdict once = Judge.judge(c);
        assertThat(habit.days()).isEqualTo(3);
        assertThat(habit.deaths()).isGreaterThan(once.chosen().deaths());
        assertThat(habit.word()).isEqualTo(Verdict.Word.DANGEROUS);
        assertThat(habit.bestDeaths()).isLessThan(habit.deaths());
    }

    @Test
    void aBestHabitHasNoRegret() {
        Case c = JudgeTest.firstVisit(SCENARIO, 1, 2, 7.6, 100, Decision.LEAVE_ALONE);
        Habitual best = Habitual.of(c.choosing(Habitual.of(c, Care.LIVE).best()), Care.LIVE);
        assertThat(best.regret()).isZero();
        assertThat(best.word()).isEqualTo(Verdict.Word.SOUND);
    }

    /** Over many choices: what is accepted as arguable is never far from the best, nor dangerous in any view. */
    @Test
    void whatIsArguableIsNearTheBestAndNeverDangerous() {
        int arguable = 0;
        for (double ammonia : new double[] {0.5, 2, 5}) {
            for (double feed : new double[] {0, 0.5, 1}) {
                for (double change : new double[] {0, 0.25, 0.75}) {
                    Decision d = Decision.LEAVE_ALONE.withFeed(feed).withChange(change);
                    Verdict v = Judge.judge(JudgeTest.firstVisit(SCENARIO, ammonia, 0.5, 7.6, 100, d));
                    if (v.arguable()) {
                        arguable++;
                        assertThat(v.regret()).isLessThanOrEqualTo(0.5);
                        assertThat(v.word()).isEqualTo(Verdict.Word.SOUND);
                        assertThat(v.mark()).isEqualTo(100);
                        assertThat(v.chosen().part(Component.DEATHS) - v.best().part(Component.DEATHS))
                                .isLessThanOrEqualTo(1);
                        assertThat(v.lines())
                                .filteredOn(l -> l.key().startsWith("view."))
                                .hasSize(1);
                    }
                }
            }
        }
        assertThat(arguable).isPositive();
    }
}
