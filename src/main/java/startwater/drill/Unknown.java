package startwater.drill;

import org.jspecify.annotations.Nullable;

/** What the keeper does not know about a system. Each has a prior in the scenario, or its usual one. */
public enum Unknown {
    /** Ammonia oxidisers at the start, share of capacity. Unseeded: median 5e-4, sd 0.8 in the log (tuned). */
    AOB_SEED("aobSeedShare", new Prior.LogNormal(5e-4, 0.8)),
    /** Nitrite oxidisers at the start, share of capacity. */
    NOB_SEED("nobSeedShare", new Prior.LogNormal(2e-4, 0.8)),
    /** Factors on growth. */
    AOB_GROWTH("aobGrowthFactor", new Prior.LogNormal(1, 0.10)),
    NOB_GROWTH("nobGrowthFactor", new Prior.LogNormal(1, 0.10)),
    /** Factor on nitrogen excreted per feed. */
    EXCRETION("excretionFactor", new Prior.LogNormal(1, 0.15)),
    /** Factor on the volume: few know their true volume. */
    VOLUME("volumeFactor", new Prior.LogNormal(1, 0.075)),
    /** Factor on the oxygen transfer of the air devices. */
    AIR("airFactor", new Prior.LogNormal(1, 0.20)),
    /** Factor on the chloride that halves the nitrite that counts. */
    CHLORIDE_HALF("chlorideHalfFactor", new Prior.LogNormal(1, 0.25)),
    /** Factor on the thresholds of these fish (log-normal, sd 0.25: tuned). */
    SENSITIVITY("sensitivityFactor", new Prior.LogNormal(1, 0.25)),
    /** Source water: alkalinity mg/L as CaCO3, chloride mg/L, pH, chlorine and chloramine mg/L as Cl2. */
    SOURCE_ALKALINITY("sourceAlkalinityMgPerL", null),
    SOURCE_CHLORIDE("sourceChlorideMgPerL", null),
    SOURCE_PH("sourcePh", null),
    SOURCE_FREE_CHLORINE("sourceFreeChlorineMgPerL", null),
    SOURCE_COMBINED_CHLORINE("sourceCombinedChlorineMgPerL", null),
    /** How the one before fed, share of the ration. */
    PREDECESSOR_FEED("predecessorFeedFactor", new Prior.LogNormal(1, 0.10)),
    /** Lasting error of this bottle of strips, blocks: ammonia, nitrite, pH, alkalinity. */
    BIAS_AMMONIA("ammoniaStripBiasBlocks", new Prior.Gaussian(0, 0.15)),
    BIAS_NITRITE("nitriteStripBiasBlocks", new Prior.Gaussian(0, 0.15)),
    BIAS_PH("phStripBiasBlocks", new Prior.Gaussian(0, 0.15)),
    BIAS_ALKALINITY("alkalinityStripBiasBlocks", new Prior.Gaussian(0, 0.15));

    private final String key;
    private final @Nullable Prior usual;

    Unknown(String key, @Nullable Prior usual) {
        this.key = key;
        this.usual = usual;
    }

    /** Its name in a scenario file. */
    public String key() {
        return key;
    }

    /** The prior where the scenario is silent; null where the scenario's own source water stands. */
    public @Nullable Prior usual() {
        return usual;
    }
}
