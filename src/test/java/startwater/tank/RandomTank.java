package startwater.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import startwater.fish.Species;
import startwater.water.Dose;

/** A seeded random system with a list of events, for tests of invariants. */
record RandomTank(TankParameters parameters, double[] start, Controls controls, List<Step> steps) {
    /** A span of time and what happens at its end. */
    record Step(double days, @Nullable TankEvent event, Controls controls) {}

    static RandomTank of(long seed, double days, int strata) {
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
        return new RandomTank(p, y, Controls.running(temperature), steps);
    }

    /** The same system with fewer steps. */
    RandomTank with(List<Step> fewer) {
        return new RandomTank(parameters, start, controls, fewer);
    }

    double[] run(Stepper stepper) {
        double[] y = start.clone();
        for (Step step : steps) {
            stepper.advance(y, parameters, step.controls(), step.days());
            if (step.event() != null) {
                step.event().apply(y, parameters);
            }
        }
        return y;
    }
}
