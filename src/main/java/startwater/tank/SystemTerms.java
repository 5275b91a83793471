package startwater.tank;

import startwater.water.OxygenSaturation;

/**
 * What stays the same about one system for as long as it stands.
 *
 * @param parameters the system
 * @param pressureAtm air pressure at its altitude
 * @param aobCapacity the most its media can carry of each group, mg N/d at 20 °C
 */
record SystemTerms(TankParameters parameters, double pressureAtm, double aobCapacity, double nobCapacity) {
    /** Whether these are of the very same system: two of equal make are two. */
    @SuppressWarnings("ReferenceEquality")
    boolean serve(TankParameters p) {
        return parameters == p;
    }

    static SystemTerms of(TankParameters p) {
        return new SystemTerms(
                p, OxygenSaturation.pressureAtm(p.altitudeM()), p.aobCapacityMgPerDay(), p.nobCapacityMgPerDay());
    }
}
