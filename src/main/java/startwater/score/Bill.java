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
}
