package startwater.fish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.PointValuePair;
import org.apache.commons.math3.optim.SimpleValueChecker;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.ReferenceTable;

/** The survival model against its published implementation check, closed forms and fits to counted animals. */
@Tag("outside")
class GutsReferenceTest {
    private static final ReferenceTable FITS = ReferenceTable.read("guts/published-fits.csv");
    /** Half of the 95 % point of chi squared with four degrees of freedom. */
    private static final double FOUR_PARAMETERS = 4.74;

    @Test
    void implementationCheckGivesThePublishedValues() {
        ReferenceTable table = ReferenceTable.read("guts/implementation-check.csv");
        Guts.Model sd = Guts.stochasticDeath(0, 0.3, 0.5, 2.5);
        Guts.Model it = Guts.individualTolerance(0, 0.3, 2.5, 2);
        for (ReferenceTable.Row row : table.rows()) {
            double t = row.number("time_d");
            double computed =
                    switch (row.text("quantity")) {
                        case "damage" -> Guts.damage(100, 0.3, t);
                        case "sd_survival" -> sd.survival(100, t);
                        default -> it.survival(100, t);
                    };
            table.check(row.text("quantity") + " at day " + row.text("time_d"), row.number("value"), computed);
        }
    }

    @Test
    void lethalConcentrationsAgreeWithTheClosedForms() {
        ReferenceTable table = ReferenceTable.read("guts/lc50-closed-form.csv");
        SurvivalCurve sd = SurvivalCurve.plain(2.179, 16.89, 0.1237);
        Guts.Model it = Guts.individualTolerance(0, 0.7194, 17.69, 6.7);
        for (ReferenceTable.Row row : table.rows()) {
            double t = row.number("time_d");
            double computed = row.text("model").equals("SD") ? sd.lc50(t) : Guts.lc50(c -> it.survival(c, t));
            table.check(row.text("model") + " at day " + row.text("time_d"), row.number("lc50"), computed);
        }
    }

    /** Fitted anew to the counts, the model finds the parameters that EFSA prints. */
    @Test
    void fitsOfPropiconazoleFindThePublishedParameters() {
        List<Guts.Counts> counts = propiconazole();
        Map<String, Double> sd = named(fit(GutsReferenceTest::sd, counts, 0.02, 2, 0.1, 16), "hb", "kd", "kk", "z");
        Map<String, Double> it = named(fit(GutsReferenceTest::it, counts, 0.02, 0.7, 17, 6), "hb", "kd", "m", "beta");
        for (ReferenceTable.Row row : FITS.rows()) {
            if (row.text("data").equals("propiconazole")) {
                String quantity = row.text("quantity");
                double computed = (row.text("model").equals("SD") ? sd : it).getOrDefault(quantity, Double.NaN);
                // Background mortality rests on a handful of deaths.
                double beside = quantity.equals("hb") ? FITS.allowed(row.number("value")) : 0;
                FITS.check(
                        "propiconazole " + row.text("model") + " " + quantity, row.number("value"), computed, beside);
            }
        }
    }

    @Test
    void ringTestReachesThePublishedLikelihoodAndKeepsTheTruth() {
        ReferenceTable table = ReferenceTable.read("guts/ring-test-a-sd.csv");
        List<Guts.Counts> counts = new ArrayList<>();
        for (int c : new int[] {0, 2, 4, 6, 8, 16}) {
            counts.add(Guts.column(table, c, "c" + c));
        }
        double best = -fit(GutsReferenceTest::sd, counts, 0.02, 1, 0.5, 2.5).getValue();
        double published = FITS.rows().get(FITS.rows().size() - 1).number("value");
        FITS.check("ring test A-SD log-likelihood", published, best);
        assertThat(best).isBetween(published - 0.005, published + 0.05);
        double truth = Guts.logLikelihood(Guts.stochasticDeath(0.01, 0.8, 0.6, 3), counts);
        assertThat(best - truth).isBetween(0.0, FOUR_PARAMETERS);
    }

    /** The concentration that kills half by the parameters a published data set was made with lies in its printed range. */
    @Test
    void lethalConcentrationOfTheToleranceSetLiesInThePublishedRange() {
        ReferenceTable table = ReferenceTable.read("guts/lc50-published.csv");
        Guts.Model truth = Guts.individualTolerance(0, 0.8, 5, 5.3);
        ReferenceTable.Row row = table.rows().get(0);
        table.checkBetween(
                row.text("quantity"), row.number("low"), row.number("high"), Guts.lc50(c -> truth.survival(c, 4)));
    }

    /** Both models fit three weeks of counted water fleas as well as EFSA asks, concentration by concentration. */
    @Test
    void waterFleasUnderDichromateAreFittedByBothModels() {
        ReferenceTable table = ReferenceTable.read("guts/dichromate_daphnia_21d.csv");
        Map<Double, List<ReferenceTable.Row>> byExposure = new TreeMap<>();
        table.rows().forEach(row -> byExposure
                .computeIfAbsent(row.number("conc_mg_L"), c -> new ArrayList<>())
                .add(row));
        List<Guts.Counts> counts = byExposure.values().stream()
                .map(rows -> counts(rows, "conc_mg_L"))
                .toList();
        Guts.Model sd =
                sd(fit(GutsReferenceTest::sd, counts, 0.001, 0.2, 0.5, 0.3).getPoint());
        Guts.Model it =
                it(fit(GutsReferenceTest::it, counts, 0.001, 0.2, 0.5, 3).getPoint());
        for (Guts.Counts tank : counts) {
            String at = " at " + tank.exposure() + " mg/L";
            table.check("SD" + at, 0, error(sd, tank));
            table.check("IT" + at, 0, error(it, tank));
        }
    }

    private static double error(Guts.Model model, Guts.Counts tank) {
        double squares = 0;
        double mean = 0;
        int n = tank.days().length;
        for (int i = 0; i < n; i++) {
            double alive = tank.alive()[i] / tank.alive()[0];
            squares += StrictMath.pow(model.survival(tank.exposure(), tank.days()[i]) - alive, 2);
            mean += alive;
        }
        return StrictMath.sqrt(squares / n) / (mean / n);
    }

    private static Guts.Counts counts(List<ReferenceTable.Row> rows, String exposure) {
        return new Guts.Counts(
                rows.get(0).number(exposure),
                rows.stream().mapToDouble(r -> r.number("time_d")).toArray(),
                rows.stream().mapToDouble(r -> r.number("n_surv")).toArray());
    }

    /** Fitted to constant exposure only, the model foretells pulsed exposure as well as EFSA asks of a prediction. */
    @Test
    void pulsesAreForetoldFromConstantExposure() {
        ReferenceTable table = ReferenceTable.read("guts/propiconazole_pulsed.csv");
        for (String tank : List.of("varA", "varB", "varC", "varControl")) {
            List<ReferenceTable.Row> rows = table.rows().stream()
                    .filter(r -> r.text("replicate").equals(tank))
                    .toList();
            table.check(tank + " error over mean", 0, foretold(rows));
        }
    }

    /** Root-mean-square error of the survival foretold over the mean of the counted. */
    private static double foretold(List<ReferenceTable.Row> rows) {
        SurvivalCurve curve = SurvivalCurve.plain(2.179, 16.89, 0.1237);
        List<ReferenceTable.Row> exposures =
                rows.stream().filter(r -> r.has("conc_umol_L")).toList();
        double stocked = rows.get(0).number("n_surv");
        double[] state = new double[2];
        double t = 0;
        double squares = 0;
        double mean = 0;
        int n = 0;
        for (ReferenceTable.Row row : rows) {
            for (; t < row.number("time_d") - 1e-9; t += STEP) {
                double damage = state[0];
                state[0] += STEP * 2.179 * (exposure(exposures, t) - damage);
                state[1] += STEP * (0.02683 + curve.hazardPerDay(damage, 1));
            }
            if (row.has("n_surv")) {
                double alive = row.number("n_surv") / stocked;
                squares += StrictMath.pow(StrictMath.exp(-state[1]) - alive, 2);
                mean += alive;
                n++;
            }
        }
        return StrictMath.sqrt(squares / n) / (mean / n);
    }

    private static final double STEP = 1e-3;

    private static double exposure(List<ReferenceTable.Row> measured, double t) {
        for (int i = 1; i < measured.size(); i++) {
            double from = measured.get(i - 1).number("time_d");
            double to = measured.get(i).number("time_d");
            if (t >= from && t < to) {
                double c = measured.get(i - 1).number("conc_umol_L");
                return c + (measured.get(i).number("conc_umol_L") - c) * (t - from) / (to - from);
            }
        }
        return 0;
    }

    private static PointValuePair fit(Function<double[], Guts.Model> model, List<Guts.Counts> counts, double... start) {
        double[] logs = new double[start.length];
        for (int i = 0; i < start.length; i++) {
            logs[i] = StrictMath.log(start[i]);
        }
        PointValuePair found = new PointValuePair(logs, 0);
        for (int round = 0; round < 3; round++) {
            found = new SimplexOptimizer(new SimpleValueChecker(1e-12, 1e-12))
                    .optimize(
                            new MaxEval(20_000),
                            GoalType.MINIMIZE,
                            new InitialGuess(found.getPoint()),
                            new NelderMeadSimplex(start.length, 0.1),
                            new ObjectiveFunction(x -> -Guts.logLikelihood(model.apply(exp(x)), counts)));
        }
        return new PointValuePair(exp(found.getPoint()), found.getValue());
    }

    private static double[] exp(double[] logs) {
        double[] values = new double[logs.length];
        for (int i = 0; i < logs.length; i++) {
            values[i] = StrictMath.exp(logs[i]);
        }
        return values;
    }

    private static Guts.Model sd(double[] p) {
        return Guts.stochasticDeath(p[0], p[1], p[2], p[3]);
    }

    private static Guts.Model it(double[] p) {
        return Guts.individualTolerance(p[0], p[1], p[2], p[3]);
    }

    private static Map<String, Double> named(PointValuePair fit, String... names) {
        Map<String, Double> map = new TreeMap<>();
        for (int i = 0; i < names.length; i++) {
            map.put(names[i], fit.getPoint()[i]);
        }
        return map;
    }

    private static List<Guts.Counts> propiconazole() {
        Map<String, List<ReferenceTable.Row>> byTank = new TreeMap<>();
        for (ReferenceTable.Row row : ReferenceTable.read("guts/propiconazole_constant_by_replicate.csv")
                .rows()) {
            byTank.computeIfAbsent(row.text("replicate"), name -> new ArrayList<>())
                    .add(row);
        }
        return byTank.values().stream().map(rows -> counts(rows, "conc_umol_L")).toList();
    }
}
