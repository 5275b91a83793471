package startwater.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import startwater.biofilter.FilterMedia;
import startwater.fish.Species;
import startwater.water.Dose;

/**
 * A seeded random system with a list of events, for tests of invariants. A second system with the same fish runs beside it,
 * from which fish and media may come over.
 */
record RandomTank(TankParameters parameters, double[] start, double[] beside, Controls controls, List<Step> steps) {
    /** A span of time and what happens at its end: an event, and shares of fish and media that come from beside. */
    record Step(double days, @Nullable TankEvent event, Controls controls, double fish, double media) {
        Step(double days, @Nullable TankEvent event, Controls controls) {
            this(days, event, controls, 0, 0);
        }
    }

    /** Sees the state after each step. */
    interface Watcher {
        void after(Step step, double[] y, double[] beside);
    }

    /** A system with a moving bed, no plants, and no more than air that fails now and then. */
    static RandomTank plain(long seed, double days, int strata) {
        SplittableRandom r = new SplittableRandom(seed);
        String id = Species.ids().get(r.nextInt(Species.ids().size()));
        double volume = 200 + 8000 * r.nextDouble();
        double[] sensitivity = new double[strata];
        for (int i = 0; i < strata; i++) {
            sensitivity[i] = StrictMath.exp(0.25 * (2 * r.nextDouble() - 1));
        }
        TankParameters p = new TankParameters(
                Species.byId(id),
                volume,
                volume * (5 + 20 * r.nextDouble()) / 1000,
                0.8 + 0.4 * r.nextDouble(),
                0.8 + 0.4 * r.nextDouble(),
                0.8 + 0.4 * r.nextDouble(),
                1 + 3 * r.nextDouble(),
                0.1,
                0.4 + 0.5 * r.nextDouble(),
                600e-6,
                0,
                0.25 + 0.2 * r.nextDouble(),
                5 + 20 * r.nextDouble(),
                2,
                Sensitivity.of(sensitivity));
        double temperature = id.equals("rainbow-trout") ? 8 + 14 * r.nextDouble() : 18 + 12 * r.nextDouble();
        double ph = 6.8 + 1.6 * r.nextDouble();
        SourceWater water = SourceWater.read(
                temperature, ph, 40 + 160 * r.nextDouble(), 3 * r.nextDouble(), 10, 5 + 60 * r.nextDouble(), 0, 0);
        double seedA = StrictMath.exp(-7 * r.nextDouble());
        double[] y = TankStart.filled(p, water, seedA, seedA * r.nextDouble());
        y[TankLayout.NITRITE] = 3 * r.nextDouble() * r.nextDouble();
        double mass = 2 + 40 * r.nextDouble();
        TankStart.stock(y, p, Math.ceil(volume * (0.5 + 3 * r.nextDouble()) / mass), mass);
        Controls c = Controls.running(temperature);
        List<Step> steps = new ArrayList<>();
        double t = 0;
        while (t < days) {
            double span = 0.05 + 0.45 * r.nextDouble();
            int kind = r.nextInt(10);
            TankEvent event =
                    switch (kind) {
                        case 0 -> new TankEvent.Change(0.1 + 0.5 * r.nextDouble(), water);
                        case 1 -> new TankEvent.Dosing(Dose.SODIUM_CHLORIDE, volume * 0.1 * r.nextDouble());
                        case 2 -> new TankEvent.Dosing(Dose.SODIUM_BICARBONATE, volume * 0.05 * r.nextDouble());
                        case 3 -> new TankEvent.Dosing(Dose.AMMONIUM_CHLORIDE, volume * 0.004 * r.nextDouble());
                        default -> new TankEvent.Meal(r.nextDouble(), 0.5, Double.NaN);
                    };
            if (r.nextInt(40) == 0) {
                c = c.withAir(!c.air());
            } else if (!c.air()) {
                c = c.withAir(true);
            }
            steps.add(new Step(Math.min(span, days - t), event, c));
            t += span;
        }
        return new RandomTank(p, y, y.clone(), Controls.running(temperature), steps);
    }

    /** Over all that can befall a system: media, plants, inflow, switches, weather, cleaning, drugs, stocking, moves. */
    static RandomTank of(long seed, double days, int strata) {
        RandomTank plain = plain(seed, days, strata);
        SplittableRandom r = new SplittableRandom(~seed);
        FilterMedia media = FilterMedia.values()[r.nextInt(FilterMedia.values().length)];
        double plants = r.nextInt(3) == 0 ? plain.parameters.volumeL() * 3 * r.nextDouble() : 0;
        TankParameters p = plain.parameters.with(media, plants);
        double[] y = plain.start.clone();
        y[TankLayout.HELD_N] = media == FilterMedia.MOVING_BED ? 0 : 300 * r.nextDouble() * p.mediaAreaM2();
        double warmth = y[TankLayout.TEMPERATURE];
        SourceWater water = SourceWater.read(
                Math.max(4, warmth + 8 * r.nextDouble() - 6),
                6.8 + 1.4 * r.nextDouble(),
                20 + 180 * r.nextDouble(),
                r.nextDouble(),
                10 * r.nextDouble(),
                60 * r.nextDouble(),
                0,
                0);
        Controls usual = Controls.running(warmth);
        if (r.nextInt(3) == 0) {
            usual = usual.withInflow(r.nextDouble() * r.nextDouble(), 0.05 * r.nextDouble(), water);
        }
        List<Step> steps = new ArrayList<>();
        for (Step step : plain.steps) {
            Controls c = switched(r, usual, step.controls().air(), warmth);
            TankEvent event = r.nextInt(4) == 0 ? special(r, p, water) : step.event();
            boolean moves = r.nextInt(12) == 0;
            steps.add(new Step(
                    step.days(), event, c, moves ? r.nextDouble() : 0, moves ? r.nextDouble() * r.nextDouble() : 0));
        }
        double[] beside = y.clone();
        return new RandomTank(p, y, beside, usual, steps);
    }

    private static Controls switched(SplittableRandom r, Controls usual, boolean air, double warmth) {
        Controls c = usual.withAir(air);
        if (!air && r.nextBoolean()) {
            c = c.withSpareAir(2 * r.nextDouble());
        }
        return switch (r.nextInt(12)) {
            case 0, 1 -> c.withPump(false);
            case 2 -> c.withSetPoint(Math.max(3, warmth + 8 * r.nextDouble() - 5));
            default -> c;
        };
    }

    private static TankEvent special(SplittableRandom r, TankParameters p, SourceWater water) {
        return switch (r.nextInt(9)) {
            case 0 -> new TankEvent.CleanMedia(0.03, 0.85);
            case 1 -> new TankEvent.CleanMedia(0.6, 1);
            case 2 -> new TankEvent.DrainFilter();
            case 3 -> new TankEvent.Dry(10 * r.nextDouble());
            case 4 -> new TankEvent.Medicate(0.9 * r.nextDouble());
            case 5 ->
                new TankEvent.AddMedia(
                        0.2 * r.nextDouble() * p.aobCapacityMgPerDay(), 0.2 * r.nextDouble() * p.nobCapacityMgPerDay());
            case 6 -> new TankEvent.Stock(Math.ceil(p.volumeL() * r.nextDouble() / 20), 2 + 20 * r.nextDouble());
            case 7 -> new TankEvent.RemoveSolids(r.nextDouble());
            default -> new TankEvent.Change(0.6 * r.nextDouble(), water);
        };
    }

    /** The same system with fewer steps. */
    RandomTank with(List<Step> fewer) {
        return new RandomTank(parameters, start, beside, controls, fewer);
    }

    double[] run(Stepper stepper) {
        return run(stepper, (step, y, other) -> {});
    }

    /** @return the end of the first system */
    double[] run(Stepper stepper, Watcher watcher) {
        double[] y = start.clone();
        double[] other = beside.clone();
        // What runs beside has nothing happen to it: it is carried on only where something comes from it.
        double waiting = 0;
        for (Step step : steps) {
            stepper.advance(y, parameters, step.controls(), step.days());
            waiting += step.days();
            if (step.event() != null) {
                step.event().apply(y, parameters);
            }
            if (step.fish() > 0) {
                stepper.advance(other, parameters, controls, waiting);
                waiting = 0;
                double there = TankReadings.fishAlive(other, parameters.strata());
                Transfer.fish(other, parameters, y, parameters, step.fish() * there);
                Transfer.media(other, y, step.media());
            }
            watcher.after(step, y, other);
        }
        return y;
    }
}
