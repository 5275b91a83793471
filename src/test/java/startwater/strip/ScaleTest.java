package startwater.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import startwater.quantity.Stream;

class ScaleTest {
    @ParameterizedTest
    @EnumSource(Pad.class)
    void valueAndPositionUndoEachOther(Pad pad) {
        Scale scale = pad.scale();
        Stream stream = Stream.of(7, pad.ordinal());
        for (int i = 0; i < 200; i++) {
            double position = stream.uniform() * (scale.blocks() - 1);
            assertThat(scale.position(scale.value(position))).isCloseTo(position, within(1e-12));
        }
    }

    @ParameterizedTest
    @EnumSource(Pad.class)
    void everyStopIsNearestToItself(Pad pad) {
        Scale scale = pad.scale();
        for (int stop = 0; stop < scale.stops(); stop++) {
            assertThat(scale.nearestStop(scale.position(scale.stopValue(stop)))).isEqualTo(stop);
        }
    }

    @ParameterizedTest
    @EnumSource(value = Pad.class, names = "PH", mode = EnumSource.Mode.EXCLUDE)
    void blocksArePreferredNumbers(Pad pad) {
        for (int block = 1; block < pad.scale().blocks(); block++) {
            double mantissa = pad.scale().blockValue(block);
            while (mantissa < 0.95) {
                mantissa *= 10;
            }
            while (mantissa > 9.5) {
                mantissa /= 10;
            }
            assertThat(StrictMath.rint(mantissa * 1e6) / 1e6).isIn(1.0, 2.0, 5.0);
        }
    }

    @Test
    void phBlocksRunFrom62To90ByFourTenths() {
        Scale scale = Pad.PH.scale();
        assertThat(scale.blocks()).isEqualTo(8);
        assertThat(scale.blockValue(3)).isEqualTo(7.4);
        assertThat(scale.position(7.6)).isCloseTo(3.5, within(1e-12));
        assertThat(scale.stopText(2, Locale.ENGLISH)).isEqualTo("6.6");
        assertThat(scale.stopText(3, Locale.ENGLISH)).isEqualTo("6.6–7.0");
    }

    @Test
    void betweenIsHalfWayInPosition() {
        Scale scale = Pad.NITRITE.scale();
        assertThat(scale.stopValue(1)).isCloseTo(0.05, within(1e-12));
        assertThat(scale.stopValue(9)).isCloseTo(StrictMath.sqrt(2.0), within(1e-12));
    }

    @Test
    void valuesOffTheScaleStopAtItsEnds() {
        Scale scale = Pad.AMMONIA.scale();
        assertThat(scale.position(-1)).isZero();
        assertThat(scale.position(500)).isEqualTo(8.0);
        assertThat(scale.nearestStop(99)).isEqualTo(16);
    }

    @Test
    void stopsReadAsTheyAreWrittenDown() {
        assertThat(Pad.AMMONIA.scale().stopText(8, Locale.ENGLISH)).isEqualTo("1");
        assertThat(Pad.AMMONIA.scale().stopText(7, Locale.ENGLISH)).isEqualTo("0.5–1");
        assertThat(Pad.CHLORIDE.scale().stopText(14, Locale.ENGLISH)).isEqualTo("1000");
    }

    @Test
    void refusesAStopOffTheScale() {
        assertThatThrownBy(() -> Pad.PH.scale().stopText(15, Locale.ENGLISH))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0..14");
        assertThatThrownBy(() -> Pad.PH.scale().position(Double.NaN)).hasMessageContaining("not a number");
    }
}
