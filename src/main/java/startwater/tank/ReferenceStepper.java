package startwater.tank;

import static startwater.tank.TankLayout.*;

import java.util.Objects;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.jspecify.annotations.Nullable;
import startwater.biofilter.Nitrification;
import startwater.fish.Species;
import startwater.fish.Stressor;

/**
 * The referee: Dormand-Prince 8(5,3) of Commons Math, restarted at every event. It reads the same rates as the fast
 * stepper, but takes every constant at the very temperature and salt, and solves pH to the end each time.
 */
public final class ReferenceStepper implements Stepper {
    private static final double LONGEST_STEP = 0.25;
    private static final double SHORTEST_STEP = 1e-12;
    private static final int MOST_WARM_STEPS = 40;
    private final double relative;
    private final double absolute;

    /** With tolerances 1e-10 relative and absolute. */
    public ReferenceStepper() {
        this(1e-10, 1e-10);
    }

    public ReferenceStepper(double relative, double absolute) {
        this.relative = relative;
        this.absolute = absolute;
    }

    @Override
    public void advanceSmoothly(double[] y, TankParameters p, Controls c, double days) {
        ChlorineReactions.combine(y);
        if (!(days > 1e-12)) {
            return;
        }
        DormandPrince853Integrator integrator =
                new DormandPrince853Integrator(SHORTEST_STEP, LONGEST_STEP, absolute, relative);
        integrator.setInitialStepSize(Math.min(days, 1e-3));
        integrator.integrate(new Equations(p, c, y), 0, y.clone(), days, y);
        for (int i = 0; i < y.length; i++) {
            // The referee may undershoot zero by its tolerance.
            y[i] = Math.max(0, y[i]);
        }
        TankReadings.settlePh(y);
    }

    /** dy/dt of the whole state: exact, or on constants held over an interval and with pH warm from the last call. */
    static final class Equations implements FirstOrderDifferentialEquations {
        private final TankParameters p;
        private final SystemTerms system;
        private final Controls c;
        private final Kinetics rates = new Kinetics();
        private final int length;
        private final @Nullable IntervalConstants held;
        private final double settled;
        private double h;

        Equations(TankParameters p, Controls c, double[] start) {
            this(p, c, start, null, 0);
        }

        /**
         * On held constants.
         *
         * @param settled warm Newton steps follow until h moves by less than this share; 1 or more: one step
         */
        Equations(TankParameters p, Controls c, double[] start, @Nullable IntervalConstants held, double settled) {
            this.p = p;
            this.system = SystemTerms.of(p);
            this.c = c;
            this.length = start.length;
            this.h = start[H_ION];
            this.held = held;
            this.settled = settled;
        }

        /** The hydrogen-ion activity of the last call, mol/L. */
        double h() {
            return h;
        }

        @Override
        public int getDimension() {
            return length;
        }

        @Override
        public void computeDerivatives(double t, double[] y, double[] dy) {
            IntervalConstants k = held == null ? IntervalConstants.exact(system, c, y) : held;
            if (held == null) {
                h = k.carbonate.solveH(y[ALKALINITY], Math.max(0, y[DIC]), Math.max(0, y[TAN]), h);
            } else {
                warm(y, k);
            }
            rates.evaluate(y, p, k, h);
            java.util.Arrays.fill(dy, 0);
            water(y, dy, k);
            fish(y, dy);
            exchange(y, dy);
            dy[TEMPERATURE] = c.temperatureRatePerDay(p) * (c.restsAtC(p) - y[TEMPERATURE]);
            dy[ACCLIMATED_C] = Kinetics.ACCLIMATION_PER_DAY * (y[TEMPERATURE] - y[ACCLIMATED_C]);
        }

        private void warm(double[] y, IntervalConstants k) {
            double before;
            int steps = 0;
            do {
                before = h;
                h = k.carbonate.newtonStep(y[ALKALINITY], Math.max(0, y[DIC]), Math.max(0, y[TAN]), h);
            } while (Math.abs(h - before) > settled * h && ++steps < MOST_WARM_STEPS);
        }

        private void water(double[] y, double[] dy, IntervalConstants k) {
            double mineralised = rates.mineralisationLoss * y[ORGANIC_N];
            double heldMineralised = rates.heldLoss * y[HELD_N];
            double trapped = rates.trapping * y[ORGANIC_N];
            double taken = rates.nitrateLoss * Math.max(0, y[NITRATE]);
            double made = rates.gutExcretion + rates.fastingExcretion + mineralised + heldMineralised / p.volumeL();
            double freedChlorine = ChlorineReactions.COMBINED_DECAY_PER_DAY * y[COMBINED_CHLORINE];
            double oxidised = rates.ammoniaLoss * Math.max(0, y[TAN]);
            double toNitrate = rates.nitriteLoss * Math.max(0, y[NITRITE]);
            dy[ORGANIC_N] = -mineralised - trapped;
            dy[HELD_N] = trapped * p.volumeL() - heldMineralised - k.fouling * y[HELD_N];
            dy[LOOSE_N] = k.fouling * y[HELD_N];
            dy[MEDICATION] = -WaterJumps.DRUG_DECAY_PER_DAY * y[MEDICATION];
            dy[TAKEN_UP] = taken * p.volumeL();
            dy[FREE_CHLORINE] = -ChlorineReactions.FREE_DECAY_PER_DAY * y[FREE_CHLORINE];
            dy[COMBINED_CHLORINE] = -freedChlorine;
            dy[TAN] = made + freedChlorine * ChlorineReactions.NITROGEN_PER_COMBINED - oxidised;
            dy[NITRITE] = oxidised - toNitrate;
            dy[NITRATE] = toNitrate - taken;
            dy[ALKALINITY] = (made + taken - Nitrification.ACID_EQ_PER_MOL_N * oxidised) / startwater.quantity.Molar.N;
            dy[DIC] = rates.respirationDic + k.kLaCo2PerDay * (k.co2InBalance - rates.carbonDioxide);
            dy[OXYGEN] = k.kLaPerDay * (rates.oxygenSaturation - y[OXYGEN]) - rates.oxygenLoss * Math.max(0, y[OXYGEN]);
            dy[AOB] = (rates.aobGain - rates.aobLoss) * y[AOB];
            dy[NOB] = (rates.nobGain - rates.nobLoss) * y[NOB];
            dy[DELAY] = rates.delay;
        }

        private void fish(double[] y, double[] dy) {
            if (!(y[STOCKED] > 0)) {
                return;
            }
            Species species = Objects.requireNonNull(p.species());
            double gut = Kinetics.GUT_RATE_PER_DAY;
            double fasting = rates.fastingExcretion * p.volumeL();
            dy[GUT_1] = -(gut + rates.hazard) * y[GUT_1];
            dy[GUT_2] = gut * y[GUT_1] - (gut + rates.hazard) * y[GUT_2];
            dy[FISH_N] = -rates.hazard * y[FISH_N] - fasting;
            dy[REMOVED] = rates.hazard * (y[GUT_1] + y[GUT_2] + y[FISH_N]);
            dy[STRESS] = rates.stress;
            for (int i = 0; i < Stressor.COUNT; i++) {
                double kd = species.curves().get(i).killRatePerDay();
                dy[DAMAGE + i] = kd * (rates.exposure[i] - y[DAMAGE + i]);
            }
            for (int s = 0; s < p.strata(); s++) {
                double sum = 0;
                for (int i = 0; i < Stressor.COUNT; i++) {
                    double rate = rates.stratumHazard(s, i);
                    dy[survivors(s) + 1 + i] = rate;
                    sum += rate;
                }
                dy[survivors(s)] = -sum * y[survivors(s)];
            }
        }

        private void exchange(double[] y, double[] dy) {
            SourceWater in = c.source();
            double q = c.exchangePerDay();
            double inflow = c.inflowPerDay();
            if (in == null || inflow == 0) {
                return;
            }
            double out = y[TAN]
                    + y[NITRITE]
                    + y[NITRATE]
                    + y[ORGANIC_N]
                    + y[COMBINED_CHLORINE] * ChlorineReactions.NITROGEN_PER_COMBINED;
            dy[EXCHANGED_OUT] = q * out * p.volumeL();
            dy[BROUGHT_IN] = inflow * (in.tanMgPerL() + in.nitriteMgPerL() + in.nitrateMgPerL()) * p.volumeL();
            dy[MEDICATION] -= q * y[MEDICATION];
            dy[TAN] += inflow * in.tanMgPerL() - q * y[TAN];
            dy[NITRITE] += inflow * in.nitriteMgPerL() - q * y[NITRITE];
            dy[NITRATE] += inflow * in.nitrateMgPerL() - q * y[NITRATE];
            dy[ORGANIC_N] -= q * y[ORGANIC_N];
            dy[FREE_CHLORINE] -= q * y[FREE_CHLORINE];
            dy[COMBINED_CHLORINE] -= q * y[COMBINED_CHLORINE];
            dy[ALKALINITY] += inflow * in.alkalinityMeqPerL() - q * y[ALKALINITY];
            dy[DIC] += inflow * in.dicMmolPerL() - q * y[DIC];
            dy[OXYGEN] += inflow * in.oxygenMgPerL() - q * y[OXYGEN];
            dy[CHLORIDE] += inflow * in.chlorideMgPerL() - q * y[CHLORIDE];
            dy[VOLUMES] = q;
        }
    }
}
