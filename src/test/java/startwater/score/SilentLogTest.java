package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.drill.Actor;
import startwater.drill.Calendar;
import startwater.drill.DrillLog;
import startwater.drill.Scenario;
import startwater.drill.Seen;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.strip.FishMood;
import startwater.strip.Pad;

/** Strips as far as a log tells, and logs that say nothing of today's water. */
class SilentLogTest {
    private static final Scenario WEEK = TrialScenario.secondWeek(15);
    private static final int START = 10 * Calendar.DAY;

    private static VisitRecord visit(int minutesOn, boolean air, Written... written) {
        Seen seen = new Seen(
                26, 7.0, null, FishMood.CALM, 0, 240, 0, 0, false, air, true, true, true, 100, 0, 0, List.of());
        return new VisitRecord(0, START + minutesOn, Actor.LEARNER, seen, List.of(written), null, null);
    }

    private static Written reading(Pad pad, int strip) {
        return new Written(pad, 2, 1, strip);
    }

    private static DrillLog log(VisitRecord... visits) {
        return new DrillLog(new ArrayList<>(List.of(visits)));
    }

    /** A reading so many minutes ago, and nothing since. */
    private static boolean silent(Scenario s, int minutesAgo, boolean air) {
        return SilentLog.is(
                s, log(visit(0, true, reading(Pad.AMMONIA, 0)), visit(minutesAgo / 2, true), visit(minutesAgo, air)));
    }

    @Test
    void aLogIsSilentAfter76HoursWithoutAReading() {
        assertThat(silent(WEEK, 76 * 60, true)).isFalse();
        assertThat(silent(WEEK, 76 * 60 + 1, true)).isTrue();
        assertThat(SilentLog.is(WEEK, log(visit(0, true)))).isTrue();
        assertThat(SilentLog.is(WEEK, log(visit(0, true, reading(Pad.PH, 0))))).isFalse();
    }

    @Test
    void airComesBeforeEveryTest() {
        assertThat(silent(WEEK, 100 * 60, false)).isFalse();
    }

    @Test
    void whoHasNoStripLeftCannotSpeak() {
        assertThat(silent(withStrips(1), 100 * 60, true)).isFalse();
        assertThat(silent(withStrips(2), 100 * 60, true)).isTrue();
    }

    private static Scenario withStrips(int strips) {
        return WEEK.change()
                .shelf(new Scenario.Shelf(5000, 3000, 0, 0, 100, strips, 10, true, false))
                .made();
    }

    /** 40 strips and 10 for chloride are on the shelf. */
    @Test
    void stripsAreCountedByTheirNumbersAndChlorideApart() {
        DrillLog log = log(
                visit(0, true, reading(Pad.PH, 4), reading(Pad.AMMONIA, 0), reading(Pad.CHLORIDE, 1)),
                visit(60, true, reading(Pad.AMMONIA, 2)));
        for (Pad pad : List.of(Pad.AMMONIA, Pad.PH, Pad.CHLORINE)) {
            assertThat(StripsUsed.before(log, pad)).isEqualTo(5);
            assertThat(StripsUsed.left(WEEK, log, pad)).isEqualTo(35);
        }
        assertThat(StripsUsed.before(log, Pad.CHLORIDE)).isEqualTo(2);
        assertThat(StripsUsed.left(WEEK, log, Pad.CHLORIDE)).isEqualTo(8);
        assertThat(StripsUsed.before(log(visit(0, true)), Pad.AMMONIA)).isZero();
    }

    @Test
    void aPadIsReadFromTheStripThatIsWetOrElseTheNext() {
        VisitRecord before = visit(0, true, reading(Pad.AMMONIA, 3), reading(Pad.CHLORIDE, 1));
        assertThat(StripsUsed.number(log(before), Pad.PH)).isEqualTo(3);
        DrillLog dry = log(before, visit(60, true));
        assertThat(StripsUsed.number(dry, Pad.PH)).isEqualTo(4);
        assertThat(StripsUsed.number(dry, Pad.CHLORIDE)).isEqualTo(2);
        DrillLog two = log(before, visit(60, true, reading(Pad.AMMONIA, 5), reading(Pad.AMMONIA, 4)));
        assertThat(StripsUsed.number(two, Pad.PH)).as("the last of two").isEqualTo(5);
    }

    @Test
    void anOwnKitUsesNoStrip() {
        Written kit = reading(Pad.AMMONIA, Written.OWN_KIT);
        DrillLog log = log(visit(0, true, reading(Pad.AMMONIA, 0)), visit(60, true, kit));
        assertThat(StripsUsed.before(log, Pad.AMMONIA)).isEqualTo(1);
        assertThat(StripsUsed.number(log, Pad.AMMONIA)).isEqualTo(1);
        assertThat(StripsUsed.before(log(visit(0, true, kit)), Pad.AMMONIA)).isZero();
    }
}
