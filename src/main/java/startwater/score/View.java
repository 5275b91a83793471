package startwater.score;

import org.jspecify.annotations.Nullable;

/** Other reasonable views of what a loss is. */
enum View {
    FISH_FIRST {
        @Override
        double loss(Losses l, int option) {
            return l.mean(option) + l.mean(option, Component.DEATHS) + l.mean(option, Component.STRESS);
        }
    },
    GROWTH_FIRST {
        @Override
        double loss(Losses l, int option) {
            return l.mean(option) + l.mean(option, Component.GROWTH) + l.mean(option, Component.DELAY);
        }
    },
    WATER_IS_DEAR {
        @Override
        double loss(Losses l, int option) {
            return l.mean(option) + 2 * l.mean(option, Component.WATER) + l.mean(option, Component.JOBS);
        }
    },
    WORST_TENTH {
        @Override
        double loss(Losses l, int option) {
            return l.worst(option, WORST_SHARE);
        }

        @Override
        double deaths(Losses l, int option) {
            return l.worstDeaths(option, WORST_SHARE);
        }
    };

    private static final double WORST_SHARE = 0.1;
    /** An option of more regret than this, % of the stock, is never accepted as arguable. */
    private static final double ARGUABLE_MOST = 0.5;

    abstract double loss(Losses losses, int option);

    /** Deaths as this view counts them, % of the stock. */
    double deaths(Losses losses, int option) {
        return losses.mean(option, Component.DEATHS);
    }

    private int best(Losses losses) {
        int best = 0;
        double least = loss(losses, 0);
        for (int o = 1; o < losses.options(); o++) {
            double loss = loss(losses, o);
            if (loss < least) {
                best = o;
                least = loss;
            }
        }
        return best;
    }

    /**
     * The view that accepts a choice which is not the best: as good as the best in that view, not far from it in the usual
     * one, and dangerous in none. Null where there is none.
     *
     * @param regret of the choice, % of the stock
     */
    static @Nullable View accepting(Losses losses, int own, double regret) {
        if (regret > ARGUABLE_MOST) {
            return null;
        }
        int usual = losses.best();
        View accepting = null;
        for (View view : values()) {
            int best = view.best(losses);
            double least = Math.min(view.deaths(losses, usual), view.deaths(losses, best));
            if (view.deaths(losses, own) - least > Judge.DANGEROUS_DEATHS) {
                return null;
            }
            if (accepting == null && view.loss(losses, own) <= view.loss(losses, best) + Scored.LEAST_BAND) {
                accepting = view;
            }
        }
        return accepting;
    }
}
