package startwater.score;

import startwater.fish.Stressor;

/**
 * What one option costs in one water, in % of the stock. Filled once, then read only.
 *
 * @param parts by stratum of sensitivity and {@link Component}
 * @param deaths by stratum and {@link Stressor}, in the system and in a nursery beside
 * @param beside those of them that died in the nursery, by stratum
 */
record Bill(double[][] parts, double[][] deaths, double[] beside) {
    static Bill empty() {
        return new Bill(
                new double[Belief.STRATA][Component.values().length],
                new double[Belief.STRATA][Stressor.COUNT],
                new double[Belief.STRATA]);
    }

    void add(Component component, double cost) {
        for (double[] part : parts) {
            part[component.ordinal()] += cost;
        }
    }

    /** The share of it that a way of this chance makes up. */
    Bill times(double chance) {
        Bill share = empty();
        for (int k = 0; k < parts.length; k++) {
            for (int c = 0; c < parts[k].length; c++) {
                share.parts[k][c] = chance * parts[k][c];
            }
            for (int s = 0; s < deaths[k].length; s++) {
                share.deaths[k][s] = chance * deaths[k][s];
            }
            share.beside[k] = chance * beside[k];
        }
        return share;
    }

    void add(Bill other) {
        for (int k = 0; k < parts.length; k++) {
            for (int c = 0; c < parts[k].length; c++) {
                parts[k][c] += other.parts[k][c];
            }
            for (int s = 0; s < deaths[k].length; s++) {
                deaths[k][s] += other.deaths[k][s];
            }
            beside[k] += other.beside[k];
        }
    }
}
