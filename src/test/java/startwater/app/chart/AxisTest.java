package startwater.app.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class AxisTest {
    @Test
    void stepsAreOneTwoOrFiveTimesATenth() {
        assertThat(Axis.step(22, 5)).isCloseTo(5, within(1e-12));
        assertThat(Axis.step(1.9, 4)).isCloseTo(0.5, within(1e-12));
        assertThat(Axis.step(11, 10)).isCloseTo(2, within(1e-12));
        assertThat(Axis.step(0.004, 4)).isCloseTo(0.001, within(1e-12));
    }

    @Test
    void ticksCoverTheRange() {
        assertThat(Axis.ticks(0, 2.0, 0.5)).hasSize(5);
        assertThat(Axis.ticks(171, 240, 20)).containsExactly(180.0, 200.0, 220.0, 240.0);
    }

    @Test
    void figuresFollowTheStepAndTheLanguage() {
        assertThat(Axis.text(0.5, 0.5, Locale.ENGLISH)).isEqualTo("0.5");
        assertThat(Axis.text(1, 0.5, Locale.GERMAN)).isEqualTo("1,0");
        assertThat(Axis.text(-0.0, 1, Locale.ENGLISH)).isEqualTo("0");
    }

    @Test
    void refusesABarBelowNoughtAndACrossedWhisker() {
        assertThatThrownBy(() -> new OptionBars.Row("half feed", -1, -1, 0, "", false, false))
                .hasMessageContaining("half feed is negative");
        assertThatThrownBy(() -> new OptionBars.Row("half feed", 1, 2, 1, "", false, false))
                .hasMessageContaining("low end 2.0 above its high 1.0");
        assertThatThrownBy(() -> new FanChart.Path(List.of(), List.of())).hasMessageContaining("at least one point");
    }
}
