package startwater.content;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import startwater.drill.Prior;
import startwater.drill.Unknown;
import startwater.quantity.OutOfRangeException;
import startwater.tank.SourceWater;
import startwater.water.CarbonateSystem;

/** The rules about water and what is not known of it: R24 and R25. */
final class WaterRules {
    /** More carbon dioxide than this, mg/L, is no source water but a slip in pH or alkalinity (common practice, no source). */
    private static final double MOST_CARBON_DIOXIDE_MG_PER_L = 500;

    private static final double MG_CO2_PER_MMOL = 44.01;
    /** Scores at which a prior must still make sense: 997 tanks of 1,000 lie between. */
    private static final double FAR = 3;

    private static final double OFTEN = 2;
    private static final Map<Unknown, NumberShape> LIMITS = limits();

    private final Fields root;
    private final Fields source;
    private final Faults faults;
    private final Map<Unknown, Prior> priors = new EnumMap<>(Unknown.class);

    WaterRules(Fields root, Faults faults) {
        this.root = root;
        this.source = root.group("source");
        this.faults = faults;
    }

    void check() {
        for (Unknown unknown : Unknown.values()) {
            prior(unknown);
        }
        stated();
        possible();
    }

    private void prior(Unknown unknown) {
        Fields unknowns = root.group("unknowns");
        String key = unknown.key();
        Fields kind = unknowns.group(key);
        Fields range = kind.group("uniform");
        if (range.number("low") > range.number("high")) {
            faults.add(unknowns.line(key), Complaint.RANGE_BACKWARDS, "key", key);
            return;
        }
        if (kind.keys().isEmpty() || !ScenarioBinder.isWholePrior(kind)) {
            return;
        }
        Prior prior = ScenarioBinder.prior(kind);
        NumberShape limit = java.util.Objects.requireNonNull(LIMITS.get(unknown));
        for (double reach : new double[] {prior.at(-FAR), prior.at(FAR)}) {
            if (!(reach >= limit.low() && reach <= limit.high())) {
                faults.add(
                        unknowns.line(key),
                        Complaint.PRIOR_OUTSIDE,
                        "key",
                        key,
                        "reach",
                        reach,
                        "low",
                        limit.low(),
                        "high",
                        limit.high());
                return;
            }
        }
        priors.put(unknown, prior);
    }

    private void stated() {
        double sum = source.number("freeChlorineMgPerL") + source.number("combinedChlorineMgPerL");
        double stated = source.number("statedChlorineMgPerL");
        if (sum > stated) {
            faults.add(
                    source.line("statedChlorineMgPerL"), Complaint.CHLORINE_OVER_STATED, "sum", sum, "stated", stated);
        }
    }

    private void possible() {
        double ph = source.number("ph");
        double alkalinity = source.number("alkalinityMgPerL");
        if (!exists(ph, alkalinity)) {
            faults.add(source.line("ph"), Complaint.NO_SUCH_WATER, "ph", ph, "alkalinity", alkalinity);
            return;
        }
        Prior phPrior = priors.get(Unknown.SOURCE_PH);
        Prior alkalinityPrior = priors.get(Unknown.SOURCE_ALKALINITY);
        for (int corner = 0; corner < 4; corner++) {
            double cornerPh = at(phPrior, (corner & 1) == 0 ? -OFTEN : OFTEN, ph);
            double cornerAlkalinity = at(alkalinityPrior, (corner & 2) == 0 ? -OFTEN : OFTEN, alkalinity);
            if (!exists(cornerPh, cornerAlkalinity)) {
                Fields unknowns = root.group("unknowns");
                Unknown named = phPrior != null ? Unknown.SOURCE_PH : Unknown.SOURCE_ALKALINITY;
                faults.add(
                        unknowns.line(named.key()),
                        Complaint.NO_SUCH_WATER_PRIOR,
                        "ph",
                        cornerPh,
                        "alkalinity",
                        cornerAlkalinity);
                return;
            }
        }
    }

    private static double at(@Nullable Prior prior, double score, double otherwise) {
        return prior == null ? otherwise : prior.at(score);
    }

    /** Whether there is such a water; true where that cannot be told. */
    private boolean exists(double ph, double alkalinity) {
        double temperature = source.number("temperatureC");
        double ammonia = source.number("ammoniaMgPerL");
        double nitrate = source.number("nitrateMgPerL");
        double chloride = source.number("chlorideMgPerL");
        if (Double.isNaN(ph + alkalinity + temperature + ammonia + nitrate + chloride)) {
            return true;
        }
        try {
            SourceWater water = SourceWater.read(temperature, ph, alkalinity, ammonia, nitrate, chloride, 0, 0);
            CarbonateSystem carbonate = CarbonateSystem.at(
                    temperature, CarbonateSystem.ionicStrength(water.alkalinityMeqPerL(), chloride, 0, nitrate));
            double carbonDioxide = carbonate.co2(StrictMath.pow(10, -ph), water.dicMmolPerL()) * MG_CO2_PER_MMOL;
            return carbonDioxide <= MOST_CARBON_DIOXIDE_MG_PER_L;
        } catch (OutOfRangeException e) {
            return false;
        }
    }

    private static Map<Unknown, NumberShape> limits() {
        Map<Unknown, NumberShape> limits = new EnumMap<>(Unknown.class);
        for (Unknown unknown : Unknown.values()) {
            limits.put(
                    unknown,
                    switch (unknown) {
                        case AOB_SEED, NOB_SEED -> NumberShape.number(1e-8, 1);
                        case AOB_GROWTH, NOB_GROWTH, AIR, CHLORIDE_HALF, SENSITIVITY -> NumberShape.number(0.1, 10);
                        case EXCRETION, VOLUME -> NumberShape.number(0.3, 3);
                        case SOURCE_ALKALINITY -> NumberShape.number(0, 500);
                        case SOURCE_CHLORIDE -> NumberShape.number(0, 2000);
                        case SOURCE_PH -> NumberShape.number(5, 9.5);
                        case SOURCE_FREE_CHLORINE, SOURCE_COMBINED_CHLORINE -> NumberShape.number(0, 10);
                        case PREDECESSOR_FEED -> NumberShape.number(0, 5);
                        case BIAS_AMMONIA, BIAS_NITRITE, BIAS_PH, BIAS_ALKALINITY -> NumberShape.number(-3, 3);
                    });
        }
        return limits;
    }
}
