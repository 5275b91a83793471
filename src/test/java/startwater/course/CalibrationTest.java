package startwater.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.course.Calibration.Finding;
import startwater.course.Calibration.Said;
import startwater.drill.Prediction.Sureness;

class CalibrationTest {
    private final List<Said> said = new ArrayList<>();

    private CalibrationTest said(Sureness word, int came, int of) {
        for (int i = 0; i < of; i++) {
            said.add(new Said(word, i < came ? 1 : 0));
        }
        return this;
    }

    private Finding finding() {
        return Calibration.of(said).finding();
    }

    @Test
    void saysOnlyWhatTheNumbersBear() {
        assertThat(finding()).isEqualTo(Finding.NONE);
        assertThat(said(Sureness.SURE, 0, 7).finding()).isEqualTo(Finding.FEW);
        assertThat(said(Sureness.SURE, 0, 1).finding()).isEqualTo(Finding.OVER);
    }

    @Test
    void tellsSureFromRight() {
        said(Sureness.SURE, 18, 20).said(Sureness.NOT_SURE, 7, 20);
        assertThat(finding()).isEqualTo(Finding.WELL);
        said.clear();
        assertThat(said(Sureness.NOT_SURE, 16, 20).finding()).isEqualTo(Finding.UNDER);
        said.clear();
        assertThat(said(Sureness.SURE, 12, 20).finding()).isEqualTo(Finding.OVER);
    }

    @Test
    void binsHaveCountsAndIntervals() {
        said(Sureness.SURE, 9, 10).said(Sureness.NOT_SURE, 0, 4);
        List<Calibration.Bin> bins = Calibration.of(said).bins();
        assertThat(bins).extracting(Calibration.Bin::word).containsExactly(Sureness.NOT_SURE, Sureness.SURE);
        Calibration.Bin sure = bins.get(1);
        assertThat(sure.count()).isEqualTo(10);
        // By hand with z = 1.6449: (0.9 + 0.13528) / 1.27055 -+ 1.6449 sqrt(0.009 + 0.0067639) / 1.27055.
        assertThat(sure.low()).isCloseTo(0.6523, within(0.0005));
        assertThat(sure.high()).isCloseTo(0.9773, within(0.0005));
        assertThat(bins.get(0).low()).isZero();
        assertThat(bins.get(0).high()).isBetween(0.3, 0.6);
    }

    @Test
    void theModelsOwnChanceMayStandForWhatCame() {
        said.add(new Said(Sureness.FAIRLY_SURE, 0.4));
        said.add(new Said(Sureness.FAIRLY_SURE, 0.8));
        assertThat(Calibration.of(said).came()).isCloseTo(0.6, within(1e-12));
        assertThat(Calibration.of(said).stated()).isCloseTo(0.65, within(1e-12));
    }
}
