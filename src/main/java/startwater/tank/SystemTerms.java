package startwater.tank;

import startwater.fish.Species;
import startwater.quantity.Powers;
import startwater.water.OxygenSaturation;

/**
 * What stays the same about one system for as long as it stands.
 *
 * @param parameters the system
 * @param pressureAtm air pressure at its altitude
 * @param aobCapacity the most its media can carry of each group, mg N/d at 20 °C
 * @param lnBreathing natural logarithm of the factor by which its fish breathe more per °C; 0 without a species
 * @param massPower power of the mass with which the breathing of one of its fish grows; 0 without a species
 */
record SystemTerms(
        TankParameters parameters,
        double pressureAtm,
        double aobCapacity,
        double nobCapacity,
        double lnBreathing,
        double massPower) {
    /** Whether these are of the very same system: two of equal make are two. */
    @SuppressWarnings("ReferenceEquality")
    boolean serve(TankParameters p) {
        return parameters == p;
    }

    static SystemTerms of(TankParameters p) {
        Species species = p.species();
        return new SystemTerms(
                p,
                OxygenSaturation.pressureAtm(p.altitudeM()),
                p.aobCapacityMgPerDay(),
                p.nobCapacityMgPerDay(),
                species == null ? 0 : Powers.quickLn(species.respiration().theta()),
                species == null ? 0 : 1 - species.respiration().massExponent());
    }
}
