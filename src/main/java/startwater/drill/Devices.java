package startwater.drill;

import startwater.tank.Controls;
import startwater.tank.SourceWater;

/**
 * The switches of one system and what the weather does to it. Where the room's own temperature is given, heater or cooler
 * keep the water at the set point; else the water follows the room. A device stands until a minute; {@link Integer#MAX_VALUE}
 * is for good, or until somebody sees to it. Without mains power nothing runs but spare air. Mutable.
 */
final class Devices {
    private final Scenario.Water system;
    private final double spareKlaPerHour;
    private final double evaporationPerDay;
    private int powerBack;
    private int airBack;
    private int pumpBack;
    private int heaterBack;
    private int roomBack;
    private boolean spare;
    private final boolean heated;
    private double setPointC;
    private double usualRoomC;
    private double roomC;

    /** @param volumeL true volume, L */
    Devices(Scenario s, double volumeL) {
        this.system = s.system();
        this.spareKlaPerHour = s.shelf().spareAirKlaPerHour();
        this.evaporationPerDay = system.evaporationLPerDay() / volumeL;
        this.heated = system.roomC() != null;
        this.setPointC = system.setPointC();
        this.usualRoomC = system.roomC() != null ? system.roomC() : system.setPointC();
        this.roomC = usualRoomC;
    }

    private Devices(Devices of) {
        this.system = of.system;
        this.spareKlaPerHour = of.spareKlaPerHour;
        this.evaporationPerDay = of.evaporationPerDay;
        this.powerBack = of.powerBack;
        this.airBack = of.airBack;
        this.pumpBack = of.pumpBack;
        this.heaterBack = of.heaterBack;
        this.roomBack = of.roomBack;
        this.spare = of.spare;
        this.heated = of.heated;
        this.setPointC = of.setPointC;
        this.usualRoomC = of.usualRoomC;
        this.roomC = of.roomC;
    }

    Devices copy() {
        return new Devices(this);
    }

    /** Something stops or turns. @param back minute at which it is as before */
    void happens(Scenario.Happening.Kind kind, double amount, int back) {
        switch (kind) {
            case POWER_OFF -> powerBack = back;
            case PUMP_OFF -> pumpBack = back;
            case AIR_OFF -> airBack = back;
            case HEATER_OFF -> heaterBack = back;
            case SET_POINT -> {
                setPointC = amount;
                if (!heated) {
                    usualRoomC = amount;
                    roomC = amount;
                }
            }
            case ROOM_TEMPERATURE -> {
                roomC = amount;
                roomBack = back;
            }
            default -> {}
        }
    }

    /** Somebody sees to the switches. */
    void act(Decision d) {
        airBack = d.air() == Decision.Air.OFF ? Integer.MAX_VALUE : 0;
        spare = d.air() == Decision.Air.SPARE;
        pumpBack = d.pump() ? 0 : Integer.MAX_VALUE;
        heaterBack = d.heater() ? 0 : Integer.MAX_VALUE;
    }

    /** What runs at a minute. @param source the water that flows in */
    Controls at(int minute, SourceWater source) {
        if (roomBack > 0 && roomBack <= minute) {
            roomC = usualRoomC;
            roomBack = 0;
        }
        boolean power = power(minute);
        boolean heater = power && heaterBack <= minute;
        double inflow = system.exchangePerDay() + evaporationPerDay;
        return new Controls(
                power && airBack <= minute,
                power && pumpBack <= minute,
                heated && heater ? setPointC : roomC,
                system.exchangePerDay(),
                evaporationPerDay,
                inflow > 0 ? source : null,
                spare ? spareKlaPerHour : 0);
    }

    boolean power(int minute) {
        return powerBack <= minute;
    }

    /** Whether heater or cooler run; true also where there is none. */
    boolean heater(int minute) {
        return !heated || (power(minute) && heaterBack <= minute);
    }

    /** The first minute after this one at which something comes back by itself. */
    int next(int minute) {
        int next = Integer.MAX_VALUE;
        for (int back : new int[] {powerBack, airBack, pumpBack, heaterBack, roomBack}) {
            next = back > minute ? Math.min(next, back) : next;
        }
        return next;
    }
}
