package startwater.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import startwater.drill.TankSim;
import startwater.drill.TankWatch;
import startwater.fish.Stressor;
import startwater.tank.Controls;
import startwater.tank.FastStepper;
import startwater.tank.TankEvent;
import startwater.tank.TankFlows;
import startwater.tank.TankParameters;

/**
 * The hidden tank of one run by the hour, from the first visit on: the state at the end of each hour, before what happens
 * at that very moment, and the mean flows of that hour. Flows are added up from the rates of the engine by Simpson's rule
 * over every span between events; changes, doses and meals by what they make the state jump.
 */
final class HourTable implements TankWatch {
    private static final int HOUR = 60;
    private static final double HOURS_A_DAY = 24;
    private static final double SIMPSON = 6;
    /** Panels of Simpson's rule in a span: oxygen settles within half an hour of a change. */
    private static final int PANELS = 2;

    private final long seed;
    private final int firstMinute;
    private final FastStepper stepper = new FastStepper();
    private final List<double[]> rows = new ArrayList<>();
    private final double[] sums = new double[HourFlow.values().length];
    private final double[] hazards = new double[Stressor.COUNT];
    private double hours;

    /** @param firstMinute minute of the first visit */
    HourTable(long seed, int firstMinute) {
        this.seed = seed;
        this.firstMinute = firstMinute;
    }

    long seed() {
        return seed;
    }

    /** The rows so far, each with one value for every {@link HourColumn}. */
    List<double[]> rows() {
        return List.copyOf(rows);
    }

    @Override
    public void counted(TankSim tank, double[] before) {
        if (tank.minute() == firstMinute) {
            rows.clear();
            clear();
            rows.add(HourColumn.row(HourColumn.Moment.of(seed, tank, sums, hazards)));
        }
    }

    @Override
    public void happened(TankSim tank, double[] before, TankEvent event) {
        for (HourFlow flow : HourFlow.values()) {
            sums[flow.ordinal()] += flow.jump(before, tank.state(), tank.draw().parameters(), event);
        }
    }

    @Override
    public void passed(TankSim tank, double[] before, double days) {
        if (tank.minute() <= firstMinute) {
            return;
        }
        add(before, tank, days);
        hours += days * HOURS_A_DAY;
        if (tank.minute() % HOUR == 0) {
            for (int i = 0; i < sums.length; i++) {
                sums[i] /= hours;
            }
            for (int i = 0; i < hazards.length; i++) {
                hazards[i] /= hours;
            }
            rows.add(HourColumn.row(HourColumn.Moment.of(seed, tank, sums, hazards)));
            clear();
        }
    }

    private void clear() {
        Arrays.fill(sums, 0);
        Arrays.fill(hazards, 0);
        hours = 0;
    }

    private void add(double[] before, TankSim tank, double days) {
        TankParameters p = tank.draw().parameters();
        Controls c = tank.controls();
        double[] y = before.clone();
        // What binds at once is bound at the start of a span: no time passes.
        stepper.advance(y, p, c, 0);
        double weight = days * HOURS_A_DAY / PANELS / SIMPSON;
        add(y, p, c, weight);
        for (int half = 1; half < 2 * PANELS; half++) {
            stepper.advance(y, p, c, days / (2 * PANELS));
            add(y, p, c, half % 2 == 1 ? 4 * weight : 2 * weight);
        }
        add(tank.state(), p, c, weight);
    }

    private void add(double[] y, TankParameters p, Controls c, double hoursCounted) {
        TankFlows flows = TankFlows.of(y, p, c);
        for (HourFlow flow : HourFlow.values()) {
            sums[flow.ordinal()] += flow.rate(flows, y, p, c) * hoursCounted;
        }
        double[] hazard = flows.hazardPerHour();
        for (int i = 0; i < hazards.length; i++) {
            hazards[i] += hazard[i] * hoursCounted;
        }
    }
}
