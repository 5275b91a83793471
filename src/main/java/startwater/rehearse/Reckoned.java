package startwater.rehearse;

import org.jspecify.annotations.Nullable;
import startwater.biofilter.FilterMedia;
import startwater.biofilter.Nitrification;
import startwater.drill.Prior;
import startwater.fish.Species;
import startwater.tank.Sensitivity;
import startwater.tank.TankParameters;
import startwater.tank.TankReadings;
import startwater.water.OxygenSaturation;

/** Sums over the learner's system: area, air, load and demand for oxygen. Pure; every input is known. */
final class Reckoned {
    /** Most of what the schema of a drill takes, 1/h. */
    private static final double MOST_KLA = 20;
    /** Oxygen that water holds in the standard test of an aerator, 20 °C at sea level, mg/L (Benson and Krause 1984). */
    private static final double TEST_OXYGEN_MG_PER_L = 9.09;
    /** g O2 in a litre of air at 20 °C and 1 atm: 1.204 g/L, 23.15 % of its mass oxygen (standard atmosphere). */
    private static final double OXYGEN_G_PER_L_AIR = 0.279;
    /** Oxygen transfer changes by this factor a degree (standard, from memory). */
    private static final double THETA_AIR = 1.024;
    /** Fish that digest breathe up to twice what resting ones do; over the day half as much again (the tank model). */
    private static final double FED_FACTOR = 1.5;
    /** The still surface, 1/h: as in the drills. */
    static final double SURFACE_KLA = 0.1;

    private Reckoned() {}

    /** Wetted area of the media, m2, with what is not known of it; null where nothing is told. */
    static Prior.@Nullable LogNormal areaM2(OwnSystem.Vessel vessel) {
        Double stated = vessel.areaM2();
        if (stated != null && stated > 0) {
            return Facts.of("area.stated").times(stated);
        }
        FilterMedia media = vessel.media();
        Double litres = vessel.litres();
        return media == null || litres == null || !(litres > 0)
                ? null
                : Facts.of("media." + media.id()).times(litres / 1000);
    }

    /** Oxygen transfer of the air devices at 20 °C, 1/h: by power, by flow, by stones, by what it looks like. */
    static Prior.LogNormal kla(OwnSystem.Air air, double volumeL) {
        Double power = air.powerW();
        Double flow = air.flowLPerMin();
        Double stones = air.stones();
        Prior.LogNormal kla;
        if (flow != null && flow > 0) {
            kla = byFlow(flow, 0, volumeL);
        } else if (power != null && power > 0) {
            // kg/kWh times W is g/h.
            kla = Facts.of("air.kg-per-kwh").times(power * 1000 / (TEST_OXYGEN_MG_PER_L * volumeL));
        } else if (stones != null && stones > 0) {
            Facts.Fact perStone = Facts.of("air.litres-per-stone");
            kla = byFlow(stones * perStone.value(), perStone.sd(), volumeL);
        } else if (!air.strength().isEmpty()) {
            kla = Facts.of("air." + air.strength()).times(1);
        } else if (power != null || flow != null || stones != null) {
            kla = Facts.of("air.none").times(1);
        } else {
            kla = Facts.of("air.unknown").times(1);
        }
        return new Prior.LogNormal(Math.min(MOST_KLA, kla.median()), kla.sd());
    }

    private static Prior.LogNormal byFlow(double litresPerMin, double sd, double volumeL) {
        Facts.Fact share = Facts.of("air.taken-up-percent");
        double mgPerHour = litresPerMin * 60 * OXYGEN_G_PER_L_AIR * 1000 * share.value() / 100;
        return new Prior.LogNormal(mgPerHour / (TEST_OXYGEN_MG_PER_L * volumeL), StrictMath.hypot(share.sd(), sd));
    }

    /** Table ration of all fish at this temperature, g a day. */
    static double rationG(Species species, double count, double massG, double temperatureC) {
        return count * massG * species.tableRationFraction(massG, temperatureC);
    }

    private static TankParameters filter(Species species, double areaM2, double proteinPercent) {
        return new TankParameters(
                species,
                1000,
                areaM2,
                1,
                1,
                1,
                1,
                SURFACE_KLA,
                0.4,
                600e-6,
                0,
                proteinPercent / 100,
                1,
                2,
                Sensitivity.of(1));
    }

    /**
     * The full ration of such fish, as a share of what an area can carry at all at this temperature: the lesser of both
     * groups, with ammonia and nitrite at 1 mg/L, as the drills count a filter ready.
     */
    static double loadShare(
            Species species, double count, double massG, double proteinPercent, double areaM2, double temperatureC) {
        TankParameters p = filter(species, areaM2, proteinPercent);
        return Math.max(
                TankReadings.aobForRation(p, count, massG, temperatureC) / p.aobCapacityMgPerDay(),
                TankReadings.nobForRation(p, count, massG, temperatureC) / p.nobCapacityMgPerDay());
    }

    /** Ammonia that the full ration of such fish comes to, mg N a day. */
    static double ammoniaMgPerDay(Species species, double count, double massG, double proteinPercent) {
        return TankReadings.aobForRation(filter(species, 1, proteinPercent), count, massG, 20)
                / (1 + Nitrification.AMMONIA_HALF_MG_PER_L);
    }

    /** What fed fish and a ripe filter use, mg O2/h. */
    static double oxygenUseMgPerHour(
            Species species, double count, double massG, double proteinPercent, double temperatureC) {
        double fish = FED_FACTOR * species.respiration().mgPerKgHour(massG, temperatureC) * count * massG / 1000;
        double nitrogen = ammoniaMgPerDay(species, count, massG, proteinPercent)
                * species.appetite().temperature(temperatureC);
        return fish + nitrogen * (Nitrification.OXYGEN_STEP_ONE + Nitrification.OXYGEN_STEP_TWO) / 24;
    }

    /** What the air brings into water with so much oxygen, mg/h. */
    static double oxygenGainMgPerHour(double klaPerHour, double volumeL, double temperatureC, double oxygenMgPerL) {
        double rate = (klaPerHour + SURFACE_KLA) * StrictMath.pow(THETA_AIR, temperatureC - 20);
        return rate * Math.max(0, OxygenSaturation.mgPerL(temperatureC, 0, 0) - oxygenMgPerL) * volumeL;
    }

    /** Minutes in still water until fish that breathe so fall from their guidance level to the critical one. */
    static double minutesWithoutAir(Species species, double useMgPerHour, double volumeL) {
        double spare = species.guidance().oxygenMgPerL() - species.criticalOxygenMgPerL();
        return 60 * spare * volumeL / useMgPerHour;
    }
}
