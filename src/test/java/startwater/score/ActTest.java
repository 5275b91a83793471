package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.Decision.Air;
import startwater.drill.Decision.FilterCare;
import startwater.drill.Decision.FollowUp;

/** What kind of act a decision is. */
class ActTest {
    private static final Decision NOTHING = Decision.LEAVE_ALONE;

    private static String code(Decision d) {
        return Act.of(d).code();
    }

    @Test
    void theFeedingComesFirstInThreeKinds() {
        Map<Double, String> kinds = new TreeMap<>(Map.of(
                0.0,
                "hold",
                0.1,
                "half-feed",
                0.5,
                "half-feed",
                0.74,
                "half-feed",
                0.75,
                "full-feed",
                1.0,
                "full-feed",
                2.0,
                "full-feed"));
        kinds.forEach((feed, kind) -> assertThat(code(NOTHING.withFeed(feed))).isEqualTo(kind));
    }

    @Test
    void aChangeCountsInQuartersOfTheWaterAndAtLeastOne() {
        Map<Double, String> kinds = Map.of(
                0.05,
                "change-1",
                0.25,
                "change-1",
                0.37,
                "change-1",
                0.38,
                "change-2",
                0.5,
                "change-2",
                0.75,
                "change-3",
                0.95,
                "change-4");
        kinds.forEach(
                (change, kind) -> assertThat(code(NOTHING.withChange(change))).isEqualTo("full-feed+" + kind));
        assertThat(code(NOTHING.withChange(0.5).withNeutralise(false))).isEqualTo("full-feed+raw-change-2");
        assertThat(code(NOTHING.withNeutralise(false)))
                .as("no water, nothing raw")
                .isEqualTo("full-feed");
    }

    @Test
    void stockingCountsInFifthsOfThePlannedFishAndAtLeastOne() {
        Map<Double, String> kinds =
                Map.of(0.02, "stock-1", 0.2, "stock-1", 0.31, "stock-2", 0.5, "stock-3", 1.0, "stock-5");
        kinds.forEach(
                (share, kind) -> assertThat(code(NOTHING.withStock(share))).isEqualTo("full-feed+" + kind));
    }

    @Test
    void everyOtherPartHasItsWord() {
        assertThat(code(NOTHING.withSalt(1))).isEqualTo("full-feed+salt");
        assertThat(code(NOTHING.withBicarbonate(1))).isEqualTo("full-feed+buffer");
        assertThat(code(NOTHING.withSodaAsh(1))).isEqualTo("full-feed+soda");
        assertThat(code(NOTHING.withAmmoniumChloride(1))).isEqualTo("full-feed+ammonium");
        assertThat(code(NOTHING.withRipeMedia(0.1))).isEqualTo("full-feed+ripe-media");
        assertThat(code(NOTHING.withAir(Air.OFF))).isEqualTo("full-feed+air-off");
        assertThat(code(NOTHING.withAir(Air.SPARE))).isEqualTo("full-feed+spare-air");
        assertThat(code(NOTHING.withPump(false))).isEqualTo("full-feed+pump-off");
        assertThat(code(NOTHING.withHeater(false))).isEqualTo("full-feed+heater-off");
        assertThat(code(NOTHING.withFilter(FilterCare.RINSE))).isEqualTo("full-feed+rinse");
        assertThat(code(NOTHING.withFilter(FilterCare.SCRUB))).isEqualTo("full-feed+scrub");
        assertThat(code(NOTHING.withFilter(FilterCare.DRAIN))).isEqualTo("full-feed+drain");
        assertThat(code(NOTHING.withFollowUp(FollowUp.LOOK_AGAIN))).isEqualTo("full-feed+look-again");
        assertThat(code(NOTHING.withFollowUp(FollowUp.CALL))).isEqualTo("full-feed+call");
    }

    @Test
    void gramsMakeNoOtherActAndItsCodeIsReadBack() {
        Decision much = NOTHING.withFeed(0).withChange(0.5).withSalt(340).withAir(Air.SPARE);
        Act act = Act.of(much);
        assertThat(Act.of(much.withSalt(300))).isEqualTo(act);
        assertThat(act.code()).isEqualTo("hold+change-2+salt+spare-air");
        assertThat(Act.read(act.code())).isEqualTo(act);
    }
}
