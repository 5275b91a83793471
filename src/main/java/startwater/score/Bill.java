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

    /** Adds what another comes to, in the share that its chance makes up. */
    void add(Bill other, double chance) {
        for (int k = 0; k < parts.length; k++) {
            for (int c = 0; c < parts[k].length; c++) {
                parts[k][c] += chance * other.parts[k][c];
            }
            for (int s = 0; s < deaths[k].length; s++) {
                deaths[k][s] += chance * other.deaths[k][s];
            }
            beside[k] += chance * other.beside[k];
        }
    }
}
