package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.drill.Calendar;
import startwater.drill.Scenario;
import startwater.drill.Scenario.Happening;
import startwater.drill.Scenario.Happening.Kind;

/** The chances of what may fail until somebody acts again, worked by hand for a drill of fourteen days. */
class FutureWaysTest {
    private static final int DAY = Calendar.DAY;
    /** Seven in the morning of the first day of the drill. */
    private static final int NOW = 8 * DAY + 7 * 60;

    private static final int ACTS = NOW + DAY;

    private static Scenario.Happening at(Kind kind, int day, double hour) {
        return new Happening(day + hour / 24, kind, 0, 20);
    }

    private static Scenario with(Happening... events) {
        return TrialScenario.secondWeek(15).change().events(List.of(events)).made();
    }

    /** The blower on two nights, the pump on one noon: 6/7 and 13/14 that they hold. */
    @Test
    void twoThingsThatMayFailShareTheChanceThatSomethingDoes() {
        Scenario s = with(at(Kind.AIR_OFF, 10, 21), at(Kind.PUMP_OFF, 11, 12), at(Kind.AIR_OFF, 13, 21));
        List<Future> all = Future.of(s, NOW, ACTS);
        assertThat(all).extracting(Future::failure).containsExactly(null, Kind.AIR_OFF, Kind.PUMP_OFF);
        double none = 6.0 / 7 * 13 / 14;
        assertThat(all.get(0).chance()).isCloseTo(none, within(1e-12));
        // As 2 to 1, since the one fails twice as often.
        assertThat(all.get(1).chance()).isCloseTo((1 - none) * 2 / 3, within(1e-12));
        assertThat(all.get(2).chance()).isCloseTo((1 - none) / 3, within(1e-12));
        assertThat(all.get(2).events()).containsExactly(at(Kind.PUMP_OFF, 8, 12));
    }

    @Test
    void theSameKindAtAnotherHourIsAnotherFault() {
        List<Future> all = Future.of(with(at(Kind.AIR_OFF, 10, 21), at(Kind.AIR_OFF, 12, 3)), NOW, ACTS);
        assertThat(all).hasSize(3);
        assertThat(all.get(1).chance()).isCloseTo((1 - 13.0 / 14 * 13 / 14) / 2, within(1e-12));
        assertThat(all.get(2).events().get(0).minute()).isEqualTo(9 * DAY + 3 * 60);
    }

    @Test
    void itMayFailAtThisMinuteButNotWhenSomebodyIsThereAgain() {
        List<Future> all = Future.of(with(at(Kind.AIR_OFF, 12, 7)), NOW, ACTS);
        assertThat(all.get(1).chance()).isCloseTo(1.0 / 14, within(1e-12));
        assertThat(all.get(1).events().get(0).minute()).isEqualTo(NOW);
    }

    /** Of the hours at which it may fail, the middle one stands for all. */
    @Test
    void overSeveralDaysItFailsInTheMiddle() {
        Scenario s = with(at(Kind.AIR_OFF, 12, 21));
        assertThat(Future.of(s, NOW, NOW + 3 * DAY).get(1).events().get(0).minute())
                .isEqualTo(9 * DAY + 21 * 60);
        assertThat(Future.of(s, NOW, NOW + 5 * DAY).get(1).events().get(0).minute())
                .isEqualTo(10 * DAY + 21 * 60);
    }

    @Test
    void aFailureBeforeTheDrillIsNoPartOfItsRecord() {
        List<Future> all = Future.of(with(at(Kind.AIR_OFF, 7, 21), at(Kind.AIR_OFF, 10, 21)), NOW, ACTS);
        assertThat(all.get(1).chance()).isCloseTo(1.0 / 14, within(1e-12));
        assertThat(Future.of(with(at(Kind.AIR_OFF, 3, 21)), NOW, ACTS)).hasSize(1);
        assertThat(Future.of(with(at(Kind.AIR_OFF, 8, 0)), NOW, ACTS)).hasSize(2);
    }

    @Test
    void aDeviceThatFailsEveryDayFailsForSure() {
        List<Happening> nights = new ArrayList<>();
        for (int day = 8; day < 24; day++) {
            nights.add(at(Kind.AIR_OFF, day, 21));
        }
        List<Future> all = Future.of(with(nights.toArray(Happening[]::new)), NOW, ACTS);
        assertThat(all.get(0).chance()).isZero();
        assertThat(all.get(1).chance()).isEqualTo(1);
        assertThat(Future.at(all, 0)).isEqualTo(all.get(1));
    }

    @Test
    void whatIsForecastStandsInEveryWayFromNowOn() {
        Scenario s = with(
                at(Kind.ROOM_TEMPERATURE, 8, 6),
                at(Kind.SET_POINT, 8, 7),
                at(Kind.ROOM_TEMPERATURE, 9, 6),
                at(Kind.AIR_OFF, 10, 21));
        List<Future> all = Future.of(s, NOW, ACTS);
        assertThat(all.get(0).events()).containsExactly(at(Kind.SET_POINT, 8, 7), at(Kind.ROOM_TEMPERATURE, 9, 6));
        assertThat(all.get(1).events()).containsAll(all.get(0).events()).hasSize(3);
    }
}
