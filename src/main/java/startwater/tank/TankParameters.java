package startwater.tank;

import org.jspecify.annotations.Nullable;
import startwater.biofilter.FilterMedia;
import startwater.biofilter.Nitrification;
import startwater.fish.Species;

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

    public TankParameters {
        require(volumeL > 0, "volume", volumeL, "more than 0 L");
        require(mediaAreaM2 > 0, "media area", mediaAreaM2, "more than 0 m2");
        require(aobGrowthFactor > 0 && nobGrowthFactor > 0, "growth factor", aobGrowthFactor, "more than 0");
        require(kLaDevicePerHour >= 0, "air device kLa", kLaDevicePerHour, "0 or more per hour");
        require(kLaSurfacePerHour > 0, "surface kLa", kLaSurfacePerHour, "more than 0 per hour");
        require(carbonDioxideAtm > 0 && carbonDioxideAtm < 0.1, "room CO2", carbonDioxideAtm, "0..0.1 atm");
        require(plantUptakeMgPerDay >= 0, "plant uptake", plantUptakeMgPerDay, "0 or more mg N/d");
        require(proteinFraction >= 0 && proteinFraction <= 0.7, "protein", proteinFraction, "0..0.7");
    }

    private static void require(boolean holds, String what, double value, String want) {
        if (!holds) {
            throw new IllegalArgumentException("Tank: " + what + " is " + value + "; it must be " + want + ".");
        }
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
