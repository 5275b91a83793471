package startwater.drill;

import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.quantity.Stream;
import startwater.strip.FishSigns;
import startwater.strip.Pad;
import startwater.strip.ReadingModel;
import startwater.tank.TankLayout;
import startwater.tank.TankReadings;

/**
 * How a tank shows itself to a keeper: pads with their spread, meters with their noise. The same functions make the
 * hidden tank's readings and weigh the plausible tanks.
 */
public final class Observation {
    /** Spread of one pad, blocks (published agreement of repeated dips: at most 3 in 10 one block off). */
    public static final double PAD_SPREAD_BLOCKS = 0.2;
    /** Colour noise of a reader, Lab units per axis (reproduces published kappa 0.68-0.79). */
    public static final double READER_SIGMA_LAB = 1.75;
    /** Standard error of the meters: oxygen mg/L, pH units. */
    public static final double OXYGEN_METER_SD = 0.15;

    public static final double PH_METER_SD = 0.05;

    private static final long METER = 0x6d65_7465L;

    private Observation() {}

    /** What a pad answers to, in its unit. The nitrate pad counts nitrite; bound ammonia still reads. */
    public static double padValue(Pad pad, double[] y) {
        return switch (pad) {
            case AMMONIA -> y[TankLayout.TAN];
            case NITRITE -> y[TankLayout.NITRITE];
            case NITRATE -> y[TankLayout.NITRATE] + y[TankLayout.NITRITE];
            case PH -> TankReadings.ph(y);
            case ALKALINITY -> TankReadings.alkalinityMgPerL(y);
            case CHLORINE -> y[TankLayout.FREE_CHLORINE] + y[TankLayout.COMBINED_CHLORINE];
            case CHLORIDE -> y[TankLayout.CHLORIDE];
        };
    }

    /** Where the wet pad comes to lie on its scale, blocks. @param normal the spread of this pad on this strip */
    public static double padPosition(Pad pad, double[] y, TankDraw draw, int dilution, double normal) {
        double value = padValue(pad, y) / (pad == Pad.PH ? 1 : dilution);
        return ReadingModel.padPosition(pad, value, draw.bias(pad), PAD_SPREAD_BLOCKS, normal);
    }

    /** Spread of pad and reader together, blocks. */
    public static double readingSigmaBlocks(Pad pad) {
        return SIGMA_BLOCKS[pad.ordinal()];
    }

    private static final double[] SIGMA_BLOCKS = sigmas();

    private static double[] sigmas() {
        double[] sigmas = new double[Pad.values().length];
        for (Pad pad : Pad.values()) {
            double reader = ReadingModel.readingSigmaBlocks(pad, READER_SIGMA_LAB);
            sigmas[pad.ordinal()] = StrictMath.sqrt(reader * reader + PAD_SPREAD_BLOCKS * PAD_SPREAD_BLOCKS);
        }
        return sigmas;
    }

    /** What a kit that is not from this shelf shows: the pad's place with spread alone, read as it is. @param normal its spread */
    public static int kitStop(Pad pad, double[] y, double normal) {
        return pad.scale().nearestStop(ReadingModel.padPosition(pad, padValue(pad, y), 0, PAD_SPREAD_BLOCKS, normal));
    }

    /** Chance that a tank like this would have been written down so. */
    public static double likelihood(Written w, double[] y, TankDraw draw) {
        double value = padValue(w.pad(), y) / (w.pad() == Pad.PH ? 1 : w.dilution());
        double bias = w.byKit() ? 0 : draw.bias(w.pad());
        double centre = ReadingModel.padPosition(w.pad(), value, bias, PAD_SPREAD_BLOCKS, 0);
        double sigma = w.byKit() ? PAD_SPREAD_BLOCKS : readingSigmaBlocks(w.pad());
        return ReadingModel.probabilityOfStop(w.pad(), w.stop(), centre, sigma);
    }

    /** What meters and eyes say at a visit. @param since minute of the visit before */
    static Seen see(Scenario s, TankSim sim, long variant, int visit, Actor actor, int since, int found, int alive) {
        double[] y = sim.state();
        Stream noise =
                actor.standsIn() ? Stream.of(variant, METER, visit, actor.ordinal()) : Stream.of(variant, METER, visit);
        double oxygen = y[TankLayout.OXYGEN] + OXYGEN_METER_SD * noise.normal();
        double ph = TankReadings.ph(y) + PH_METER_SD * noise.normal();
        return new Seen(
                rounded(y[TankLayout.TEMPERATURE], 10),
                s.shelf().oxygenMeter() ? metered(Math.max(0, oxygen), 10) : null,
                s.shelf().phMeter() ? metered(ph, 100) : null,
                FishSigns.mood(y, sim.draw().parameters()),
                found,
                alive,
                rounded(y[TankLayout.UNEATEN_G], 1),
                rounded(FishSigns.haze(y), 100),
                FishSigns.brownGills(y, sim.draw().parameters()),
                sim.controls().air() || sim.controls().spareAirPerHour() > 0,
                sim.controls().pump(),
                sim.power(),
                sim.heater(),
                10 * (int) Math.rint(10 * sim.flowShare()),
                (int) sim.toCome(),
                rounded(sim.toComeMassG(), 10),
                told(s, since, sim.minute()));
    }

    /** Weather, power and what people did to the filter or the water is told; what stands or lies there is seen. */
    private static List<Scenario.Happening.Kind> told(Scenario s, int since, int until) {
        return s.events().stream()
                .filter(h -> h.minute() > since && h.minute() <= until)
                .map(Scenario.Happening::kind)
                .filter(k -> switch (k) {
                    case POWER_OFF, ROOM_TEMPERATURE, SOURCE_TEMPERATURE, DRIED, MEDICATED, SCRUBBED -> true;
                    case AIR_OFF, PUMP_OFF, HEATER_OFF, SET_POINT, OVERFED -> false;
                })
                .distinct()
                .toList();
    }

    private static @Nullable Double metered(double value, int perUnit) {
        return rounded(value, perUnit);
    }

    private static double rounded(double value, int perUnit) {
        return Math.rint(value * perUnit) / perUnit;
    }
}
