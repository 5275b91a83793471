package startwater.biofilter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a bed does as it fills with solids: less flow, less area, and a moving bed neither. */
class FilterMediaTest {
    @ParameterizedTest
    @EnumSource(FilterMedia.class)
    void aCleanBedHasAllItsFlowAndAreaAndFillingOnlyTakes(FilterMedia media) {
        assertThat(media.flowShare(0)).isEqualTo(1);
        assertThat(FilterMedia.areaShare(media.flowShare(0))).isEqualTo(1);
        double flow = 1;
        for (double held = 5; held < 3000; held *= 1.4) {
            double less = media.flowShare(held);
            assertThat(less).isGreaterThan(0).isLessThanOrEqualTo(flow);
            assertThat(FilterMedia.areaShare(less)).isBetween(0.5, 1.0);
            flow = less;
        }
        assertThat(flow).matches(f -> media == FilterMedia.MOVING_BED ? f == 1 : f < 0.01);
    }

    @ParameterizedTest
    @EnumSource(value = FilterMedia.class, mode = EnumSource.Mode.EXCLUDE, names = "MOVING_BED")
    void theFlowIsHalvedAtALoadOfOneAndClogsFasterBehindIt(FilterMedia media) {
        double half = 100 / media.load(100);
        assertThat(half).isBetween(100.0, 200.0);
        assertThat(media.flowShare(half)).isCloseTo(0.5, within(1e-12));
        assertThat(FilterMedia.flowShareAt(1)).isEqualTo(0.5);
        assertThat(FilterMedia.flowShareAt(3)).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void aBedWithoutFlowStillLaysHalfOpen() {
        assertThat(FilterMedia.areaShare(0)).isEqualTo(0.5);
        assertThat(FilterMedia.areaShare(0.5)).isEqualTo(0.75);
    }

    @Test
    void fineAndSoftMediaCatchMoreThanRingsAndMovingOnesNothing() {
        assertThat(FilterMedia.MOVING_BED.trappingPerDay()).isZero();
        assertThat(FilterMedia.STATIC_PLASTIC.trappingPerDay())
                .isPositive()
                .isLessThan(FilterMedia.SPONGE.trappingPerDay());
        assertThat(FilterMedia.SPONGE.trappingPerDay()).isLessThan(FilterMedia.SAND.trappingPerDay());
    }

    @ParameterizedTest
    @EnumSource(FilterMedia.class)
    void eachKindIsFoundByItsName(FilterMedia media) {
        assertThat(FilterMedia.byId(media.id())).isEqualTo(media);
        assertThat(FilterMedia.ids()).contains(media.id()).doesNotHaveDuplicates();
    }

    @Test
    void anUnknownKindIsRefusedWithThoseThereAre() {
        assertThatThrownBy(() -> FilterMedia.byId("gravel"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("gravel")
                .hasMessageContaining("moving-bed, static-plastic, sand, sponge");
    }
}
