package startwater.drill;

import java.util.Objects;
import startwater.biofilter.FilterMedia;
import startwater.fish.Species;
import startwater.quantity.Stream;
import startwater.strip.Pad;
import startwater.tank.Sensitivity;
import startwater.tank.SourceWater;
import startwater.tank.TankParameters;

/**
 * One tank that fits the scenario: a standard normal score for each unknown, and what follows from it. The real tank of a
 * run and every plausible one are made here, so they differ in nothing but their scores.
 */
public final class TankDraw {
    private final double[] scores;
    private final double[] values;
    private final TankParameters parameters;
    private final SourceWater source;

    private TankDraw(Scenario s, double[] scores, Sensitivity sensitivity) {
        this.scores = scores;
        this.values = values(s, scores);
        this.parameters = parameters(s, sensitivity);
        this.source = source(s.source());
    }

    /** A tank with these scores, one per {@link Unknown}, its fish split in strata of sensitivity. */
    public static TankDraw of(Scenario s, double[] scores, Sensitivity sensitivity) {
        return new TankDraw(s, scores.clone(), sensitivity);
    }

    /** The hidden tank of a run: its fish have one sensitivity. */
    public static TankDraw hidden(Scenario s, long variant) {
        double[] scores = scores(Stream.of(variant, HIDDEN));
        double sensitivity = prior(s, Unknown.SENSITIVITY).at(scores[Unknown.SENSITIVITY.ordinal()]);
        return of(s, scores, Sensitivity.of(sensitivity));
    }

    private static final long HIDDEN = 0x7461_6e6bL;

    /** Fresh scores from a stream. */
    public static double[] scores(Stream stream) {
        double[] scores = new double[Unknown.values().length];
        for (int i = 0; i < scores.length; i++) {
            scores[i] = stream.normal();
        }
        return scores;
    }

    /** The prior of an unknown in this scenario. */
    public static Prior prior(Scenario s, Unknown unknown) {
        Prior own = s.unknowns().get(unknown);
        if (own != null) {
            return own;
        }
        Prior usual = unknown.usual();
        return usual != null ? usual : new Prior.Known(known(s.source(), unknown));
    }

    private static double known(Scenario.Source source, Unknown unknown) {
        return switch (unknown) {
            case SOURCE_ALKALINITY -> source.alkalinityMgPerL();
            case SOURCE_CHLORIDE -> source.chlorideMgPerL();
            case SOURCE_PH -> source.ph();
            case SOURCE_FREE_CHLORINE -> source.freeChlorineMgPerL();
            case SOURCE_COMBINED_CHLORINE -> source.combinedChlorineMgPerL();
            default -> throw new IllegalStateException(unknown + " has no usual prior");
        };
    }

    private static double[] values(Scenario s, double[] scores) {
        Unknown[] all = Unknown.values();
        double[] values = new double[all.length];
        for (int i = 0; i < all.length; i++) {
            values[i] = prior(s, all[i]).at(scores[i]);
        }
        return values;
    }

    private TankParameters parameters(Scenario s, Sensitivity sensitivity) {
        Scenario.Fish fish = s.fishHereOrPlanned();
        Scenario.Water w = s.system();
        Species species = fish == null ? null : Species.byId(fish.species());
        return new TankParameters(
                species,
                w.volumeL() * value(Unknown.VOLUME),
                w.mediaAreaM2(),
                value(Unknown.AOB_GROWTH),
                value(Unknown.NOB_GROWTH),
                value(Unknown.EXCRETION),
                w.airKlaPerHour() * value(Unknown.AIR),
                w.surfaceKlaPerHour(),
                w.carbonDioxideRatio(),
                w.roomCarbonDioxidePpm() * 1e-6,
                w.altitudeM(),
                fish == null ? 0 : fish.proteinPercent() / 100,
                species == null ? 1 : species.chlorideHalfMgPerL() * value(Unknown.CHLORIDE_HALF),
                w.temperatureRatePerDay(),
                sensitivity,
                FilterMedia.byId(w.media()),
                w.plantUptakeMgPerDay());
    }

    private SourceWater source(Scenario.Source at) {
        return SourceWater.read(
                at.temperatureC(),
                value(Unknown.SOURCE_PH),
                value(Unknown.SOURCE_ALKALINITY),
                at.ammoniaMgPerL(),
                at.nitrateMgPerL(),
                value(Unknown.SOURCE_CHLORIDE),
                Math.max(0, value(Unknown.SOURCE_FREE_CHLORINE)),
                Math.max(0, value(Unknown.SOURCE_COMBINED_CHLORINE)));
    }

    public double value(Unknown unknown) {
        return values[unknown.ordinal()];
    }

    public double[] scores() {
        return scores.clone();
    }

    public TankParameters parameters() {
        return parameters;
    }

    /** The water at hand, as it comes from the tap. */
    public SourceWater source() {
        return source;
    }

    /** The lasting error of this bottle's strips for a pad, blocks. */
    public double bias(Pad pad) {
        return switch (pad) {
            case AMMONIA -> value(Unknown.BIAS_AMMONIA);
            case NITRITE -> value(Unknown.BIAS_NITRITE);
            case PH -> value(Unknown.BIAS_PH);
            case ALKALINITY -> value(Unknown.BIAS_ALKALINITY);
            default -> 0;
        };
    }

    /** The species here or planned. @throws NullPointerException in a system without either */
    public Species species() {
        return Objects.requireNonNull(parameters.species(), "no fish here and none planned");
    }
}
