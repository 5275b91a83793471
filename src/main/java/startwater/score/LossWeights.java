package startwater.score;

import startwater.drill.Decision;

/**
 * What counts how much, in % of the stock. Tuned so that the rankings of the tests come out over species and tanks, and
 * frozen; change one only together with those tests.
 */
final class LossWeights {
    /** Per full-ration day of growth lost: the first five days, and each beyond. Fish fasted a week catch up. */
    static final double GROWTH_FIRST = 0.05;

    static final double GROWTH_BEYOND = 0.15;
    static final double GROWTH_FIRST_DAYS = 5;
    /** Fry under this mass, g, must not fast at all: theirs counts so from the first day. */
    static final double FRY_G = 1;

    static final double GROWTH_OF_FRY = 0.25;
    /** Per ration-day left uneaten. */
    static final double WASTE = 0.15;
    /** Per day and ln-unit over guidance. */
    static final double STRESS = 0.25;
    /** Per day until both filter groups carry the full ration. */
    static final double DELAY = 0.07;
    /** Per tank volume of water. */
    static final double WATER = 0.20;
    /** Per job or dose. */
    static final double JOB = 0.03;
    /** Per ln-unit of chloride over the greater of 120 mg/L and 40 times the nitrite-N, at the horizon. */
    static final double SALT = 0.20;

    static final double SALT_FREE_MG_PER_L = 120;
    static final double SALT_FREE_PER_NITRITE = 40;
    /** Without fish: per day until the filter carries the planned ration and both readings are under 1. */
    static final double FISHLESS_DELAY = 0.10;
    /** The same visits: per full-ration day lost; fish that are nowhere yet lose every day. */
    static final double FISHLESS_GROWTH = 0.10;
    /** Ammonium, per 2 mg/L dosed; no job beside it, since topping up is what a fishless start is made of. */
    static final double AMMONIUM = 0.03;
    /** What lies beyond the horizon: net growth per day of a group that is behind, for the days still to come. */
    static final double CATCH_UP_PER_DAY = 0.25;

    static final double CATCH_UP_MOST_DAYS = 30;

    /** Growth lost, in % of the stock, for so many full-ration days. @param massG mean body mass, g */
    static double growth(double days, double massG) {
        if (massG < FRY_G) {
            return GROWTH_OF_FRY * days;
        }
        return GROWTH_FIRST * Math.min(days, GROWTH_FIRST_DAYS) + GROWTH_BEYOND * Math.max(0, days - GROWTH_FIRST_DAYS);
    }

    /** Somebody who comes in between to look, and somebody who knows who is called: their time. */
    static final double LOOK_AGAIN = 0.07;

    static final double CALL = 0.30;
    /** One strip and the minutes it takes. */
    static final double STRIP = 0.05;

    /** The price of asking somebody to come, % of the stock; the asking itself counts as a job beside it. */
    static double attention(Decision.FollowUp followUp) {
        return switch (followUp) {
            case NONE -> 0;
            case LOOK_AGAIN -> LOOK_AGAIN;
            case CALL -> CALL;
        };
    }

    private LossWeights() {}
}
