package startwater.tank;

import static startwater.Refusals.refused;

import org.junit.jupiter.api.Test;
import startwater.biofilter.Nitrification;
import startwater.fish.Species;
import startwater.quantity.Validity;
import startwater.water.OxygenSaturation;

/** A tank whose numbers no equation can carry is refused by name and range before a step is made. */
class TankValidityTest {
    /** Volume, media, growth of both groups, excretion, air, surface, CO2 ratio, CO2, altitude, protein, chloride, drift, plants. */
    private static final double[] SOUND = {1000, 10, 1, 1, 1, 2, 0.1, 0.5, 600e-6, 0, 0.35, 25, 2, 0};

    private static final Validity[] RANGES = {
        TankParameters.VOLUME_L,
        Nitrification.MEDIA_M2,
        TankParameters.FACTOR,
        TankParameters.FACTOR,
        TankParameters.FACTOR,
        TankParameters.KLA_PER_HOUR,
        TankParameters.KLA_PER_HOUR,
        TankParameters.CARBON_DIOXIDE_RATIO,
        TankParameters.ROOM_CARBON_DIOXIDE_ATM,
        OxygenSaturation.ALTITUDE_M,
        TankParameters.PROTEIN,
        Species.CHLORIDE_HALF_MG_PER_L,
        TankParameters.TEMPERATURE_RATE_PER_DAY,
        TankParameters.PLANT_UPTAKE_MG_PER_DAY
    };

    private static TankParameters tank(double[] v) {
        return new TankParameters(
                        Species.byId("nile-tilapia"),
                        v[0],
                        v[1],
                        v[2],
                        v[3],
                        v[4],
                        v[5],
                        v[6],
                        v[7],
                        v[8],
                        v[9],
                        v[10],
                        v[11],
                        v[12],
                        Sensitivity.ORDINARY)
                .with(startwater.biofilter.FilterMedia.MOVING_BED, v[13]);
    }

    @Test
    void everyNumberOfATankIsHeldToItsRange() {
        for (int i = 0; i < RANGES.length; i++) {
            int at = i;
            refused(RANGES[i], value -> {
                double[] changed = SOUND.clone();
                changed[at] = value;
                tank(changed);
            });
        }
    }

    @Test
    void inflowSpareAirAndSensitivityAreHeldToTheirs() {
        SourceWater water = SourceWater.read(25, 7.6, 100, 0, 1, 20, 0, 0);
        refused(Controls.FLOW_PER_DAY, value -> Controls.running(25).withInflow(value, 0, water));
        refused(Controls.FLOW_PER_DAY, value -> Controls.running(25).withInflow(0, value, water));
        refused(TankParameters.KLA_PER_HOUR, value -> Controls.running(25).withSpareAir(value));
        refused(Sensitivity.FACTOR, value -> Sensitivity.of(1, value));
    }
}
