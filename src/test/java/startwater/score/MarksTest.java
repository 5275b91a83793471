package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import startwater.content.Library;
import startwater.drill.DippedStrip;
import startwater.drill.DrillRun;
import startwater.drill.Written;
import startwater.score.WorkingMark.Slip;
import startwater.strip.Pad;

class MarksTest {
    @ParameterizedTest
    @EnumSource(Slip.class)
    void aUnitSlipIsNamed(Slip slip) {
        WorkingMark mark = WorkingMark.of(0.038 * slip.factor(), 0.038);
        assertThat(mark.right()).isFalse();
        assertThat(mark.slip()).isEqualTo(slip);
    }

    @Test
    void roundingIsNoSlip() {
        WorkingMark mark = WorkingMark.of(0.04, 0.038);
        assertThat(mark.right()).isTrue();
        assertThat(mark.slip()).isNull();
    }

    @Test
    void anOddErrorIsNoSlip() {
        WorkingMark mark = WorkingMark.of(0.06, 0.038);
        assertThat(mark.right()).isFalse();
        assertThat(mark.slip()).isNull();
    }

    @Test
    void oneBlockOffIsHumanTwoAreNamed() {
        DrillRun run =
                DrillRun.start(Library.shipped().scenario("hungry-second-week").get(), 1, DrillRun.Pace.LEARNER);
        DippedStrip strip = run.dip(1);
        int seen = Pad.AMMONIA.scale().nearestStop(strip.position(Pad.AMMONIA));
        run.write(new Written(Pad.AMMONIA, Math.max(0, seen - 1), 1, strip.number()));
        int nitrite = Pad.NITRITE.scale().nearestStop(strip.position(Pad.NITRITE));
        run.write(new Written(Pad.NITRITE, nitrite >= 6 ? nitrite - 6 : nitrite + 6, 1, strip.number()));
        ReadingMark mark = ReadingMark.of(run, run.now());
        assertThat(mark.total()).isEqualTo(2);
        assertThat(mark.right()).isEqualTo(1);
        assertThat(Objects.requireNonNull(mark.worst()).pad()).isEqualTo(Pad.NITRITE);
    }
}
