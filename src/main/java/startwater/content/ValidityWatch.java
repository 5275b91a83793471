package startwater.content;

import startwater.biofilter.Nitrification;
import startwater.drill.TankSim;
import startwater.drill.TankWatch;
import startwater.fish.Species;
import startwater.quantity.Molar;
import startwater.quantity.OutOfRangeException;
import startwater.tank.TankEvent;
import startwater.tank.TankLayout;
import startwater.tank.TankParameters;
import startwater.tank.TankReadings;
import startwater.water.CarbonateSystem;
import startwater.water.OxygenSaturation;
import startwater.water.UnionisedAmmonia;

/**
 * Holds every state of a play against the ranges of the equations that the engine's loops do not check themselves.
 * Throws {@link OutOfRangeException} at the first that lies outside.
 */
final class ValidityWatch implements TankWatch {
    private double day;

    /** The day of the last state that was seen. */
    double day() {
        return day;
    }

    @Override
    public void passed(TankSim tank, double[] before, double days) {
        check(tank);
    }

    @Override
    public void happened(TankSim tank, double[] before, TankEvent event) {
        check(tank);
    }

    private void check(TankSim tank) {
        double[] y = tank.state();
        TankParameters p = tank.draw().parameters();
        day = tank.day();
        OxygenSaturation.ALTITUDE_M.check(p.altitudeM());
        OxygenSaturation.TEMPERATURE_C.check(y[TankLayout.TEMPERATURE]);
        UnionisedAmmonia.SALINITY_G_PER_KG.check(saltGPerKg(y));
        Nitrification.PH.check(TankReadings.ph(y));
        Species species = p.species();
        double massG = TankReadings.massG(y, p.strata());
        if (species != null && massG > 0) {
            species.feed().massRangeG().check(massG);
        }
    }

    /** Salt by its ions, each anion with its cation, as if it were sodium chloride. */
    private static double saltGPerKg(double[] y) {
        return Molar.NACL
                * CarbonateSystem.ionicStrength(
                        y[TankLayout.ALKALINITY], y[TankLayout.CHLORIDE], y[TankLayout.NITRITE], y[TankLayout.NITRATE]);
    }
}
