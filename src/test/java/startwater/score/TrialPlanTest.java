package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class TrialPlanTest {
    @Test
    void aWholeTrialMarksFourToTenPlaysAndLooksAtFiftyTanks() {
        assertThat(TrialPlan.whole(200)).isEqualTo(new TrialPlan(200, 4, 10, 16, true, 50));
        assertThat(TrialPlan.whole(7)).isEqualTo(new TrialPlan(7, 4, 7, 16, true, 7));
        assertThat(TrialPlan.whole(3)).isEqualTo(new TrialPlan(3, 3, 3, 16, true, 3));
    }

    @Test
    void aQuickOnePlaysTwelveAndMarksTwoOnHalfTheWaters() {
        assertThat(TrialPlan.quick(200)).isEqualTo(new TrialPlan(12, 2, 2, 8, false, 0));
        assertThat(TrialPlan.quick(1)).isEqualTo(new TrialPlan(1, 1, 1, 8, false, 0));
    }

    @Test
    void aPlanWithoutASeedOrAWaterIsRefused() {
        assertThat(new TrialPlan(1, 1, 1, 1, false, 0).waters()).isEqualTo(1);
        assertThatThrownBy(() -> new TrialPlan(0, 1, 1, 1, false, 0)).hasMessageContaining("at least one seed");
        assertThatThrownBy(() -> new TrialPlan(1, 0, 1, 1, false, 0)).hasMessageContaining("at least one seed");
        assertThatThrownBy(() -> new TrialPlan(1, 2, 1, 1, false, 0)).hasMessageContaining("at least one seed");
        assertThatThrownBy(() -> new TrialPlan(1, 1, 1, 0, false, 0)).hasMessageContaining("one water");
        assertThatThrownBy(() -> new TrialPlan(1, 1, 1, 1, false, -1)).hasMessageContaining("at least one seed");
    }
}
