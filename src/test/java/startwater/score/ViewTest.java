package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import startwater.fish.Stressor;

/** Which view accepts a choice that is not the best. Losses are made up, % of the stock, part by part. */
class ViewTest {
    /** An option's parts in a tank of nine tenths of the belief and in one of the other tenth. */
    private record Option(Map<Component, Double> mostly, Map<Component, Double> rarely) {
        static Option of(Component part, double loss) {
            return of(Map.of(part, loss));
        }

        static Option of(Map<Component, Double> parts) {
            return new Option(parts, parts);
        }
    }

    private static final Option WASTE = Option.of(Component.WASTE, 1.3);

    /** The view that accepts the second of these, its regret worked out from the first. */
    private static @Nullable View accepting(Option... options) {
        double[][][] parts = new double[options.length][2][Component.values().length];
        double[][][] deaths = new double[options.length][2][Stressor.COUNT];
        for (int o = 0; o < options.length; o++) {
            int option = o;
            options[o].mostly().forEach((part, loss) -> parts[option][0][part.ordinal()] = loss);
            options[o].rarely().forEach((part, loss) -> parts[option][1][part.ordinal()] = loss);
        }
        Losses losses = new Losses(parts, deaths, new double[] {0.9, 0.1}, 1);
        return View.accepting(losses, 1, losses.regret(1));
    }

    @Test
    void eachViewCountsItsOwnPartsMore() {
        assertThat(accepting(Option.of(Component.DEATHS, 1), WASTE)).isEqualTo(View.FISH_FIRST);
        assertThat(accepting(Option.of(Component.STRESS, 1), WASTE)).isEqualTo(View.FISH_FIRST);
        assertThat(accepting(Option.of(Component.GROWTH, 1), WASTE)).isEqualTo(View.GROWTH_FIRST);
        assertThat(accepting(Option.of(Component.DELAY, 1), WASTE)).isEqualTo(View.GROWTH_FIRST);
        assertThat(accepting(Option.of(Component.WATER, 1), WASTE)).isEqualTo(View.WATER_IS_DEAR);
        assertThat(accepting(Option.of(Component.JOBS, 1), WASTE)).isEqualTo(View.WATER_IS_DEAR);
        assertThat(accepting(Option.of(Component.SALT, 1), WASTE))
                .as("no view counts salt more")
                .isNull();
    }

    /** 0.2 of water counts 0.6 where it is dear and covers 0.48; 0.2 of work counts 0.4 and does not. */
    @Test
    void whereWaterIsDearItCountsThreefoldAndWorkTwofold() {
        Option own = Option.of(Component.WASTE, 0.48);
        assertThat(accepting(Option.of(Component.WATER, 0.2), own)).isEqualTo(View.WATER_IS_DEAR);
        assertThat(accepting(Option.of(Component.JOBS, 0.2), own)).isNull();
    }

    /** Both lose 1 and 1.3 on the mean; in the worst tenth the usual best loses 10. */
    @Test
    void whoLooksAtTheWorstTankInTenTakesTheEvenOne() {
        Option risky = new Option(Map.of(), Map.of(Component.WASTE, 10.0));
        assertThat(accepting(risky, WASTE)).isEqualTo(View.WORST_TENTH);
    }

    @Test
    void aRegretOverHalfAPercentIsNeverAccepted() {
        Option stressful = Option.of(Component.STRESS, 1);
        assertThat(accepting(stressful, Option.of(Component.WASTE, 1.5))).isEqualTo(View.FISH_FIRST);
        assertThat(accepting(stressful, Option.of(Component.WASTE, 1.51))).isNull();
    }

    /** Growth counted twice, the best loses 2; up to 0.05 more cannot be told from it. */
    @Test
    void aChoiceMustBeAsGoodAsTheBestOfTheView() {
        Option slow = Option.of(Map.of(Component.GROWTH, 0.2, Component.WASTE, 1.0));
        assertThat(accepting(slow, Option.of(Component.WASTE, 1.44))).isEqualTo(View.GROWTH_FIRST);
        assertThat(accepting(slow, Option.of(Component.WASTE, 1.46))).isNull();
        Option betterInThisView = Option.of(Component.WASTE, 1.38);
        assertThat(accepting(slow, Option.of(Component.WASTE, 1.44), betterInThisView))
                .isNull();
    }

    @Test
    void aChoiceThatKillsOnePercentMoreIsNeverAccepted() {
        Option slow = Option.of(Component.GROWTH, 3);
        assertThat(accepting(slow, Option.of(Map.of(Component.DEATHS, 0.9, Component.WASTE, 2.3))))
                .isEqualTo(View.GROWTH_FIRST);
        assertThat(accepting(slow, Option.of(Map.of(Component.DEATHS, 1.1, Component.WASTE, 2.1))))
                .isNull();
    }

    /** A tenth of 0.9 or 1.1 is little on the mean, but that is what dies in the worst tank in ten. */
    @Test
    void norOneThatKillsAPercentMoreInTheWorstTankInTen() {
        Option slow = Option.of(Component.GROWTH, 3);
        Map<Component, Double> mostly = Map.of(Component.WASTE, 3.1);
        assertThat(accepting(slow, new Option(mostly, Map.of(Component.WASTE, 3.1, Component.DEATHS, 0.9))))
                .isEqualTo(View.GROWTH_FIRST);
        assertThat(accepting(slow, new Option(mostly, Map.of(Component.WASTE, 3.1, Component.DEATHS, 1.1))))
                .isNull();
    }

    /** The third option loses 0.5 more than the best, but to one who counts deaths double it is the best, and none die. */
    @Test
    void deathsAreCountedOverThoseOfTheBestInTheView() {
        Option usual = Option.of(Map.of(Component.DEATHS, 0.6, Component.GROWTH, 0.2));
        Option own = Option.of(Component.DEATHS, 1.04);
        assertThat(accepting(usual, own)).isEqualTo(View.GROWTH_FIRST);
        assertThat(accepting(usual, own, Option.of(Component.WASTE, 1.3))).isNull();
    }
}
