package startwater.app.view.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import startwater.strip.FishMood;

class ShoalTest {
    private static final TankBody BODY = TankBody.within(352, 260, 1.0);
    private static final double STONE_X = BODY.left() + 0.82 * BODY.width();

    @ParameterizedTest
    @EnumSource(FishMood.class)
    void everyFishSwimsInsideTheWater(FishMood mood) {
        for (long seed = 0; seed < 40; seed++) {
            List<Swimmer> shoal = Shoal.of(look(mood, 240, seed, true), BODY, STONE_X);
            assertThat(shoal).hasSize(24);
            for (Swimmer s : shoal) {
                assertThat(s.x()).isBetween(BODY.left(), BODY.right());
                assertThat(s.y()).isBetween(BODY.surface(), BODY.floor());
                assertThat(s.snoutY()).isGreaterThan(BODY.surface());
                assertThat(s.snoutX()).isBetween(BODY.left(), BODY.right());
                assertThat(2 * s.x() - s.snoutX()).as("tail").isBetween(BODY.left(), BODY.right());
            }
        }
    }

    @Test
    void beggingFishCrowdTheSurfaceOnYourSide() {
        List<Swimmer> top = breaking(look(FishMood.BEGGING, 240, 3, true));
        assertThat(top).hasSizeGreaterThanOrEqualTo(6).allSatisfy(s -> {
            assertThat(s.noseUpDegrees()).isBetween(25.0, 55.0);
            assertThat(s.facesRight()).isFalse();
            assertThat(s.snoutX()).isLessThan(BODY.left() + 0.7 * BODY.width());
        });
    }

    @Test
    void gaspingFishGatherAtTheBubblesOrAlongTheWholeSurface() {
        List<Swimmer> atStone = breaking(look(FishMood.GASPING, 240, 3, true));
        List<Swimmer> everywhere = breaking(look(FishMood.GASPING, 240, 3, false));
        assertThat(atStone).hasSizeGreaterThanOrEqualTo(10).allMatch(s -> s.snoutX() > BODY.middle() - 20);
        assertThat(everywhere).anyMatch(s -> s.snoutX() < BODY.left() + 0.25 * BODY.width());
    }

    @Test
    void slowFishKeepToTheBottomThirdAndFishOffTheirFeedFaceAway() {
        assertThat(Shoal.of(look(FishMood.SLOW, 240, 3, true), BODY, STONE_X))
                .allMatch(s -> s.y() > BODY.surface() + 0.66 * BODY.depth());
        assertThat(Shoal.of(look(FishMood.OFF_FEED, 240, 3, true), BODY, STONE_X))
                .filteredOn(Swimmer::facesRight)
                .hasSizeGreaterThan(19);
    }

    @Test
    void sameTankIsAlwaysDrawnAlike() {
        TankLook look = look(FishMood.CALM, 240, 9, true);
        assertThat(Shoal.of(look, BODY, STONE_X)).isEqualTo(Shoal.of(look, BODY, STONE_X));
    }

    @Test
    void aFewFishAreNeverDrawnAsNone() {
        assertThat(look(FishMood.CALM, 3, 1, true).marks()).isEqualTo(1);
        assertThat(look(FishMood.CALM, 0, 1, true).marks()).isZero();
    }

    @Test
    void refusesAShareOutsideZeroToOne() {
        assertThatThrownBy(
                        () -> new TankLook(1, 1, FishMood.CALM, 0, 1.2, 0, true, 1, "", TankLook.Shape.CATFISH, 1, ""))
                .hasMessageContaining("haze must lie between 0 and 1");
    }

    private static List<Swimmer> breaking(TankLook look) {
        return Shoal.of(look, BODY, STONE_X).stream()
                .filter(Swimmer::breaksSurface)
                .toList();
    }

    private static TankLook look(FishMood mood, int fish, long seed, boolean air) {
        return new TankLook(fish, 10, mood, 0, 0, 0, air, 1, "", TankLook.Shape.CATFISH, seed, "");
    }
}
