package startwater.cli;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.fish.Species;
import startwater.quantity.Normal;
import startwater.quantity.Stream;
import startwater.tank.Controls;
import startwater.tank.Sensitivity;
import startwater.tank.SourceWater;
import startwater.tank.Stepper;
import startwater.tank.TankEvent;
import startwater.tank.TankLayout;
import startwater.tank.TankParameters;
import startwater.tank.TankStart;
import startwater.water.Dose;

/**
 * One system of the speed bench and a week of keeping it: three meals a day and a visit, at which water may be changed or
 * something dosed. Drawn from a seed; four strata of fish share the water, as in the judging of a decision.
 */
record BenchTank(TankParameters parameters, double[] start, List<Span> spans) {
    static final int DAYS = 7;
    private static final int STRATA = 4;
    private static final long SEED = 20_240_601L;
    private static final double[] MEALS_AND_VISIT = {8 / 24.0, 12 / 24.0, 16 / 24.0, 17 / 24.0};

    /** Time without an event, and what happens at its end. */
    record Span(double days, Controls controls, @Nullable TankEvent event) {}

    static BenchTank of(int number) {
        return of(number, STRATA);
    }

    /** The same with another number of groups of fish in the water. */
    static BenchTank of(int number, int strata) {
        Stream r = Stream.of(SEED, number);
        Species species = Species.byId(Species.ids().get(number % Species.ids().size()));
        double volume = between(r, 500, 5000);
        TankParameters p = new TankParameters(
                species,
                volume,
                volume * between(r, 0.005, 0.020),
                between(r, 0.8, 1.2),
                between(r, 0.8, 1.2),
                between(r, 0.8, 1.2),
                between(r, 1.5, 3.5),
                0.1,
                between(r, 0.4, 0.9),
                600e-6,
                0,
                between(r, 0.25, 0.45),
                species.chlorideHalfMgPerL(),
                2,
                Sensitivity.of(strata(strata)));
        double temperature = between(r, 22, 30);
        SourceWater water = SourceWater.read(
                temperature - 1, between(r, 7, 8.2), between(r, 40, 160), 0, 1, between(r, 5, 45), 0, 0);
        double aob = StrictMath.exp(-6 * r.uniform());
        double[] y = TankStart.filled(p, water.at(temperature), aob, aob * r.uniform());
        double mass = between(r, 5, 35);
        TankStart.stock(y, p, Math.ceil(volume * between(r, 0.5, 3) / mass), mass);
        new TankEvent.Dosing(Dose.AMMONIUM_CHLORIDE, volume * 0.015 * r.uniform() * r.uniform()).apply(y, p);
        y[TankLayout.NITRITE] = 4 * r.uniform() * r.uniform();
        return new BenchTank(p, y, week(r, Controls.running(temperature), water, volume));
    }

    private static List<Span> week(Stream r, Controls controls, SourceWater water, double volume) {
        List<Span> spans = new ArrayList<>();
        double now = MEALS_AND_VISIT[3];
        double feed = r.below(3) / 2.0;
        for (int day = 1; day <= DAYS; day++) {
            for (int k = 0; k < MEALS_AND_VISIT.length; k++) {
                boolean visit = k == MEALS_AND_VISIT.length - 1;
                boolean outage = k == 1 && r.below(60) == 0;
                TankEvent event = visit ? decision(r, water, volume) : new TankEvent.Meal(feed, 1.0 / 3, Double.NaN);
                double next = day + MEALS_AND_VISIT[k];
                spans.add(new Span(next - now, outage ? controls.withAir(false) : controls, event));
                now = next;
                feed = visit ? r.below(3) / 2.0 : feed;
            }
        }
        return spans;
    }

    private static @Nullable TankEvent decision(Stream r, SourceWater water, double volume) {
        return switch (r.below(5)) {
            case 0 -> new TankEvent.Change(0.25, water);
            case 1 -> new TankEvent.Change(0.5, water);
            case 2 -> new TankEvent.Dosing(Dose.SODIUM_CHLORIDE, volume * 0.05 * r.uniform());
            case 3 -> new TankEvent.Dosing(Dose.SODIUM_BICARBONATE, volume * 0.05 * r.uniform());
            default -> null;
        };
    }

    private static double between(Stream r, double low, double high) {
        return low + (high - low) * r.uniform();
    }

    private static double[] strata(int strata) {
        double[] factors = new double[strata];
        for (int k = 0; k < strata; k++) {
            factors[k] = StrictMath.exp(0.25 * Normal.quantile((k + 0.5) / strata));
        }
        return factors;
    }

    /** The state after the week. */
    double[] run(Stepper stepper) {
        return run(stepper, 1);
    }

    /** The state after the week has come so many times. */
    double[] run(Stepper stepper, int weeks) {
        double[] y = start.clone();
        for (int week = 0; week < weeks; week++) {
            for (Span span : spans) {
                stepper.advance(y, parameters, span.controls(), span.days());
                if (span.event() != null) {
                    span.event().apply(y, parameters);
                }
            }
        }
        return y;
    }
}
