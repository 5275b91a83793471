package startwater.tank;

import org.jspecify.annotations.Nullable;
import startwater.biofilter.FilterMedia;
import startwater.biofilter.Nitrification;
import startwater.fish.Species;
import startwater.quantity.OutOfRangeException;
import startwater.quantity.Validity;
import startwater.water.OxygenSaturation;

/**
 * What stays fixed about one system. The unknowns of a plausible tank are drawn into this record.
 *
 * @param species the fish, or null for a system without
 * @param volumeL water in tanks, sump and filter, L
 * @param mediaAreaM2 wetted area of the filter media, m2
 * @param aobGrowthFactor factor on the growth of ammonia oxidisers
 * @param nobGrowthFactor factor on the growth of nitrite oxidisers
 * @param excretionFactor factor on the nitrogen excreted per feed
 * @param kLaDevicePerHour oxygen transfer of the air devices at 20 °C, 1/h
 * @param kLaSurfacePerHour oxygen transfer of the still surface at 20 °C, 1/h
 * @param carbonDioxideRatio CO2 transfer over oxygen transfer (0.4 diffused air, 0.9 splashing)
 * @param carbonDioxideAtm partial pressure of CO2 in the room, atm
 * @param altitudeM m
 * @param proteinFraction crude protein of the feed, 0..1
 * @param chlorideHalfMgPerL chloride that halves the nitrite that counts, mg/L
 * @param temperatureRatePerDay how fast water follows its set point, 1/d
 * @param sensitivity factor on the thresholds of the fish, one per stratum
 * @param media how the filter holds solids
 * @param plantUptakeMgPerDay nitrate that a plant bed takes at most, mg N/d; 0 without one
 */
public record TankParameters(
        @Nullable Species species,
        double volumeL,
        double mediaAreaM2,
        double aobGrowthFactor,
        double nobGrowthFactor,
        double excretionFactor,
        double kLaDevicePerHour,
        double kLaSurfacePerHour,
        double carbonDioxideRatio,
        double carbonDioxideAtm,
        double altitudeM,
        double proteinFraction,
        double chlorideHalfMgPerL,
        double temperatureRatePerDay,
        Sensitivity sensitivity,
        FilterMedia media,
        double plantUptakeMgPerDay) {
    /** A system with a moving bed and without plants. */
    public TankParameters(
            @Nullable Species species,
            double volumeL,
            double mediaAreaM2,
            double aobGrowthFactor,
            double nobGrowthFactor,
            double excretionFactor,
            double kLaDevicePerHour,
            double kLaSurfacePerHour,
            double carbonDioxideRatio,
            double carbonDioxideAtm,
            double altitudeM,
            double proteinFraction,
            double chlorideHalfMgPerL,
            double temperatureRatePerDay,
            Sensitivity sensitivity) {
        this(
                species,
                volumeL,
                mediaAreaM2,
                aobGrowthFactor,
                nobGrowthFactor,
                excretionFactor,
                kLaDevicePerHour,
                kLaSurfacePerHour,
                carbonDioxideRatio,
                carbonDioxideAtm,
                altitudeM,
                proteinFraction,
                chlorideHalfMgPerL,
                temperatureRatePerDay,
                sensitivity,
                FilterMedia.MOVING_BED,
                0);
    }

    private static final String EQUATION = "tank";
    private static final String LIMIT = "what the equations of the tank can carry";
    /** Water, L. */
    public static final Validity VOLUME_L = new Validity(EQUATION, "water in L", 0.1, 1e8, LIMIT);
    /** Factors on growth and excretion. */
    public static final Validity FACTOR =
            new Validity(EQUATION, "factor on growth or excretion", 1e-3, 1e3, "a tank's share of the published rate");
    /** Oxygen transfer, 1/h: 1.2 to 10 is common, from a still surface 0.1. */
    public static final Validity KLA_PER_HOUR = new Validity(EQUATION, "oxygen transfer per hour", 0, 1000, LIMIT);
    /** CO2 over oxygen transfer. */
    public static final Validity CARBON_DIOXIDE_RATIO = new Validity(
            EQUATION, "CO2 over oxygen transfer", 0, 10, "0.4 diffused air, 0.9 splashing: aeration handbooks");
    /** CO2 of the room, atm. */
    public static final Validity ROOM_CARBON_DIOXIDE_ATM =
            new Validity(EQUATION, "CO2 of the room in atm", 0, 0.1, "no room with people in it holds more");
    /** Crude protein of the feed, as a share. */
    public static final Validity PROTEIN = new Validity(EQUATION, "protein of the feed", 0, 0.7, "no feed holds more");
    /** How fast water follows its set point, 1/d. */
    public static final Validity TEMPERATURE_RATE_PER_DAY =
            new Validity(EQUATION, "drift of temperature per day", 0, 1000, LIMIT);
    /** Uptake of plants, mg N/d. */
    public static final Validity PLANT_UPTAKE_MG_PER_DAY =
            new Validity(EQUATION, "uptake of plants in mg N/d", 0, 1e12, LIMIT);

    /** @throws OutOfRangeException for a value outside the ranges above, or of the equations it goes into */
    public TankParameters {
        VOLUME_L.check(volumeL);
        Nitrification.MEDIA_M2.check(mediaAreaM2);
        FACTOR.check(aobGrowthFactor);
        FACTOR.check(nobGrowthFactor);
        FACTOR.check(excretionFactor);
        KLA_PER_HOUR.check(kLaDevicePerHour);
        KLA_PER_HOUR.check(kLaSurfacePerHour);
        CARBON_DIOXIDE_RATIO.check(carbonDioxideRatio);
        ROOM_CARBON_DIOXIDE_ATM.check(carbonDioxideAtm);
        OxygenSaturation.ALTITUDE_M.check(altitudeM);
        PROTEIN.check(proteinFraction);
        Species.CHLORIDE_HALF_MG_PER_L.check(chlorideHalfMgPerL);
        TEMPERATURE_RATE_PER_DAY.check(temperatureRatePerDay);
        PLANT_UPTAKE_MG_PER_DAY.check(plantUptakeMgPerDay);
    }

    public int strata() {
        return sensitivity.strata();
    }

    /** The same system with other media and a plant bed. @param uptakeMgPerDay mg N/d, 0 for none */
    public TankParameters with(FilterMedia otherMedia, double uptakeMgPerDay) {
        return new TankParameters(
                species,
                volumeL,
                mediaAreaM2,
                aobGrowthFactor,
                nobGrowthFactor,
                excretionFactor,
                kLaDevicePerHour,
                kLaSurfacePerHour,
                carbonDioxideRatio,
                carbonDioxideAtm,
                altitudeM,
                proteinFraction,
                chlorideHalfMgPerL,
                temperatureRatePerDay,
                sensitivity,
                otherMedia,
                uptakeMgPerDay);
    }

    /** Flow through the filter with all that it holds, share of that through a clean one. */
    public double flowShare(double[] y) {
        return media.flowShare(y[TankLayout.HELD_N] / mediaAreaM2);
    }

    /** The most that the media can carry, activity of ammonia oxidisers at 20 °C, mg N/d. */
    public double aobCapacityMgPerDay() {
        return Nitrification.capacityMgPerDay(mediaAreaM2, Nitrification.THETA_AOB);
    }

    /** The same for nitrite oxidisers. */
    public double nobCapacityMgPerDay() {
        return Nitrification.capacityMgPerDay(mediaAreaM2, Nitrification.THETA_NOB);
    }
}
